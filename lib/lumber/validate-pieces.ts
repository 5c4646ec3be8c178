import type { BoardPlan, CutBoard, CutPiece, SplicedPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import { type Findings, grouped } from "./findings.ts";
import type { Piece } from "./piece.ts";

// Nothing here uses the planner's code: the rules are stated a second time, in metres.
const slackM = 1e-7;

const inches = (lengthM: number) => `${Number((lengthM / 0.0254).toFixed(4))} in`;
const plain = (timber: string | undefined) => (timber ?? "").trim().toLowerCase();

type Wanted = Pick<Piece, "name" | "bed" | "section" | "timber" | "count"> & {
  readonly mitred: boolean;
  readonly lengthM: number;
};

interface Made {
  readonly piece: CutPiece;
  readonly board: CutBoard;
}

const keyOf = (name: string, bed: string, section: string, mitred: boolean) =>
  JSON.stringify([name, bed, section, mitred]);

/** What is to be made: each piece, or in its place the parts it is joined of. */
function wantedPieces(problem: BoardProblem, plan: BoardPlan): Wanted[] {
  return problem.pieces.flatMap((piece): Wanted[] => {
    const { name, bed, section, timber, count, length, mitred = false } = piece;
    const common = {
      ...{ name, bed, section, count, mitred },
      ...(timber === undefined ? {} : { timber }),
    };
    const whole = plan.spliced.find(
      (each) =>
        each.name === name && each.bed === bed && Math.abs(each.asked.si - length.si) <= slackM,
    );
    if (whole === undefined) return [{ ...common, lengthM: length.si }];
    const of = whole.parts.length;
    return whole.parts.map((part, n) => {
      return { ...common, name: `${name}, part ${n + 1} of ${of}`, lengthM: part.si };
    });
  });
}

/** Every piece is made exactly once, at full length or short within the allowance, like pieces alike. */
export function checkPieces(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const wanted = grouped(wantedPieces(problem, plan), ({ name, bed, section, mitred }) =>
    keyOf(name, bed, section.name, mitred),
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
  pieces: readonly Wanted[],
  { made, shortfallM }: { readonly made: readonly Made[]; readonly shortfallM: number },
): void {
  const [first] = pieces;
  const path = ["cuts", first?.name ?? ""];
  const asked = pieces
    .flatMap((piece) => Array.from({ length: piece.count }, () => piece.lengthM))
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

/** The pieces said to be shortened are those that are, by what is said. */
export function checkShortened(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
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

/** Pieces are joined only where that is allowed and nothing holds them whole; joints said to be on stakes are. */
export function checkSpliced(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  for (const each of plan.spliced) {
    const path = ["spliced", each.name];
    const piece = problem.pieces.find(
      ({ name, bed, length }) =>
        name === each.name && bed === each.bed && Math.abs(length.si - each.asked.si) <= slackM,
    );
    const isAsked = piece !== undefined && piece.count === each.count;
    findings.holds(isAsked, path, { allowed: "pieces asked for", received: each.name });
    findings.holds(problem.splice === true, path, {
      allowed: "no joints, they are not asked for",
      received: `${each.parts.length} parts`,
    });
    const lengths = each.parts.map((part) => part.si);
    const sumM = lengths.reduce((sum, lengthM) => sum + lengthM, 0);
    findings.same(each.asked.si, sumM, [...path, "parts"]);
    const isJoined = lengths.length > 1 && lengths.every((lengthM) => lengthM > 0);
    const several = { allowed: "two parts or more", received: lengths.map(inches).join(" + ") };
    findings.holds(isJoined, [...path, "parts"], several);
    checkJoints(findings, each, piece);
  }
}

function checkJoints(findings: Findings, each: SplicedPiece, piece: Piece | undefined): void {
  const path = ["spliced", each.name, "onStakes"];
  const stakesM = (piece?.stakesAt ?? []).map((stake) => stake.si);
  findings.same(Number(stakesM.length > 0), Number(each.onStakes), path);
  if (stakesM.length === 0) return;
  let jointM = 0;
  for (const part of each.parts.slice(0, -1)) {
    jointM += part.si;
    const isOnStake = stakesM.some((stakeM) => Math.abs(stakeM - jointM) <= slackM);
    const words = {
      allowed: `joints at ${stakesM.map(inches).join(", ")}`,
      received: inches(jointM),
    };
    findings.holds(isOnStake, path, words);
  }
}
