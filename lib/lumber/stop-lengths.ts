import type { Length } from "../measure/index.ts";
import type { BoardPlan } from "./board-plan.ts";
import { cuttingSheet } from "./cutting-sheet.ts";
import { namesInRuns, namesWithCounts } from "./name-runs.ts";

/** A length that a stop is set to once, and all that is sawn against it. */
export interface StopLength {
  readonly section: string;
  readonly timber: string;
  readonly stop: Length;
  /** How the ends are sawn; a mitred piece is measured from long point to long point. */
  readonly ends: "square" | "mitred";
  /** How many pieces are sawn to it. */
  readonly count: number;
  /** On which boards: "B1–B4, K2". */
  readonly boards: string;
  /** The beds they go to. */
  readonly beds: string;
}

interface Found {
  readonly length: Length;
  readonly stop: Omit<StopLength, "count" | "boards" | "beds">;
  readonly labels: string[];
  readonly beds: string[];
}

/**
 * The lengths to set a stop to, so that pieces that are sawn more than once come out alike without
 * measuring each: by section and timber, the longest first.
 *
 * @param plan as `planBoards` gives it
 * @returns one row for each length that two pieces or more are sawn to; pieces that are parted off
 * without a cut of their own, as whole boards, are not sawn
 * @throws ProblemError for what is no plan
 * @rule one stop for each length sawn more than once
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [1], bound: 1, rowWorth: [1] })
 * const section = readSection("2x12", { path: [] }).value
 * const pieces = [{ name: "A end", bed: "A", part: "end", section, length: times(45, inch), count: 2 }]
 * const stock = [{ yard: "North", section, length: times(8, foot), price: money(20) }]
 * const plan = await planBoards({ pieces, stock, kerf: over(inch, 8), shortfall: times(0, inch) }, { solve })
 * stopLengths(plan).map((row) => [row.count, row.boards]) // => [[2,"B1"]]
 */
export function stopLengths(plan: BoardPlan): readonly StopLength[] {
  const found = new Map<string, Found>();
  for (const { section, timber, labels, steps } of cuttingSheet(plan)) {
    for (const { kind, cut, piece, mark, beds } of steps) {
      if (kind !== "piece" || cut === null || piece === null) continue;
      const ends = mark === null ? "mitred" : "square";
      const key = [section, timber, ends, Math.round(piece.si * 1e5)].join("|");
      const entry = found.get(key) ?? {
        length: piece,
        stop: { section, timber, stop: piece, ends },
        labels: [],
        beds: [],
      };
      found.set(key, entry);
      entry.labels.push(...labels);
      entry.beds.push(...beds);
    }
  }
  return [...found.values()]
    .filter(({ labels }) => labels.length > 1)
    .sort(byWoodThenLongest)
    .map(({ stop, labels, beds }) => ({
      ...stop,
      count: labels.length,
      boards: namesInRuns([...new Set(labels)].sort(byNumber)).join(", "),
      beds: namesWithCounts(beds),
    }));
}

function byWoodThenLongest(a: Found, b: Found): number {
  const wood = ({ stop }: Found) => `${stop.section}|${stop.timber}`;
  if (wood(a) !== wood(b)) return wood(a) < wood(b) ? -1 : 1;
  return b.length.si - a.length.si;
}

/** B2 before B10, and kept boards after the bought ones as in the plan. */
function byNumber(a: string, b: string): number {
  const parts = (label: string) => /^(\D*)(\d*)/.exec(label) ?? ["", "", ""];
  const [, stemA = "", atA = ""] = parts(a);
  const [, stemB = "", atB = ""] = parts(b);
  return stemA === stemB ? Number(atA) - Number(atB) : stemA < stemB ? -1 : 1;
}
