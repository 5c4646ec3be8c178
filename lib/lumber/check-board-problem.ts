import { Checks, foot, inch, type Length, money, times, zeroOf } from "../measure/index.ts";
import type { BoardProblem } from "./board-problem.ts";
import { checkSection } from "./checks.ts";

const longest: Length = times(100, foot);
const widestKerf: Length = times(0.5, inch);
const noLength: Length = zeroOf(inch);

function checkPieces(checks: Checks, pieces: BoardProblem["pieces"]): void {
  for (const [i, piece] of pieces.entries()) {
    const path = ["pieces", i + 1];
    checkSection(checks, piece?.section, [...path, "section"]);
    checks
      .quantity(piece?.length, "length", [...path, "length"], { above: noLength, max: longest })
      .count(piece?.count, [...path, "count"], { max: 100_000 });
  }
}

function checkStock(checks: Checks, stock: BoardProblem["stock"]): void {
  let first: { code: string; row: number } | undefined;
  for (const [i, board] of stock.entries()) {
    const path = ["stock", i + 1];
    checkSection(checks, board?.section, [...path, "section"]);
    checks
      .quantity(board?.length, "length", [...path, "length"], { above: noLength, max: longest })
      .money(board?.price, [...path, "price"], { min: money(0), max: money(100_000) });
    if (board?.limit !== undefined) checks.count(board.limit, [...path, "limit"], { max: 1e6 });
    const code = board?.price?.currency;
    if (code === undefined) continue;
    first ??= { code, row: i + 1 };
    checks.unless(code === first.code, {
      code: "mixed-currency",
      path: [...path, "price"],
      allowed: `one currency, ${first.code} as in row ${first.row}`,
      received: code,
      remedy: "Give all prices in one currency.",
      also: [["stock", first.row, "price"]],
    });
  }
}

function checkList(checks: Checks, value: unknown, name: string): boolean {
  const missing = value === undefined || value === null;
  checks.unless(Array.isArray(value), {
    code: missing ? "missing" : "unreadable",
    path: [name],
    allowed: `a list of ${name}`,
    received: missing ? "" : String(value),
    remedy: "Give a list; it may be empty.",
  });
  return Array.isArray(value);
}

/** All that is wrong with a board problem, row by row. */
export function checkBoardProblem(problem: BoardProblem): Checks {
  const checks = new Checks();
  if (checkList(checks, problem?.pieces, "pieces")) checkPieces(checks, problem.pieces);
  if (checkList(checks, problem?.stock, "stock")) checkStock(checks, problem.stock);
  return checks
    .quantity(problem?.kerf, "length", ["kerf"], { min: noLength, max: widestKerf })
    .quantity(problem?.shortfall, "length", ["shortfall"], { min: noLength, max: inch });
}
