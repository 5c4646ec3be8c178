import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readCsv } from "../../lib/index.ts";
import { loadDocuments } from "../../notebooks/engine/document/index.ts";
import type { Notebook, TableText } from "../../notebooks/engine/types/index.ts";

const folder = join(process.cwd(), "notebooks");

/** A shipped notebook with all it uses. */
export function shipped(file: string): Promise<ReadonlyMap<string, Notebook>> {
  return loadDocuments(file, async (name) => readFileSync(join(folder, name), "utf8"));
}

// Sizes as gardens have them; feet outside, and courses of which section.
const sizes = [
  ["8 ft", "4 ft", "1", "2x12"],
  ["12 ft", "4 ft", "1", "2x12"],
  ["6 ft", "3 ft", "1", "2x12"],
  ["4 ft", "4 ft", "1", "2x12"],
  ["8 ft", "2 ft", "2", "2x8"],
  ["10 ft", "4 ft", "1", "2x12"],
  ["8 ft", "3 ft", "3", "2x10"],
] as const;

/** A table of so many beds, each in a row of its own: seven sizes in turn. */
export function manyBeds(count: number): TableText {
  const rows = Array.from({ length: count }, (_, at) => {
    const [length, width, courses, section] = sizes[at % sizes.length] ?? sizes[0];
    return [`${at + 1}`, length, width, courses, section, "2014"].join(",");
  });
  return readCsv(["bed,length,width,courses,section,built", ...rows].join("\n"), "beds");
}
