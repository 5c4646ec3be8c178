import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import type { LedgerRow } from "./soil-ledger/row.ts";

const folder = join(import.meta.dirname, "soil-ledger");
const tests = join(import.meta.dirname, "..");

const parts = await Promise.all(
  readdirSync(folder)
    .filter((file) => file !== "row.ts")
    .map(async (file) => {
      const { rows } = (await import(pathToFileURL(join(folder, file)).href)) as {
        rows: readonly LedgerRow[];
      };
      return { file, rows };
    }),
);

/** What is wrong with a row: no such file, no such title, or no reason given. */
function faultOf(row: LedgerRow): string | undefined {
  if ("leftOut" in row) {
    return row.leftOut.length > 15 ? undefined : `${row.what}: no reason why it is left out`;
  }
  const { file, title } = row.checked;
  const path = join(tests, file);
  if (!existsSync(path)) return `${row.what}: there is no ${file}`;
  if (!readFileSync(path, "utf8").includes(title)) return `${row.what}: ${file} has no "${title}"`;
  return undefined;
}

describe("the list of published soil figures, used and left out", () => {
  it("names for each figure a test that stands, or why there is none", () => {
    expect(parts.length).toBeGreaterThan(0);
    const rows = parts.flatMap((part) => part.rows);
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.flatMap((row) => faultOf(row) ?? [])).toEqual([]);
  });

  it("names no figure twice in one part", () => {
    for (const { file, rows } of parts) {
      const seen = rows.map((row) => `${row.source}: ${row.what}`);
      expect(new Set(seen).size, file).toBe(seen.length);
    }
  });
});
