import type { ReceiptLine } from "../cost/index.ts";
import type { BoardPlan, CutBoard } from "../lumber/index.ts";
import {
  inch,
  isQuantity,
  type Length,
  printQuantity,
  type UnitSystem,
  zeroOf,
} from "../measure/index.ts";

/** Boards of one line that the yard is to cut in two at the same place. */
export interface YardCuts {
  readonly count: number;
  /** From the board's end to the cut. */
  readonly first: Length;
  /** The longer of the two parts. */
  readonly longest: Length;
}

interface LineAt {
  readonly yard: string;
  readonly line: ReceiptLine;
}

/** How long one of a line is to carry: of a board its length, of anything else nothing. */
export function loadedLength({ board, size }: ReceiptLine): Length {
  return board !== undefined && isQuantity(size) ? (size as Length) : zeroOf(inch);
}

/** The boards of a line that are cut in two before they go on the car, by where. */
export function yardCuts(plan: BoardPlan, { yard, line }: LineAt): readonly YardCuts[] {
  const { board } = line;
  if (board === undefined) return [];
  const { si: lengthM } = loadedLength(line);
  const isOfLine = (cut: CutBoard) =>
    cut.yard === yard &&
    cut.section.name === board.section &&
    cut.timber === board.timber &&
    Math.abs(cut.length.si - lengthM) < 1e-6;
  const found = new Map<number, YardCuts>();
  for (const { atYard, length } of plan.cuts.filter(isOfLine)) {
    if (atYard === null) continue;
    const key = Math.round(atYard.first.si * 1e5);
    const restM = length.si - atYard.first.si - plan.certificate.kerf.si;
    const longest = restM > atYard.first.si ? { ...length, si: restM } : atYard.first;
    const count = (found.get(key)?.count ?? 0) + 1;
    found.set(key, { count, first: atYard.first, longest });
  }
  return [...found.values()].sort((a, b) => b.longest.si - a.longest.si);
}

/** "2 cut in two at 7 ft 11 in by the yard" */
export function yardCutWords({ count, first }: YardCuts, system: UnitSystem): string {
  return `${count} cut in two at ${printQuantity(first, { system })} by the yard`;
}
