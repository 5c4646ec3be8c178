import { Checks, type Length } from "../measure/index.ts";
import type { BoardPlan, CutBoard, CutPiece } from "./board-plan.ts";
import type { BoardProblem, StockBoard } from "./board-problem.ts";
import { checkBoardPlan } from "./check-board-plan.ts";
import { checkBoardProblem } from "./check-board-problem.ts";
import type { Piece } from "./piece.ts";

// Nothing here uses the planner's code: the rules are stated a second time, in metres.
const slackM = 1e-7;
const cents = 1e-6;
const mitreFactor = 1.41;

const inches = (lengthM: number) => `${Number((lengthM / 0.0254).toFixed(4))} in`;
const plain = (timber: string | undefined) => (timber ?? "").trim().toLowerCase();

class Findings extends Checks {
  /** Adds a contradiction where something does not hold. */
  holds(
    holds: boolean,
    path: readonly (string | number)[],
    words: { allowed: string; received: string },
  ): void {
    const remedy = "The plan breaks its own rules: make it again, and report this.";
    this.unless(holds, { code: "contradiction", path, ...words, remedy });
  }

  same(expected: number, got: number, path: readonly (string | number)[], slack = slackM): void {
    const words = { allowed: String(expected), received: String(got) };
    this.holds(Math.abs(expected - got) <= slack, path, words);
  }
}

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return groups;
}

interface Made {
  readonly piece: CutPiece;
  readonly board: CutBoard;
}

/** Every piece is made exactly once, at full length or short within the allowance, like pieces alike. */
function checkPieces(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const keyOf = (name: string, bed: string, section: string, mitred: boolean) =>
    JSON.stringify([name, bed, section, mitred]);
  const wanted = grouped(problem.pieces, (piece) =>
    keyOf(piece.name, piece.bed, piece.section.name, piece.mitred === true),
  );
  const made = grouped(
    plan.cuts.flatMap((board) => board.pieces.map((piece): Made => ({ piece, board }))),
    ({ piece, board }) => keyOf(piece.name, piece.bed, board.section.name, piece.mitred),
  );
  for (const key of made.keys()) {
    findings.holds(wanted.has(key), ["cuts"], { allowed: "pieces asked for", received: key });
  }
  for (const [key, pieces] of wanted) {
    checkLikePieces(findings, pieces, {
      made: made.get(key) ?? [],
      shortfallM: problem.shortfall.si,
    });
  }
}

function checkLikePieces(
  findings: Findings,
  pieces: readonly Piece[],
  { made, shortfallM }: { made: readonly Made[]; shortfallM: number },
): void {
  const [first] = pieces;
  const path = ["cuts", first?.name ?? ""];
  const asked = pieces
    .flatMap((piece) => Array.from({ length: piece.count }, () => piece.length.si))
    .sort((a, b) => b - a);
  const cut = made.map(({ piece }) => piece.length.si).sort((a, b) => b - a);
  findings.same(asked.length, cut.length, [...path, "count"]);
  const cutAs = new Map<number, number>();
  for (const [i, askedM] of asked.entries()) {
    const cutM = cut[i];
    // One that is not made at all is found by its count.
    if (cutM === undefined) continue;
    const words = {
      allowed: `${inches(askedM - shortfallM)} to ${inches(askedM)}`,
      received: inches(cutM),
    };
    findings.holds(cutM <= askedM + slackM && cutM >= askedM - shortfallM - slackM, path, words);
    const alike = cutAs.get(askedM) ?? cutM;
    cutAs.set(askedM, alike);
    findings.same(alike, cutM, [...path, "alike"]);
  }
  for (const { board } of made) {
    const timbers = new Set(pieces.map((piece) => plain(piece.timber)));
    const fits = timbers.has("") || timbers.has(plain(board.timber));
    findings.holds(fits, path, { allowed: [...timbers].join(", "), received: board.timber });
  }
}

/** What lies on each board, with the cuts between, is no longer than the board. */
function checkBoards(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const labels = new Set(plan.cuts.map((cut) => cut.board));
  findings.same(labels.size, plan.cuts.length, ["cuts", "board"]);
  for (const [i, board] of plan.cuts.entries()) {
    const path = ["cuts", i + 1];
    const kerfs = board.pieces.map((piece) => problem.kerf.si * (piece.mitred ? mitreFactor : 1));
    const piecesM = board.pieces.reduce((sum, piece) => sum + piece.length.si, 0);
    const sawnM = kerfs.reduce((sum, kerf) => sum + kerf, 0);
    const lastM = Math.max(0, ...kerfs);
    const usedM = piecesM + sawnM - lastM;
    const words = { allowed: inches(board.length.si), received: inches(usedM) };
    findings.holds(board.pieces.length > 0, path, { allowed: "a piece or more", received: "none" });
    findings.holds(usedM <= board.length.si + slackM, path, words);
    const leftM = board.length.si - piecesM - sawnM;
    // A mitred kerf may be rounded up to the saw's step.
    const roundM = 0.0016 * board.pieces.length;
    const offcutM = board.offcut.si;
    const fitsOffcut = offcutM >= -slackM && offcutM <= Math.max(0, leftM) + lastM + slackM;
    const wholeOffcut = offcutM >= Math.max(0, leftM) - roundM - slackM;
    findings.holds(fitsOffcut && wholeOffcut, [...path, "offcut"], {
      allowed: inches(Math.max(0, leftM)),
      received: inches(offcutM),
    });
    const usedUp = Math.abs(usedM - board.length.si) <= slackM;
    const mitres = board.pieces.some((piece) => piece.mitred) ? 1 : 0;
    const most = board.pieces.length + mitres;
    const counted = board.cutCount === most || (usedUp && board.cutCount === most - 1);
    findings.holds(counted, [...path, "cutCount"], {
      allowed: String(most),
      received: String(board.cutCount),
    });
  }
}

const stockKey = (board: { yard: string | null; section: { name: string }; length: Length }) =>
  JSON.stringify([board.yard, board.section.name, board.length.si.toFixed(6)]);

function limitOf(board: StockBoard): number {
  return board.limit ?? (board.yard === null ? 1 : Number.POSITIVE_INFINITY);
}

/** Boards come from the stock, no more of them than there are. */
function checkSupply(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const stock = grouped(problem.stock, stockKey);
  for (const [key, cuts] of grouped(plan.cuts, stockKey)) {
    const offers = (stock.get(key) ?? []).filter((offer) =>
      cuts.some((cut) => plain(offer.timber) === "" || plain(offer.timber) === plain(cut.timber)),
    );
    const limit = offers.reduce((sum, offer) => sum + limitOf(offer), 0);
    const words = { allowed: `at most ${limit} boards ${key}`, received: String(cuts.length) };
    findings.holds(cuts.length <= limit, ["cuts"], words);
  }
}

/** The buying list agrees with the boards, and its sums with its prices. */
function checkBill(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const lineKey = (line: {
    yard: string | null;
    section: { name: string };
    timber: string;
    length: Length;
  }) => JSON.stringify([line.yard, line.section.name, line.timber, line.length.si.toFixed(6)]);
  const bought = grouped(
    plan.cuts.filter((cut) => cut.yard !== null),
    lineKey,
  );
  const lines = grouped(plan.buy, lineKey);
  for (const key of new Set([...bought.keys(), ...lines.keys()])) {
    const count = (lines.get(key) ?? []).reduce((sum, line) => sum + line.count, 0);
    findings.same(bought.get(key)?.length ?? 0, count, ["buy", key]);
  }
  for (const [i, line] of plan.buy.entries()) {
    const priced = problem.stock.filter(
      (offer) => stockKey(offer) === stockKey(line) && offer.price.si === line.price.si,
    );
    const limit = priced.reduce((sum, offer) => sum + limitOf(offer), 0);
    const words = { allowed: `at most ${limit} at this price`, received: String(line.count) };
    findings.holds(line.count <= limit, ["buy", i + 1], words);
    findings.same(line.price.si * line.count, line.sum.si, ["buy", i + 1, "sum"], cents);
  }
  const sum = plan.buy.reduce((total, line) => total + line.sum.si, 0);
  findings.same(sum, plan.cost.si, ["cost"], cents);
}

function checkTotals(findings: Findings, plan: BoardPlan): void {
  const length = (boards: readonly CutBoard[]) =>
    boards.reduce((sum, cut) => sum + cut.length.si, 0);
  const bought = plan.cuts.filter((cut) => cut.yard !== null);
  const kept = plan.cuts.filter((cut) => cut.yard === null);
  const piecesM = plan.cuts
    .flatMap((cut) => cut.pieces)
    .reduce((sum, piece) => sum + piece.length.si, 0);
  findings.same(bought.length, plan.boughtCount, ["boughtCount"]);
  findings.same(kept.length, plan.keptCount, ["keptCount"]);
  findings.same(length(bought), plan.boughtLength.si, ["boughtLength"], 1e-6);
  findings.same(length(kept), plan.keptLength.si, ["keptLength"], 1e-6);
  findings.same(piecesM, plan.piecesLength.si, ["piecesLength"], 1e-6);
  const usedM = length(plan.cuts);
  findings.same(usedM > 0 ? piecesM / usedM : 1, plan.yield, ["yield"], 1e-9);
  findings.same(1, plan.yield + plan.waste, ["waste"], 1e-9);
  findings.same(
    plan.cuts.reduce((sum, cut) => sum + cut.cutCount, 0),
    plan.cutCount,
    ["cutCount"],
  );
}

/** The pieces said to be shortened are those that are, by what is said. */
function checkShortened(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const cut = plan.cuts.flatMap((board) => board.pieces);
  const total = (lengths: readonly number[]) => lengths.reduce((sum, length) => sum + length, 0);
  const said = total(plan.shortened.map((each) => each.short.si * each.count));
  const asked = total(problem.pieces.map((piece) => piece.length.si * piece.count));
  findings.same(asked - total(cut.map((piece) => piece.length.si)), said, ["shortened"], 1e-6);
  for (const each of plan.shortened) {
    const path = ["shortened", each.name];
    findings.same(each.asked.si - each.cut.si, each.short.si, path);
    const found = cut.some(
      (p) => p.name === each.name && Math.abs(p.length.si - each.cut.si) < slackM,
    );
    findings.holds(found, path, { allowed: "a piece of the plan", received: each.name });
  }
}

/**
 * Checks a plan against its problem by rules stated afresh, sharing nothing with the planner: each
 * piece made exactly once, at its length or short within the allowance and like pieces of a bed
 * alike; no board over its length, kerf counted; boards from the stock and within its limits; the
 * bill added up again; totals, yield and shortened pieces as they are said to be.
 *
 * @returns all that is wrong; an empty list for a sound plan
 * @throws ProblemError for what is no board problem or no plan at all; what is wrong with a plan is in
 * the list
 * @rule Pieces on a board, and the cuts between them, are no longer than the board.
 * @source common practice
 * @example
 * const none = { pieces: [], stock: [], kerf: millimetre, shortfall: millimetre }
 * const zero = times(0, inch)
 * const plan = { cuts: [], buy: [], cost: money(0), proof: { kind: "optimal" }, boughtCount: 0, keptCount: 0, boughtLength: zero, keptLength: zero, piecesLength: zero, cutCount: 0, yield: 1, waste: 0, shortened: [], remarks: [], cautions: [] }
 * validateBoardPlan(none, plan) // => []
 */
export function validateBoardPlan(problem: BoardProblem, plan: BoardPlan): Checks["problems"] {
  checkBoardProblem(problem).done();
  checkBoardPlan(plan).done();
  const findings = new Findings();
  checkPieces(findings, problem, plan);
  checkBoards(findings, problem, plan);
  checkSupply(findings, problem, plan);
  checkBill(findings, problem, plan);
  checkTotals(findings, plan);
  checkShortened(findings, problem, plan);
  return findings.problems;
}
