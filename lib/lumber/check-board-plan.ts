import { type Path, requireRecord } from "../check/index.ts";
import { Checks } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { listed, requireShape, sized } from "../measure/shape.ts";
import { checkSection } from "./checks.ts";

type Fields = Readonly<Record<string, unknown>>;
type Check = (checks: Checks, fields: Fields, path: Path) => void;

function checkList(checks: Checks, value: unknown, path: Path, check: Check): void {
  checks.unless(Array.isArray(value), {
    code: value === undefined || value === null ? "missing" : "unreadable",
    path,
    allowed: "a list",
    received: receivedText(value ?? undefined),
    remedy: "Give a plan as planBoards makes it.",
  });
  const entries: readonly unknown[] = Array.isArray(value) ? value : [];
  for (const [at, entry] of entries.entries()) {
    const place = [...path, at + 1];
    checks.attempt(() => {
      requireRecord(entry, place);
      check(checks, entry as Fields, place);
    });
  }
}

function checkBoard(checks: Checks, board: Fields, path: Path): void {
  checkSection(checks, board.section, [...path, "section"]);
  if (board.yard !== null) checks.text(board.yard, [...path, "yard"]);
  if (board.timber !== "") checks.text(board.timber, [...path, "timber"]);
  checks.quantity(board.length, "length", [...path, "length"]);
}

function checkYardCut(checks: Checks, atYard: unknown, path: Path): void {
  checks.attempt(() => {
    requireRecord(atYard, path);
    const { first, pieces, rest } = atYard as Fields;
    checks
      .quantity(first, "length", [...path, "first"])
      .number(pieces, [...path, "pieces"])
      .quantity(rest, "length", [...path, "rest"]);
  });
}

const checkCut: Check = (checks, board, path) => {
  checkBoard(checks, board, path);
  checks
    .text(board.board, [...path, "board"])
    .quantity(board.offcut, "length", [...path, "offcut"])
    .quantity(board.squared, "length", [...path, "squared"])
    .number(board.cutCount, [...path, "cutCount"]);
  if (board.atYard !== null) checkYardCut(checks, board.atYard, [...path, "atYard"]);
  checkList(checks, board.pieces, [...path, "pieces"], (_, piece, place) => {
    checks
      .text(piece.name, [...place, "name"])
      .quantity(piece.length, "length", [...place, "length"])
      .choice(piece.mitred, [true, false], [...place, "mitred"]);
  });
};

const checkLine: Check = (checks, line, path) => {
  checkBoard(checks, line, path);
  checks
    .number(line.count, [...path, "count"])
    .number(line.unused, [...path, "unused"])
    .money(line.price, [...path, "price"])
    .money(line.sum, [...path, "sum"]);
};

const checkShort: Check = (checks, piece, path) => {
  checks.text(piece.name, [...path, "name"]).number(piece.count, [...path, "count"]);
  for (const key of ["asked", "cut", "short"]) {
    checks.quantity(piece[key], "length", [...path, key]);
  }
};

const checkSplice: Check = (checks, piece, path) => {
  checks
    .text(piece.name, [...path, "name"])
    .number(piece.count, [...path, "count"])
    .quantity(piece.asked, "length", [...path, "asked"])
    .choice(piece.onStakes, [true, false], [...path, "onStakes"]);
  const { parts } = piece;
  checks.attempt(() => requireShape(parts, listed(sized("length")), [...path, "parts"]));
};

/** Adds what is wrong with the boards of a plan and the pieces on them. */
export function checkCuts(checks: Checks, cuts: unknown, path: Path): void {
  checkList(checks, cuts, path, checkCut);
}

/** Whether a board plan has the fields a plan has, each of its kind; not whether it is right. */
export function checkBoardPlan(plan: unknown): Checks {
  requireRecord(plan, ["plan"]);
  const fields = plan as Fields;
  const checks = new Checks()
    .money(fields.cost, ["cost"])
    .money(fields.offcutWorth, ["offcutWorth"]);
  checkCuts(checks, fields.cuts, ["cuts"]);
  checkList(checks, fields.buy, ["buy"], checkLine);
  checkList(checks, fields.shortened, ["shortened"], checkShort);
  checkList(checks, fields.spliced, ["spliced"], checkSplice);
  for (const key of ["boughtCount", "keptCount", "cutCount", "yield", "waste"]) {
    checks.number(fields[key], [key]);
  }
  for (const key of ["boughtLength", "keptLength", "piecesLength"]) {
    checks.quantity(fields[key], "length", [key]);
  }
  return checks;
}
