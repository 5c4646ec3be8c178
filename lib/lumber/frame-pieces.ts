import { type Path, type Problem, ProblemError, requireRecord } from "../check/index.ts";
import { Checks, foot, inch, type Length, times, zeroOf } from "../measure/index.ts";
import { checkSection, checkTimber, sizeInWords } from "./checks.ts";
import type { FrameSpec } from "./frame-spec.ts";
import type { Piece, PiecePart } from "./piece.ts";
import { metresToLength } from "./saw-length.ts";
import type { Section } from "./section.ts";

const noLength: Length = zeroOf(inch);
const longest: Length = times(100, foot);

function checkFrame(frame: FrameSpec): Checks {
  requireRecord(frame, ["frame"]);
  const checks = new Checks().text(frame.name, ["name"]);
  const name = typeof frame.name === "string" ? frame.name : "frame";
  const at = (field: string): Path => [name, field];
  const size = { above: noLength, max: longest };
  checks
    .quantity(frame.length, "length", at("length"), size)
    .quantity(frame.width, "length", at("width"), size)
    .count(frame.courses, at("courses"), { min: 1, max: 10 })
    .choice(frame.lap, ["sides", "ends"], at("lap"))
    .count(frame.stakes, at("stakes"), { max: 50 });
  checkSection(checks, frame.section, at("section"));
  checkTimber(checks, frame.timber, at("timber"));
  if (frame.cap !== null) {
    checkSection(checks, frame.cap, at("cap"));
    const reach = { min: noLength, max: times(12, inch) };
    checks
      .quantity(frame.capReach ?? inch, "length", at("capReach"), reach)
      .choice(frame.capJoint ?? "mitred", ["mitred", "butted"], at("capJoint"));
  }
  if (typeof frame.stakes === "number" && frame.stakes > 0) {
    checkSection(checks, frame.stakeSection, at("stakeSection"));
    const tall = { above: noLength, max: times(10, foot) };
    checks.quantity(frame.stakeLength, "length", at("stakeLength"), tall);
  }
  return checks;
}

interface SizeM {
  readonly lengthM: number;
  readonly widthM: number;
}

/** Lengths of the two boards that meet at a corner: one runs through, one stands between two. */
function lapped({ lengthM, widthM }: SizeM, lap: FrameSpec["lap"], takenM: number) {
  return lap === "sides"
    ? { sideM: lengthM, endM: widthM - 2 * takenM }
    : { sideM: lengthM - 2 * takenM, endM: widthM };
}

function tooNarrow(frame: FrameSpec, outsideM: SizeM, takenM: number, what: string): Problem[] {
  const sides = [
    { field: "length", gotM: outsideM.lengthM, size: frame.length },
    { field: "width", gotM: outsideM.widthM, size: frame.width },
  ];
  return sides.flatMap(({ field, gotM, size }): Problem[] => {
    if (gotM > takenM + 1e-9) return [];
    return [
      {
        code: "contradiction",
        path: [frame.name, field],
        allowed: `more than ${sizeInWords(size.si + takenM - gotM)}, which ${what} take up`,
        received: sizeInWords(size.si),
        remedy: `Make ${frame.name} larger, or take a smaller section.`,
      },
    ];
  });
}

interface Cut {
  readonly part: PiecePart;
  readonly words: string;
  readonly lengthM: number;
  readonly count: number;
  readonly section: Section;
  readonly mitred?: true;
  /** How far from its start stakes stand behind it. */
  readonly stakesAtM?: readonly number[];
}

function wallCuts(frame: FrameSpec, outsideM: SizeM): Cut[] {
  const { section, courses, lap } = frame;
  const { sideM, endM } = lapped(outsideM, lap, section.thickness.si);
  const count = 2 * courses;
  const stakesAtM = stakePlaces(frame.stakes, outsideM.lengthM, sideM);
  return [
    { part: "side", words: "side", lengthM: sideM, count, section, stakesAtM },
    { part: "end", words: "end", lengthM: endM, count, section },
  ];
}

/** Stakes divide the outside length evenly; a side between two ends begins a board's thickness later. */
function stakePlaces(stakes: number, outsideM: number, sideM: number): number[] {
  const startM = (outsideM - sideM) / 2;
  const apartM = outsideM / (stakes + 1);
  const places = Array.from({ length: stakes }, (_, at) => (at + 1) * apartM - startM);
  return places.filter((placeM) => placeM > 1e-9 && placeM < sideM - 1e-9);
}

function capCuts(frame: FrameSpec, section: Section, outsideM: SizeM): Cut[] {
  const mitred = (frame.capJoint ?? "mitred") === "mitred";
  const { sideM, endM } = mitred
    ? { sideM: outsideM.lengthM, endM: outsideM.widthM }
    : lapped(outsideM, frame.lap, section.width.si);
  const rest = { count: 2, section, ...(mitred ? { mitred } : {}) };
  return [
    { part: "cap-side", words: "cap side", lengthM: sideM, ...rest },
    { part: "cap-end", words: "cap end", lengthM: endM, ...rest },
  ];
}

function stakeCuts({ stakes, stakeSection, stakeLength }: FrameSpec): Cut[] {
  if (stakes === 0 || !stakeSection || !stakeLength) return [];
  const lengthM = stakeLength.si;
  return [{ part: "stake", words: "stake", lengthM, count: 2 * stakes, section: stakeSection }];
}

/**
 * The pieces of one frame, from its true outside size: the boards of its walls, its seat cap and its
 * stakes. Like pieces come once, with their count and the bed's name; sides say where their stakes
 * stand, evenly between the corners.
 *
 * @param frame length and width up to 100 ft, 1 to 10 courses, 0 to 50 stakes a long side; `capReach`
 * from 0 to 12 in (default 1 in); `capJoint` `mitred` (default) or `butted`
 * @throws ProblemError `missing`, `unreadable`, `wrong-unit`, `too-small`, `too-large` for a field;
 * `contradiction` where the boards across would take up the whole length or width
 * @rule Lap sides: sides as long as the bed, ends = width - 2 thicknesses. Lap ends: ends as wide as the bed, sides = length - 2 thicknesses. Mitred cap, to its long points: outside + 2 reaches.
 * @source common practice
 * @example
 * const section = readSection("2x12", { path: ["section"] }).value
 * const bed = { name: "A-1", length: times(8, foot), width: times(4, foot), courses: 1, section, lap: "sides", cap: null, stakes: 0 }
 * framePieces(bed).map((piece) => `${piece.count} ${piece.name} ${amount(piece.length, inch)}`) // => ["2 A-1 side 96","2 A-1 end 45"]
 */
export function framePieces(frame: FrameSpec): readonly Piece[] {
  checkFrame(frame).done();
  const wallM = { lengthM: frame.length.si, widthM: frame.width.si };
  const reachM = (frame.capReach ?? inch).si;
  const capM = { lengthM: wallM.lengthM + 2 * reachM, widthM: wallM.widthM + 2 * reachM };
  const problems = tooNarrow(frame, wallM, 2 * frame.section.thickness.si, "two boards");
  const { cap } = frame;
  if (cap) problems.push(...tooNarrow(frame, capM, 2 * cap.width.si, "two cap boards"));
  if (problems.length > 0) throw new ProblemError(problems);
  const cuts = [
    ...wallCuts(frame, wallM),
    ...(cap ? capCuts(frame, cap, capM) : []),
    ...stakeCuts(frame),
  ];
  return cuts.map(({ words, lengthM, stakesAtM = [], ...cut }) => ({
    name: `${frame.name} ${words}`,
    bed: frame.name,
    ...cut,
    ...(frame.timber === undefined ? {} : { timber: frame.timber }),
    length: metresToLength(lengthM),
    ...(stakesAtM.length === 0 ? {} : { stakesAt: stakesAtM.map(metresToLength) }),
  }));
}
