import { existsSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { readDocs } from "../../build/docs/read-docs.ts";
import { projectFolder, textOf } from "./files.ts";

const names = readDocs(join(projectFolder, "lib/index.ts"), projectFolder);
const functions = names.filter((name) => name.what === "function");
const sources = JSON.parse(textOf("data/sources.json")) as Record<string, unknown>;
const marks = ["common practice", "from memory"];

const listOf = (found: readonly { file: string; name: string }[]) =>
  found.map((name) => `${name.file}: ${name.name}`);

describe("the reference of lib", () => {
  it("covers a library of some size", () => {
    expect(functions.length).toBeGreaterThan(40);
  });

  it("has a sentence for every public name", () => {
    expect(listOf(names.filter((name) => name.summary.trim() === ""))).toEqual([]);
  });

  it("has an example for every public function", () => {
    expect(listOf(functions.filter((name) => name.examples.length === 0))).toEqual([]);
  });

  it("cites only sources that are known, or says common practice or from memory", () => {
    const uncited = names.flatMap((name) =>
      name.sources
        .filter((id) => !(id in sources) && !marks.includes(id))
        .map((id) => `${name.file}: ${name.name} cites ${id}`),
    );
    expect(uncited).toEqual([]);
  });

  it("gives a source wherever it gives a rule", () => {
    expect(
      listOf(names.filter((name) => name.rule !== undefined && name.sources.length === 0)),
    ).toEqual([]);
  });

  it("has a test file by the name of every file with a public function", () => {
    const missing = functions
      .map((name) => name.file)
      .filter((file, at, all) => all.indexOf(file) === at)
      .filter((file) => {
        const folder = join(projectFolder, "tests", file.slice(0, file.lastIndexOf("/")));
        return !existsSync(join(folder, `${basename(file, ".ts")}.test.ts`));
      });
    expect(missing).toEqual([]);
  });
});
