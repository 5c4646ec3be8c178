import {
  type FrameSpec,
  foot,
  framePieces,
  inch,
  type Length,
  money,
  type Piece,
  ProblemError,
  readSection,
  type Section,
  type StockBoard,
  times,
} from "../../../lib/index.ts";

/** What the tests of lumber are made from: short ways to write sections, beds, pieces and boards. */
export function section(text: string, seasoning: "dry" | "green" = "dry"): Section {
  const read = readSection(text, { path: ["section"], seasoning });
  if (!read.ok) throw new ProblemError([read.problem]);
  return read.value;
}

export const inches = (n: number): Length => times(n, inch);
export const feet = (n: number): Length => times(n, foot);

export function bed(over: Partial<FrameSpec> = {}): FrameSpec {
  return {
    name: "A-1",
    length: feet(8),
    width: feet(4),
    courses: 1,
    section: section("2x12"),
    lap: "sides",
    cap: null,
    stakes: 0,
    ...over,
  };
}

export const bedPieces = (over: Partial<FrameSpec> = {}): readonly Piece[] =>
  framePieces(bed(over));

export function piece(lengthIn: number, count: number, over: Partial<Piece> = {}): Piece {
  return {
    name: `${over.bed ?? "list"} ${lengthIn}`,
    bed: "list",
    part: "other",
    section: section("2x12"),
    length: inches(lengthIn),
    count,
    ...over,
  };
}

export function board(lengthIn: number, price: number, over: Partial<StockBoard> = {}): StockBoard {
  return {
    yard: "North",
    section: section("2x12"),
    length: inches(lengthIn),
    price: money(price),
    ...over,
  };
}

export const kept = (lengthIn: number, over: Partial<StockBoard> = {}): StockBoard =>
  board(lengthIn, 0, { yard: null, ...over });

/** The codes and places of the problems a calculation throws. */
export function problemsOf(calculation: () => unknown): string[] {
  try {
    calculation();
  } catch (error) {
    if (error instanceof ProblemError)
      return error.problems.map((p) => `${p.code} ${p.path.join(".")}`);
    throw error;
  }
  return [];
}

/** The same of a promise. */
export async function rejection(promise: Promise<unknown>): Promise<string[]> {
  try {
    await promise;
  } catch (error) {
    if (error instanceof ProblemError)
      return error.problems.map((p) => `${p.code} ${p.path.join(".")}`);
    throw error;
  }
  return [];
}
