import { type Problem, ProblemError } from "../check/index.ts";
import type { Length } from "../measure/index.ts";
import type { FrameSpec } from "./frame-spec.ts";
import type { Piece, PiecePart } from "./piece.ts";
import { metresToLength } from "./saw-length.ts";

const inchM = 0.0254;

function frameProblem(
  frame: FrameSpec,
  field: string,
  rest: { code: Problem["code"]; allowed: string; received: string; remedy: string },
): Problem {
  return { path: [String(frame.name), field], ...rest };
}

function inches(lengthM: number): string {
  return `${Number((lengthM / inchM).toFixed(3))} in`;
}

function rangeProblems(frame: FrameSpec): Problem[] {
  const problems: Problem[] = [];
  const check = (field: string, lengthM: number | undefined, mostM: number) => {
    const ok = lengthM !== undefined && Number.isFinite(lengthM) && lengthM > 0 && lengthM <= mostM;
    if (ok) return;
    problems.push(
      frameProblem(frame, field, {
        code: lengthM === undefined ? "missing" : lengthM > mostM ? "too-large" : "too-small",
        allowed: `a length above 0 in, at most ${inches(mostM)}`,
        received: lengthM === undefined ? "" : inches(lengthM),
        remedy: "Give the true outside size of the frame.",
      }),
    );
  };
  check("length", frame.length?.si, 100 * 12 * inchM);
  check("width", frame.width?.si, 100 * 12 * inchM);
  const counts: [string, unknown, number, number][] = [
    ["courses", frame.courses, 1, 10],
    ["stakes", frame.stakes, 0, 50],
  ];
  for (const [field, value, least, most] of counts) {
    const whole = typeof value === "number" && Number.isInteger(value);
    if (whole && value >= least && value <= most) continue;
    problems.push(
      frameProblem(frame, field, {
        code:
          value === undefined
            ? "missing"
            : !whole
              ? "unreadable"
              : value < least
                ? "too-small"
                : "too-large",
        allowed: `a whole number from ${least} to ${most}`,
        received: value === undefined ? "" : String(value),
        remedy: "Write a whole number.",
      }),
    );
  }
  if (typeof frame.stakes === "number" && frame.stakes > 0) {
    check("stakeLength", frame.stakeLength?.si, 10 * 12 * inchM);
    if (!frame.stakeSection) {
      problems.push(
        frameProblem(frame, "stakeSection", {
          code: "missing",
          allowed: "a section such as 2x4",
          received: "",
          remedy: "Give the section of the stakes, or 0 stakes.",
        }),
      );
    }
  }
  return problems;
}

/** Lengths of the two boards that meet at a corner: those that run through, and those between. */
function lapped(outsideM: { lengthM: number; widthM: number }, lap: string, takenM: number) {
  const { lengthM, widthM } = outsideM;
  return lap === "sides"
    ? { sideM: lengthM, endM: widthM - 2 * takenM }
    : { sideM: lengthM - 2 * takenM, endM: widthM };
}

function tooNarrow(frame: FrameSpec, field: string, leastM: number, gotM: number): Problem {
  return frameProblem(frame, field, {
    code: "contradiction",
    allowed: `more than ${inches(leastM)}, twice what the boards across it take`,
    received: inches(gotM),
    remedy: `Make ${frame.name} larger, or take a thinner section.`,
  });
}

interface Cut {
  readonly part: PiecePart;
  readonly words: string;
  readonly lengthM: number;
  readonly count: number;
}

function wallCuts(frame: FrameSpec, problems: Problem[]): Cut[] {
  const thicknessM = frame.section.thickness.si;
  const outside = { lengthM: frame.length.si, widthM: frame.width.si };
  const { sideM, endM } = lapped(outside, frame.lap, thicknessM);
  if (endM <= 0) problems.push(tooNarrow(frame, "width", 2 * thicknessM, outside.widthM));
  if (sideM <= 0) problems.push(tooNarrow(frame, "length", 2 * thicknessM, outside.lengthM));
  return [
    { part: "side", words: "side", lengthM: sideM, count: 2 * frame.courses },
    { part: "end", words: "end", lengthM: endM, count: 2 * frame.courses },
  ];
}

function capCuts(frame: FrameSpec, cap: NonNullable<FrameSpec["cap"]>, problems: Problem[]): Cut[] {
  const reachM = frame.capReach?.si ?? inchM;
  const acrossM = cap.width.si;
  const outside = { lengthM: frame.length.si + 2 * reachM, widthM: frame.width.si + 2 * reachM };
  if (outside.widthM <= 2 * acrossM) {
    problems.push(tooNarrow(frame, "width", 2 * acrossM - 2 * reachM, frame.width.si));
  }
  if (outside.lengthM <= 2 * acrossM) {
    problems.push(tooNarrow(frame, "length", 2 * acrossM - 2 * reachM, frame.length.si));
  }
  const butted = frame.capJoint === "butted";
  const { sideM, endM } = butted
    ? lapped(outside, frame.lap, acrossM)
    : { sideM: outside.lengthM, endM: outside.widthM };
  return [
    { part: "cap-side", words: "cap side", lengthM: sideM, count: 2 },
    { part: "cap-end", words: "cap end", lengthM: endM, count: 2 },
  ];
}

/**
 * The pieces of one frame: walls, cap and stakes.
 *
 * @rule Lap `sides`: sides = length, ends = width - 2 thicknesses. Lap `ends`: ends = width, sides = length - 2 thicknesses. A mitred cap is measured to its long points: outside + 2 reaches.
 * @source common practice
 * @throws ProblemError where a size is missing or out of range, or the boards take up the whole width.
 */
export function framePieces(frame: FrameSpec): readonly Piece[] {
  const problems = rangeProblems(frame);
  if (problems.length > 0) throw new ProblemError(problems);
  const piece = (cut: Cut, section: Piece["section"], mitred = false): Piece => ({
    name: `${frame.name} ${cut.words}`,
    bed: frame.name,
    part: cut.part,
    section,
    ...(frame.timber === undefined ? {} : { timber: frame.timber }),
    length: metresToLength(cut.lengthM),
    count: cut.count,
    ...(mitred ? { mitred } : {}),
  });
  const pieces = wallCuts(frame, problems).map((cut) => piece(cut, frame.section));
  const { cap } = frame;
  if (cap) {
    const mitred = frame.capJoint !== "butted";
    pieces.push(...capCuts(frame, cap, problems).map((cut) => piece(cut, cap, mitred)));
  }
  if (frame.stakes > 0 && frame.stakeSection && frame.stakeLength) {
    const cut = {
      part: "stake",
      words: "stake",
      lengthM: frame.stakeLength.si,
      count: 2 * frame.stakes,
    } as const;
    pieces.push(piece(cut, frame.stakeSection));
  }
  if (problems.length > 0) throw new ProblemError(problems);
  return pieces;
}

/**
 * Length of a frame's diagonal, corner to corner outside: when both are this long, it is square.
 *
 * @rule The square root of length squared plus width squared.
 * @source common practice
 */
export function frameDiagonal(frame: Pick<FrameSpec, "length" | "width">): Length {
  return metresToLength(Math.hypot(frame.length.si, frame.width.si));
}
