import type { Length } from "../measure/index.ts";
import type { BoardPlan, CutBoard, CutPiece } from "./board-plan.ts";
import { type CutStep, cutSteps } from "./cut-steps.ts";
import { namesInRuns } from "./name-runs.ts";
import { requireSawn } from "./require-sawn.ts";

/** A stroke of the saw, with what comes off by it on each of the boards cut alike. */
export interface SheetStep extends CutStep {
  /** The length of the piece that comes off; null where none does. */
  readonly piece: Length | null;
  /** That piece on each board, in the order of the boards. */
  readonly names: readonly string[];
  /** The bed it goes to, on each board. */
  readonly beds: readonly string[];
}

/** Boards that are cut alike, whatever beds their pieces go to. */
export interface SheetBoards {
  /** What is chalked on them: "B1–B4, B9". */
  readonly boards: string;
  readonly labels: readonly string[];
  readonly count: number;
  /** The yard they come from, or `kept`. */
  readonly source: string;
  readonly section: string;
  readonly timber: string;
  readonly length: Length;
  /** In the order they are done: the yard's cut, squaring, the pieces. */
  readonly steps: readonly SheetStep[];
  /** What is left after the last cut. */
  readonly offcut: Length;
  /** Of a board cut in two at the yard, what is left of the first part; null of others. */
  readonly firstOffcut: Length | null;
  /** How often the saw goes through one of them, the yard's included. */
  readonly cutCount: number;
}

/**
 * How to saw the boards of a plan: boards cut alike together, kept ones first, and for each the
 * strokes of the saw in order. A mark is read off a tape held at one end, which stays there: the saw
 * cuts before it are counted, and the saw goes beyond the mark.
 *
 * @param plan as `planBoards` gives it
 * @returns boards of one yard, section, timber, length and the same lengths in the same order are one
 * entry; an empty list for no boards
 * @throws ProblemError for what is no plan
 * @rule mark = the pieces before it and itself + a saw cut for each piece before it
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [1], bound: 1, rowWorth: [1] })
 * const section = readSection("2x12", { path: [] }).value
 * const pieces = [{ name: "A end", bed: "A", part: "end", section, length: times(45, inch), count: 2 }]
 * const stock = [{ yard: "North", section, length: times(8, foot), price: money(20) }]
 * const plan = await planBoards({ pieces, stock, kerf: over(inch, 8), shortfall: times(0, inch) }, { solve })
 * cuttingSheet(plan)[0].steps.map((step) => printQuantity(step.mark)) // => ["3 ft 9 in","7 ft 6 1/8 in"]
 */
export function cuttingSheet(plan: BoardPlan): readonly SheetBoards[] {
  requireSawn(plan);
  const kerfM = plan.certificate.kerf.si;
  const alike = new Map<string, CutBoard[]>();
  const keptFirst = [...plan.cuts].sort(
    (a, b) => Number(a.yard !== null) - Number(b.yard !== null),
  );
  for (const board of keptFirst) {
    const key = layoutKey(board);
    alike.set(key, [...(alike.get(key) ?? []), board]);
  }
  return [...alike.values()].map((boards) => sheetBoards(boards, kerfM));
}

const rounded = (length: Length) => Math.round(length.si * 1e5);

/** Boards with one key are cut alike: names and beds are not in it. */
export function layoutKey(board: CutBoard): string {
  const { yard, section, timber, length, squared, atYard, pieces } = board;
  const cuts = pieces.map((piece) => `${rounded(piece.length)}${piece.mitred ? "m" : ""}`);
  const first = atYard === null ? "" : `${rounded(atYard.first)}/${atYard.pieces}`;
  return [
    `${yard === null ? "kept" : `at ${yard}`}|${section.name}|${timber}`,
    ...[rounded(length), rounded(squared), first],
    ...cuts,
  ].join(" ");
}

function sheetBoards(boards: readonly CutBoard[], kerfM: number): SheetBoards {
  const [first] = boards as readonly [CutBoard];
  const { source, section, timber, length, offcut, atYard, cutCount } = first;
  const labels = boards.map(({ board }) => board);
  return {
    boards: namesInRuns(labels).join(", "),
    labels,
    count: boards.length,
    source,
    section: section.name,
    timber,
    length,
    steps: cutSteps(first, kerfM).map((step) => withPieces(step, boards)),
    offcut,
    firstOffcut: atYard === null ? null : atYard.rest,
    cutCount,
  };
}

function withPieces(step: CutStep, boards: readonly CutBoard[]): SheetStep {
  const { place } = step;
  const off = boards.flatMap((board): readonly CutPiece[] => {
    const piece = place === null ? undefined : board.pieces[place - 1];
    return piece === undefined ? [] : [piece];
  });
  return {
    ...step,
    piece: off[0]?.length ?? null,
    names: off.map(({ name }) => name),
    beds: off.map(({ bed }) => bed),
  };
}
