import type { Problem } from "../check/index.ts";

/** Problems of a table by row, those of the whole table first; of one row in the order found. */
export function inRowOrder(problems: readonly Problem[]): readonly Problem[] {
  const rowOf = ({ path }: Problem): number => (typeof path[1] === "number" ? path[1] : 0);
  return problems.toSorted((a, b) => rowOf(a) - rowOf(b));
}
