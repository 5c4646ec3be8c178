import type { CutModel } from "./cut-model.ts";
import { grainsPerMinor, type Pattern, type PatternUse } from "./cut-part.ts";
import { isTight, patternRest } from "./pattern-cost.ts";
import type { IntegerProgram, ProgramColumn, ProgramRow } from "./solver.ts";

/** What a programme's columns stand for: patterns part by part, then bundles, then other decisions. */
export interface CutProgram {
  readonly program: IntegerProgram;
  readonly patterns: readonly (readonly Pattern[])[];
  /** Turns values of the columns into a plan. */
  readonly read: (values: readonly number[]) => CutSolution;
}

/** Boards by part, and the other decisions. */
export interface CutSolution {
  readonly uses: readonly (readonly PatternUse[])[];
  readonly extras: readonly number[];
}

/** What to look for among plans that cost no more than so much, once that is known. */
export interface TieWeights {
  readonly costAtMost: number;
  readonly tight: number;
  readonly board: number;
  readonly cut: number;
}

class Rows {
  readonly all: ProgramRow[] = [];

  add(least: number, most: number): number {
    return this.all.push({ least, most }) - 1;
  }
}

interface Entry {
  row: number;
  amount: number;
}

const none = Number.NEGATIVE_INFINITY;
const free = Number.POSITIVE_INFINITY;

function columnOf(cost: number, most: number, entries: readonly Entry[]): ProgramColumn {
  const used = entries.filter(({ row, amount }) => row >= 0 && amount !== 0);
  return {
    cost,
    most,
    rows: used.map(({ row }) => row),
    amounts: used.map(({ amount }) => amount),
  };
}

/**
 * The integer programme over lists of patterns: how many boards to cut by each, so that every class
 * gets at least its pieces, no board is used more often than it is there, and the links hold. Costs
 * are in minor units. With `ties`, the cost is a row, and what is least is what ties are decided by.
 */
export function cutProgram(
  model: CutModel,
  patterns: readonly (readonly Pattern[])[],
  ties?: TieWeights,
): CutProgram {
  const rows = new Rows();
  const linkRows = model.links.map(({ is, amount }) =>
    rows.add(is === "most" ? none : amount, is === "least" ? free : amount),
  );
  const costRow = ties ? rows.add(none, ties.costAtMost / grainsPerMinor) : -1;
  const columns: ProgramColumn[] = [];
  const bundles: ProgramColumn[] = [];
  for (const [p, part] of model.parts.entries()) {
    const classRows = part.classes.map(({ demand }) => rows.add(demand, free));
    const pieces = part.classes.reduce((sum, each) => sum + each.demand, 0);
    const kindRows = part.kinds.map((kind, k) => {
      const bundled = kind.step > 1;
      // A bound on every column: without one the solver has called dearer plans the cheapest.
      // Where links ask for more, as an order does, boards may be bought that no piece needs.
      const spare = model.links.length > 0 ? 20 : 0;
      const atMost = Math.min(kind.supply, Math.max(pieces, kind.from, kind.least) + spare);
      const most = bundled ? 0 : kind.supply;
      const row = Number.isFinite(most) ? rows.add(none, most) : -1;
      const least = kind.least > 0 ? rows.add(kind.least, free) : -1;
      // No bundle is bought of which no board is used.
      const begun = bundled ? rows.add(1 - kind.step, free) : -1;
      if (bundled) {
        const price = (kind.cost * kind.step) / grainsPerMinor;
        const entries = [
          { row, amount: -kind.step },
          { row: begun, amount: -kind.step },
          { row: costRow, amount: price },
          ...model.links.map((link, r) => ({
            row: linkRows[r] ?? -1,
            amount: (link.boards[p]?.[k] ?? 0) * kind.step,
          })),
        ];
        const lots = Math.floor(Math.min(kind.supply / kind.step, Math.ceil(atMost / kind.step)));
        bundles.push(columnOf(ties ? 0 : price, lots, entries));
      }
      return { row, least, begun, bundled, atMost, breaks: breakRows(rows, bundles, kind, pieces) };
    });
    for (const pattern of patterns[p] ?? []) {
      const kind = part.kinds[pattern.kind];
      const at = kindRows[pattern.kind];
      if (!kind || !at) continue;
      const price = at.bundled ? 0 : kind.cost;
      const cost = (price - patternRest(part, pattern)) / grainsPerMinor;
      const entries = [
        ...pattern.counts.map((amount, i) => ({ row: classRows[i] ?? -1, amount })),
        { row: at.row, amount: 1 },
        { row: at.least, amount: 1 },
        { row: at.begun, amount: 1 },
        ...at.breaks.map((row) => ({ row, amount: 1 })),
        { row: costRow, amount: cost },
        ...model.links.map((link, r) => ({
          row: linkRows[r] ?? -1,
          amount: at.bundled ? 0 : (link.boards[p]?.[pattern.kind] ?? 0),
        })),
      ];
      const own = ties ? tieCost(part, pattern, ties) : cost;
      columns.push(columnOf(own, at.atMost, entries));
    }
  }
  const extras = model.extras.map((extra) => {
    const cost = extra.cost / grainsPerMinor;
    const entries = extra.links.map((amount, r) => ({ row: linkRows[r] ?? -1, amount }));
    return columnOf(ties ? 0 : cost, extra.most, [...entries, { row: costRow, amount: cost }]);
  });
  const program = { columns: [...columns, ...bundles, ...extras], rows: rows.all, whole: true };
  const read = (values: readonly number[]): CutSolution => {
    let at = 0;
    const uses = patterns.map((list) =>
      list.flatMap((pattern) => {
        const boards = Math.round(values[at++] ?? 0);
        return boards > 0 ? [{ pattern, boards }] : [];
      }),
    );
    const from = columns.length + bundles.length;
    return { uses, extras: model.extras.map((_, e) => Math.round(values[from + e] ?? 0)) };
  };
  return { program, patterns, read };
}

/** A price for so many boards or none: a decision of its own, and the rows that hold boards to it. */
function breakRows(
  rows: Rows,
  columns: ProgramColumn[],
  kind: CutModel["parts"][number]["kinds"][number],
  pieces: number,
): number[] {
  if (kind.from <= 1) return [];
  const enough = rows.add(0, free);
  const ifAny = rows.add(none, 0);
  const most = Math.min(kind.supply, Math.max(pieces, kind.from) + 20);
  const entries = [
    { row: enough, amount: -kind.from },
    { row: ifAny, amount: -most },
  ];
  columns.push(columnOf(0, 1, entries));
  return [enough, ifAny];
}

/** A board cut so, by what ties are decided by: pieces cut short, boards, cuts. */
function tieCost(part: CutModel["parts"][number], pattern: Pattern, ties: TieWeights): number {
  const pieces = pattern.counts.reduce((sum, count) => sum + count, 0);
  const kind = part.kinds[pattern.kind];
  const filled = pattern.counts.reduce(
    (sum, count, i) => sum + count * (part.classes[i]?.fullU ?? 0),
    0,
  );
  const cuts = pieces - (filled === kind?.capacityU ? 1 : 0) + (kind?.partsU == null ? 0 : 1);
  return (isTight(part, pattern) ? ties.tight : 0) + ties.board + ties.cut * cuts;
}
