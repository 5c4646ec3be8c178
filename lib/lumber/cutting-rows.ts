import { requireRecord } from "../check/index.ts";
import { type Length, printQuantity, requireChoice, type UnitSystem } from "../measure/index.ts";
import type { BoardPlan } from "./board-plan.ts";
import { cuttingSheet, type SheetBoards, type SheetStep } from "./cutting-sheet.ts";
import { namesWithCounts } from "./name-runs.ts";

/** One line of the cutting sheet. */
export interface CuttingRow {
  /** "B1–B4" in the first line of boards cut alike, which says what they are; else empty. */
  readonly boards: string;
  /** Which stroke of the saw; empty where none is needed. */
  readonly cut: number | "";
  /** Where the tape is read; empty where it is not held at an end. */
  readonly mark: Length | "";
  /** The length that comes off, or that is left over. */
  readonly gives: Length | "";
  /** The boards themselves, then what comes off: the pieces, or what the cut is for. */
  readonly for: string;
}

/**
 * The cutting sheet as rows of a table: for boards cut alike a row that names them, then one for each
 * stroke of the saw, each piece and what is left over.
 *
 * @param plan as `planBoards` gives it
 * @param options `system` in which the boards' lengths are written in words; default `us`
 * @throws ProblemError for what is no plan
 * @rule as the cutting sheet: marks count the saw cuts before them
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [1], bound: 1, rowWorth: [1] })
 * const section = readSection("2x12", { path: [] }).value
 * const pieces = [{ name: "A end", bed: "A", part: "end", section, length: times(45, inch), count: 2 }]
 * const stock = [{ yard: "North", section, length: times(8, foot), price: money(20) }]
 * const plan = await planBoards({ pieces, stock, kerf: over(inch, 8), shortfall: times(0, inch) }, { solve })
 * cuttingRows(plan).map((row) => [row.cut, row.for]) // => [["","1 of 8 ft, 2x12, North"],[1,"A end"],[2,"A end"],["","left over"]]
 */
export function cuttingRows(
  plan: BoardPlan,
  options: { readonly system?: UnitSystem } = {},
): readonly CuttingRow[] {
  requireRecord(options, ["options"]);
  const { system = "us" } = options;
  requireChoice(system, ["us", "metric"], ["options", "system"]);
  return cuttingSheet(plan).flatMap((sheet) => [
    heading(sheet, system),
    ...sheet.steps.map(stepRow),
    ...overRows(sheet),
  ]);
}

const none = { boards: "", cut: "", mark: "", gives: "", for: "" } as const;

function heading(sheet: SheetBoards, system: UnitSystem): CuttingRow {
  const { count, length, boards, section, timber, source } = sheet;
  const wood = `${section} ${timber}`.trim();
  const what = `${count} of ${printQuantity(length, { system })}, ${wood}, ${source}`;
  return { ...none, boards, for: what };
}

const strokes: Readonly<Record<SheetStep["kind"], string>> = {
  "at the yard": "cut in two at the yard, before it goes on the car",
  squaring: "square the end; the tape is held there from now on",
  mitre: "mitre the end, long point at the mark",
  piece: "",
};

const held: Readonly<Record<SheetStep["from"], string>> = {
  "board's end": "",
  "squared end": "",
  "yard's cut": "tape at the yard's cut",
  "cut before": "long point to long point from the cut before, board turned over",
};

function stepRow({ kind, cut, mark, piece, place, names, from }: SheetStep): CuttingRow {
  const whole = place === 1 ? "the whole board, no cut" : "what is left, no cut";
  const last = kind === "piece" && cut === null ? whole : "";
  const words = [namesWithCounts(names), strokes[kind], held[from], last];
  const said = words.filter((text) => text !== "").join("; ");
  return {
    ...none,
    cut: cut ?? "",
    mark: cut === null ? "" : (mark ?? ""),
    gives: piece ?? "",
    for: said,
  };
}

function overRows({ offcut, firstOffcut }: SheetBoards): readonly CuttingRow[] {
  const row = (gives: Length, words: string): readonly CuttingRow[] =>
    gives.si > 0 ? [{ ...none, gives, for: words }] : [];
  if (firstOffcut === null) return row(offcut, "left over");
  return [
    ...row(firstOffcut, "left over of the first part"),
    ...row(offcut, "left over of the second part"),
  ];
}
