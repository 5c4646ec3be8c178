import type { BoardPlan, CutBoard, CutPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { Findings } from "./findings.ts";

// Nothing here uses the planner's code: the rules are stated a second time, in metres.
const slackM = 1e-7;
const mitreFactor = 1.41;
// A mitred kerf may be rounded up to the saw's step.
const sawStepM = 0.0016;

const inches = (lengthM: number) => `${Number((lengthM / 0.0254).toFixed(4))} in`;

type Path = readonly (string | number)[];

/** What is sawn in one go: a board without what squares it, or one part of it. */
interface Stretch {
  readonly pieces: readonly CutPiece[];
  readonly lengthM: number;
  readonly restM: number;
  /** What the rest is called in the plan. */
  readonly rest: Path;
}

/** What lies on each board, with the cuts between, is no longer than the board. */
export function checkBoards(
  findings: Findings,
  problem: BoardProblem,
  { plan, delivered }: { readonly plan: BoardPlan; readonly delivered: ReadonlySet<string> },
): void {
  const labels = new Set(plan.cuts.map((cut) => cut.board));
  findings.same(labels.size, plan.cuts.length, ["cuts", "board"]);
  for (const [i, board] of plan.cuts.entries()) {
    const path = ["cuts", i + 1];
    const words = { allowed: "a piece or more", received: "none" };
    findings.holds(board.pieces.length > 0, path, words);
    findings.same(problem.squaring?.si ?? 0, board.squared.si, [...path, "squared"]);
    checkLoad(findings, { board, path }, { problem, delivered });
    const stretches = stretchesOf(board, problem.kerf.si);
    const usedUp = stretches.filter((each) =>
      checkStretch(findings, each, { path, kerfM: problem.kerf.si }),
    );
    const mitred = stretches.filter((each) => each.pieces.some((piece) => piece.mitred));
    checkCuts(findings, { board, path }, { usedUp: usedUp.length, mitred: mitred.length });
  }
}

/** A board too long for the car is cut at the yard, where that is allowed; no other is. */
function checkLoad(
  findings: Findings,
  { board, path }: { readonly board: CutBoard; readonly path: Path },
  given: { readonly problem: BoardProblem; readonly delivered: ReadonlySet<string> },
): void {
  const { loadLength, cutAtYard, kerf } = given.problem;
  const { yard, atYard, length } = board;
  const place = [...path, "atYard"];
  const goesOnCar = loadLength !== undefined && yard !== null && !given.delivered.has(yard);
  const isTooLong = goesOnCar && length.si > loadLength.si + slackM;
  if (atYard === null) {
    const allowed = `boards up to ${inches(loadLength?.si ?? 0)}, or cut at the yard`;
    findings.holds(!isTooLong, place, { allowed, received: inches(length.si) });
    return;
  }
  const allowed = isTooLong && cutAtYard === true;
  const words = { allowed: "no cut at the yard", received: inches(atYard.first.si) };
  findings.holds(allowed, place, words);
  const secondM = length.si - atYard.first.si - kerf.si;
  for (const partM of [atYard.first.si, secondM]) {
    const fits = partM >= -slackM && partM <= (loadLength?.si ?? length.si) + slackM;
    const most = { allowed: `parts up to ${inches(loadLength?.si ?? 0)}`, received: inches(partM) };
    findings.holds(fits, place, most);
  }
  const isCount = atYard.pieces >= 0 && atYard.pieces <= board.pieces.length;
  findings.holds(isCount && Number.isInteger(atYard.pieces), [...place, "pieces"], {
    allowed: `0 to ${board.pieces.length} pieces on the first part`,
    received: String(atYard.pieces),
  });
}

function stretchesOf(board: CutBoard, kerfM: number): Stretch[] {
  const { atYard, pieces, length, squared, offcut } = board;
  const last = { restM: offcut.si, rest: ["offcut"] };
  if (atYard === null) return [{ pieces, lengthM: length.si - squared.si, ...last }];
  const { first, rest } = atYard;
  return [
    {
      pieces: pieces.slice(0, atYard.pieces),
      lengthM: first.si - squared.si,
      ...{ restM: rest.si, rest: ["atYard", "rest"] },
    },
    { pieces: pieces.slice(atYard.pieces), lengthM: length.si - first.si - kerfM, ...last },
  ];
}

/** Whether pieces use a stretch up, so that the last needs no cut of its own. */
function checkStretch(
  findings: Findings,
  { pieces, lengthM, restM, rest }: Stretch,
  { path, kerfM }: { readonly path: Path; readonly kerfM: number },
): boolean {
  const kerfs = pieces.map((piece) => kerfM * (piece.mitred ? mitreFactor : 1));
  const piecesM = pieces.reduce((sum, piece) => sum + piece.length.si, 0);
  const sawnM = kerfs.reduce((sum, kerf) => sum + kerf, 0);
  const lastM = Math.max(0, ...kerfs);
  const usedM = piecesM + sawnM - lastM;
  const words = { allowed: inches(lengthM), received: inches(usedM) };
  findings.holds(usedM <= lengthM + slackM, path, words);
  const leftM = Math.max(0, lengthM - piecesM - sawnM);
  const fits = restM >= -slackM && restM <= leftM + lastM + slackM;
  const isWhole = restM >= leftM - sawStepM * pieces.length - slackM;
  const left = { allowed: inches(leftM), received: inches(restM) };
  findings.holds(fits && isWhole, [...path, ...rest], left);
  return pieces.length > 0 && Math.abs(usedM - lengthM) <= slackM;
}

/** A cut for each piece, one more on a stretch with mitres, one to square the end, one at the yard. */
function checkCuts(
  findings: Findings,
  { board, path }: { readonly board: CutBoard; readonly path: Path },
  { usedUp, mitred }: { readonly usedUp: number; readonly mitred: number },
): void {
  const { pieces, squared, atYard, cutCount } = board;
  const others = (squared.si > 0 ? 1 : 0) + (atYard === null ? 0 : 1);
  const most = pieces.length + mitred + others;
  const isCounted = Number.isInteger(cutCount) && cutCount <= most && cutCount >= most - usedUp;
  const words = { allowed: String(most), received: String(cutCount) };
  findings.holds(isCounted, [...path, "cutCount"], words);
}
