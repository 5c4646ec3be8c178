import { type Problem, ProblemError, requireRecord } from "../check/index.ts";
import { checkSection } from "../lumber/checks.ts";
import { dressedSection, framePieces, type Section } from "../lumber/index.ts";
import {
  type CalendarDate,
  Checks,
  foot,
  inch,
  type Length,
  minus,
  plus,
  printDate,
  printQuantity,
  times,
} from "../measure/index.ts";
import { roomForSoil } from "../soil/index.ts";
import type { Bed, BedPlace } from "./bed.ts";
import { optionalDate } from "./checks.ts";
import { type FrameChoices, frameChoices } from "./frame-choices.ts";
import type { BedSpec } from "./read-beds.ts";
import { nothing } from "./table-cells.ts";

/**
 * Makes a bed complete. A field that was filled wins, `none` and zero included; a blank one takes
 * the choice. A blank `soilDepth` is the wall less 1 in for bark and 1 in free. A blank `depthNow`
 * is 2 in under the wanted depth in a bed with a year built, which is said in `assumed`; else there
 * is nothing in it. The timber stays open where none was written: a price list decides it.
 *
 * @param spec name, outside length and width, and whatever else is known of the bed
 * @param choices for what is blank; default: `frameChoices()`
 * @throws ProblemError with path [bed, field] where sizes are out of range or the boards leave no room
 * @rule wall height = courses x dressed width; blanks filled as above
 * @source common practice
 * @example
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot), built: { year: 2014 } });
 * bed.soilDepth // => 9 1/4 in
 * bed.depthNow // => 7 1/4 in
 */
export function toBed(spec: BedSpec, choices: Partial<FrameChoices> = {}): Bed {
  return completeBed(spec, frameChoices(choices));
}

/** The same with choices that are complete already: for many beds. */
export function completeBed(spec: BedSpec, chosen: FrameChoices): Bed {
  checkSpec(spec);
  const { courses = chosen.courses, lap = chosen.lap, stakes = chosen.stakes } = spec;
  const dressed = (section: Section) => dressedSection(section, chosen.seasoning);
  const section = dressed(spec.section ?? chosen.section);
  const cap = spec.cap ?? chosen.cap;
  const wallHeight = times(section.width, courses);
  const frame = {
    name: spec.bed,
    length: spec.length,
    width: spec.width,
    courses,
    section,
    ...(spec.timber === undefined ? {} : { timber: spec.timber }),
    lap,
    cap: cap === "none" ? null : dressed(cap),
    capReach: chosen.capReach,
    capJoint: chosen.capJoint,
    stakes,
    stakeSection: dressed(chosen.stakeSection),
    stakeLength: plus(wallHeight, chosen.stakeDepth),
  };
  framePieces(frame);
  const soilDepth = spec.soilDepth ?? within(spec.bed, () => roomForSoil(wallHeight));
  return {
    ...frame,
    wallHeight,
    liner: spec.liner ?? chosen.liner,
    soilDepth,
    ...soilThere(spec, soilDepth),
    built: spec.built,
    place: placeOf(spec),
    row: spec.row,
  };
}

function checkSpec(spec: BedSpec): void {
  requireRecord(spec, ["spec"]);
  const checks = new Checks().text(spec.bed, ["bed"]);
  const at = (field: string) => [typeof spec.bed === "string" ? spec.bed : "bed", field];
  for (const field of ["soilDepth", "depthNow"] as const) {
    const bounds = { min: nothing, max: times(20, foot) };
    if (spec[field] !== undefined) checks.quantity(spec[field], "length", at(field), bounds);
  }
  for (const field of ["east", "north"] as const) {
    const bounds = { min: times(-5000, foot), max: times(5000, foot) };
    if (spec[field] !== undefined) checks.quantity(spec[field], "length", at(field), bounds);
  }
  for (const field of ["liner", "turned"] as const) {
    if (spec[field] !== undefined) checks.choice(spec[field], [true, false], at(field));
  }
  if (spec.section !== undefined) checkSection(checks, spec.section, at("section"));
  if (spec.cap !== undefined && spec.cap !== "none") checkSection(checks, spec.cap, at("cap"));
  if (spec.courses !== undefined) checks.count(spec.courses, at("courses"), { min: 1, max: 10 });
  optionalDate(checks, spec.built, at("built"));
  checks.done();
}

function soilThere(
  { bed, depthNow, built }: BedSpec,
  soilDepth: Length,
): { readonly depthNow: Length; readonly assumed: readonly string[] } {
  if (depthNow !== undefined) return { depthNow, assumed: [] };
  if (built === undefined) return { depthNow: nothing, assumed: [] };
  const lower = minus(soilDepth, times(inch, 2));
  const taken = lower.si > 0 ? lower : nothing;
  return { depthNow: taken, assumed: [assumedDepth(bed, built, taken)] };
}

function assumedDepth(bed: string, built: CalendarDate, taken: Length): string {
  return `${bed}, built ${printDate(built)}, is taken to hold ${printQuantity(taken)} of soil now, 2 in under what is wanted.`;
}

function placeOf({ east, north, turned = false }: BedSpec): BedPlace | undefined {
  return east === undefined || north === undefined ? undefined : { east, north, turned };
}

/** A calculation whose problems are the bed's: a wall too low for any soil. */
function within<T>(bed: string, calculation: () => T): T {
  try {
    return calculation();
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const ofBed = (problem: Problem): Problem => ({ ...problem, path: [bed, "section"] });
    throw new ProblemError(error.problems.map(ofBed));
  }
}
