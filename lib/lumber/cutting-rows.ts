import { requireRecord } from "../check/index.ts";
import { type Length, printQuantity, requireChoice, type UnitSystem } from "../measure/index.ts";
import type { BoardPlan } from "./board-plan.ts";
import { cuttingSheet, type SheetBoards, type SheetStep } from "./cutting-sheet.ts";
import { namesWithCounts } from "./name-runs.ts";

/** One line of the cutting sheet. */
export interface CuttingRow {
  /** "4 × 8 ft, B1–B4, 2x12 treated, Alder" in the first line of boards cut alike; else empty. */
  readonly boards: string;
  /** Which stroke of the saw; empty where none is needed. */
  readonly cut: number | "";
  /** Where the tape is read; empty where it is not held at an end. */
  readonly mark: Length | "";
  /** The length that comes off, or that is left over. */
  readonly gives: Length | "";
  /** What it is: the pieces with their beds, or what the cut is for. */
  readonly for: string;
}

/**
 * The cutting sheet as rows of a table, a row for each stroke of the saw and for what is left over.
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
 * cuttingRows(plan).map((row) => printQuantity(row.gives)) // => ["3 ft 9 in","3 ft 9 in","5 3/4 in"]
 */
export function cuttingRows(
  plan: BoardPlan,
  options: { readonly system?: UnitSystem } = {},
): readonly CuttingRow[] {
  requireRecord(options, ["options"]);
  const { system = "us" } = options;
  requireChoice(system, ["us", "metric"], ["options", "system"]);
  return cuttingSheet(plan).flatMap((sheet) => {
    const rows = [...sheet.steps.map(stepRow), ...overRows(sheet)];
    return rows.map((row, at) => (at === 0 ? { ...row, boards: heading(sheet, system) } : row));
  });
}

function heading(sheet: SheetBoards, system: UnitSystem): string {
  const { count, length, boards, section, timber, source } = sheet;
  const wood = `${section} ${timber}`.trim();
  return `${boards}: ${count} × ${printQuantity(length, { system })}, ${wood}, ${source}`;
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

function stepRow({ kind, cut, mark, piece, names, from }: SheetStep): CuttingRow {
  const last = kind === "piece" && cut === null ? "parted off already" : "";
  const words = [namesWithCounts(names), strokes[kind], held[from], last];
  const said = words.filter((text) => text !== "").join("; ");
  return {
    boards: "",
    cut: cut ?? "",
    mark: cut === null ? "" : (mark ?? ""),
    gives: piece ?? "",
    for: said,
  };
}

function overRows({ offcut, firstOffcut }: SheetBoards): readonly CuttingRow[] {
  const row = (gives: Length, words: string): readonly CuttingRow[] =>
    gives.si > 0 ? [{ boards: "", cut: "", mark: "", gives, for: words }] : [];
  if (firstOffcut === null) return row(offcut, "left over");
  return [
    ...row(firstOffcut, "left over of the first part"),
    ...row(offcut, "left over of the second part"),
  ];
}
