import type { CellId } from "../../types/index.ts";
import type { Difference } from "./differences.ts";

/** What changed, in a few words: "3 entries, table Beds, formula of total". */
export function changeWords(
  differences: readonly Difference[],
  titleOf: (id: CellId) => string,
): string {
  if (differences.length === 0) return "nothing";
  const parts = [
    named(differences, "entry", ["entry", "entries"], titleOf),
    named(differences, "table", ["table", "tables"], titleOf),
    named(differences, "formula", ["formula of", "formulas"], titleOf),
    named(differences, "rows", ["rows given in", "tables’ given rows"], titleOf),
    words(differences),
  ];
  return parts.filter((part) => part !== "").join(", ");
}

function named(
  differences: readonly Difference[],
  what: Difference["what"],
  [one, many]: readonly [one: string, many: string],
  titleOf: (id: CellId) => string,
): string {
  const ids = differences.flatMap((difference) =>
    difference.what === what && "id" in difference ? [difference.id] : [],
  );
  const [only] = ids;
  if (only === undefined) return "";
  return ids.length === 1 ? `${one} ${titleOf(only)}` : `${ids.length} ${many}`;
}

function words(differences: readonly Difference[]): string {
  const files = differences.flatMap((one) => (one.what === "words" ? [one.file] : []));
  return files.length === 0 ? "" : `the words of ${files.join(" and ")}`;
}
