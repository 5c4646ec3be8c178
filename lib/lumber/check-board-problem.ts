import { type Path, requireRecord } from "../check/index.ts";
import {
  Checks,
  foot,
  inch,
  isQuantity,
  type Length,
  money,
  over,
  times,
  zeroOf,
} from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { listed, requireShape, sized } from "../measure/shape.ts";
import type { BoardProblem, StockBoard } from "./board-problem.ts";
import { checkSection, checkTimber, sizeInWords } from "./checks.ts";

const longest: Length = times(100, foot);
const widestKerf: Length = times(0.5, inch);
const noLength: Length = zeroOf(inch);

function isRecord(checks: Checks, value: unknown, path: Path): boolean {
  const before = checks.problems.length;
  checks.attempt(() => requireRecord(value, path));
  return checks.problems.length === before;
}

function checkPieces(checks: Checks, pieces: BoardProblem["pieces"]): void {
  for (const [i, piece] of pieces.entries()) {
    const path = ["pieces", i + 1];
    if (!isRecord(checks, piece, path)) continue;
    checkSection(checks, piece.section, [...path, "section"]);
    checkTimber(checks, piece.timber, [...path, "timber"]);
    checks
      .text(piece.name, [...path, "name"])
      .choice(piece.mitred ?? false, [true, false], [...path, "mitred"])
      .quantity(piece.length, "length", [...path, "length"], { above: noLength, max: longest })
      .count(piece.count, [...path, "count"], { max: 100_000 });
    const { stakesAt = [] } = piece;
    const aPlace = listed(sized("length", { min: noLength, max: longest }));
    checks.attempt(() => requireShape(stakesAt, aPlace, [...path, "stakesAt"]));
  }
}

function checkStock(checks: Checks, stock: BoardProblem["stock"]): void {
  let first: { code: string; row: number } | undefined;
  for (const [i, board] of stock.entries()) {
    const path = ["stock", i + 1];
    if (!isRecord(checks, board, path)) continue;
    checkSection(checks, board.section, [...path, "section"]);
    checkTimber(checks, board.timber, [...path, "timber"]);
    if (board.yard !== null) checks.text(board.yard, [...path, "yard"]);
    checks
      .quantity(board.length, "length", [...path, "length"], { above: noLength, max: longest })
      .money(board.price, [...path, "price"], { min: money(0), max: money(100_000) });
    if (board.limit !== undefined) checks.count(board.limit, [...path, "limit"], { max: 1e6 });
    for (const name of ["from", "step"] as const) {
      if (board[name] === undefined) continue;
      checks.count(board[name], [...path, name], { min: 1, max: 100_000 });
    }
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
    received: receivedText(value ?? undefined),
    remedy: "Give a list; it may be empty.",
  });
  return Array.isArray(value);
}

function isSized(board: StockBoard | undefined): board is StockBoard {
  if (!isQuantity(board?.price) || !isQuantity(board?.length)) return false;
  return Number.isFinite(board.price.si) && Number.isFinite(board.length.si) && board.length.si > 0;
}

/** Offcuts worth as much as boards would be bought for their own sake. */
function checkOffcuts(checks: Checks, { offcuts, stock }: BoardProblem): void {
  if (offcuts === undefined || !isRecord(checks, offcuts, ["offcuts"])) return;
  const before = checks.problems.length;
  checks
    .quantity(offcuts.from, "length", ["offcuts", "from"], { min: noLength, max: longest })
    .quantity(offcuts.worth, "price per length", ["offcuts", "worth"], {
      min: over(money(0), inch),
    });
  if (checks.problems.length > before || !Array.isArray(stock)) return;
  for (const [at, board] of stock.entries()) {
    if (!isSized(board) || board.yard === null || offcuts.worth.si === 0) continue;
    checks.unless(offcuts.worth.si < board.price.si / board.length.si, {
      code: "contradiction",
      path: ["offcuts", "worth"],
      allowed: `less than the boards of row ${at + 1} cost by length, ${board.price.si} for ${sizeInWords(board.length.si)}`,
      received: receivedText(offcuts.worth),
      remedy: "Give offcuts a lower worth, or nothing.",
      also: [["stock", at + 1, "price"]],
    });
  }
}

/** All that is wrong with a board problem, row by row. */
export function checkBoardProblem(problem: BoardProblem): Checks {
  requireRecord(problem, ["problem"]);
  const checks = new Checks();
  if (checkList(checks, problem.pieces, "pieces")) checkPieces(checks, problem.pieces);
  if (checkList(checks, problem.stock, "stock")) checkStock(checks, problem.stock);
  checkOffcuts(checks, problem);
  const { squaring, loadLength, splice = false, cutAtYard = false } = problem;
  if (squaring !== undefined) {
    checks.quantity(squaring, "length", ["squaring"], { min: noLength, max: times(2, foot) });
  }
  if (loadLength !== undefined) {
    checks.quantity(loadLength, "length", ["loadLength"], { above: noLength, max: longest });
  }
  return checks
    .choice(splice, [true, false], ["splice"])
    .choice(cutAtYard, [true, false], ["cutAtYard"])
    .quantity(problem.kerf, "length", ["kerf"], { min: noLength, max: widestKerf })
    .quantity(problem.shortfall, "length", ["shortfall"], { min: noLength, max: inch });
}
