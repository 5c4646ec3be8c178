import { requireRecord } from "../check/index.ts";
import type { BoardPlan } from "../lumber/index.ts";
import { type Length, printQuantity, requireChoice, type UnitSystem } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import { cutPlan } from "./shapes.ts";

/** One board that is used, bought or kept. */
export interface CutRow {
  /** What is chalked on it. */
  readonly board: string;
  /** The yard, or `kept`. */
  readonly source: string;
  readonly section: string;
  readonly timber: string;
  readonly length: Length;
  /** Its pieces in the order they are cut, each with its length. */
  readonly pieces: string;
  readonly offcut: Length;
}

/**
 * One row for every board used, cut or not, kept boards too.
 *
 * @param plan as `planBoards` gives it, or null for none
 * @param options `system` in which the pieces' lengths are written; default `us`
 * @rule one row for every board that is used, kept ones too, with the pieces sawn from it and what is over
 * @source common practice
 * @example
 * cutRows(null) // => []
 */
export function cutRows(
  plan: BoardPlan | null,
  options: { readonly system?: UnitSystem } = {},
): readonly CutRow[] {
  requireRecord(options, ["options"]);
  const { system = "us" } = options;
  requireChoice(system, ["us", "metric"], ["options", "system"]);
  requireShape(plan, cutPlan, ["plan"]);
  return (plan?.cuts ?? []).map((cut) => ({
    board: cut.board,
    source: cut.source,
    section: cut.section.name,
    timber: cut.timber,
    length: cut.length,
    pieces: cut.pieces
      .map((piece) => `${piece.name} ${printQuantity(piece.length, { system })}`)
      .join("; "),
    offcut: cut.offcut,
  }));
}
