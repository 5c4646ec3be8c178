import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readNotebook, writeNotebook } from "../../../notebooks/engine/document/index.ts";

// Each document in golden/ has its expected outline beside it. Where they differ, what was read is
// written to NAME-changed.outline.txt for the eye. A new document gets its outline by a run outside CI.
const { CI } = process.env;
const folder = join(import.meta.dirname, "golden");
const names = readdirSync(folder)
  .filter((file) => file.endsWith(".md"))
  .map((file) => file.slice(0, -3));

describe("documents read as their outlines say", () => {
  test.each(names)("%s", (name) => {
    const text = readFileSync(join(folder, `${name}.md`), "utf8");
    const notebook = readNotebook(text, `${name}.md`);
    expect(writeNotebook(notebook)).toBe(text);
    const outline = `${JSON.stringify(notebook, undefined, 2)}\n`;
    const expected = join(folder, `${name}.outline.txt`);
    const changed = join(folder, `${name}-changed.outline.txt`);
    rmSync(changed, { force: true });
    if (!existsSync(expected) && !CI) writeFileSync(expected, outline);
    expect(existsSync(expected), `${name}.outline.txt is missing`).toBe(true);
    const same = readFileSync(expected, "utf8") === outline;
    if (!same) writeFileSync(changed, outline);
    expect(same, `see ${name}-changed.outline.txt beside ${name}.outline.txt`).toBe(true);
  });
});

test("no outline is without its document", () => {
  const outlines = readdirSync(folder).filter((file) => file.endsWith(".outline.txt"));
  expect(outlines.sort()).toEqual(names.map((name) => `${name}.outline.txt`).sort());
});
