import { checkSection } from "../lumber/checks.ts";
import { type Lap, readSection, type Seasoning, type Section } from "../lumber/index.ts";
import { Checks, foot, inch, type Length, times } from "../measure/index.ts";
import { nothing } from "./table-cells.ts";
import { withDefaults } from "./with-defaults.ts";

/** What a bed is built like where its own row says nothing. */
export interface FrameChoices {
  /** Default: 2x12. */
  readonly section: Section;
  /** Boards stacked. Default: 1. */
  readonly courses: number;
  /** Where a section is sold in several. Default: `treated`. */
  readonly timber: string;
  /** Which boards run through at the corners. Default: `sides`. */
  readonly lap: Lap;
  /** Section of a seat board, or `none`. Default: `none`. */
  readonly cap: Section | "none";
  /** How far the seat reaches beyond the wall. Default: 1 in. */
  readonly capReach: Length;
  /** Default: `mitred`. */
  readonly capJoint: "mitred" | "butted";
  /** Stakes a side. Default: none. */
  readonly stakes: number;
  /** Default: 2x4. */
  readonly stakeSection: Section;
  /** How deep a stake stands in the ground. Default: 18 in. */
  readonly stakeDepth: Length;
  /** Whether beds are lined. Default: yes. */
  readonly liner: boolean;
  /** Whether boards measure as dry or as green ones do. Default: `dry`. */
  readonly seasoning: Seasoning;
}

/**
 * The choices of how beds are built, complete: what is not given takes its default.
 *
 * @param chosen any of the fields; a field that is there wins, zero and `none` included
 * @throws ProblemError with path [field] for every field that is unknown, of another kind or
 * out of its range: courses 1 to 10, stakes 0 to 50, capReach 0 to 1 ft, stakeDepth 0 to 5 ft
 * @rule where nothing is chosen: 2x12 of treated wood, one course, the sides run through, no cap, no stakes, lined
 * @source common practice
 * @example
 * frameChoices({ stakes: 2 }).lap // => "sides"
 */
export function frameChoices(chosen: Partial<FrameChoices> = {}): FrameChoices {
  const defaults: FrameChoices = {
    section: usual("2x12"),
    courses: 1,
    timber: "treated",
    lap: "sides",
    cap: "none",
    capReach: inch,
    capJoint: "mitred",
    stakes: 0,
    stakeSection: usual("2x4"),
    stakeDepth: times(inch, 18),
    liner: true,
    seasoning: "dry",
  };
  const choices = withDefaults(defaults, chosen);
  checkFrameChoices(choices);
  return choices;
}

function checkFrameChoices(choices: FrameChoices): void {
  const { capReach, stakeDepth } = choices;
  const checks = new Checks()
    .count(choices.courses, ["courses"], { min: 1, max: 10 })
    .text(choices.timber, ["timber"])
    .choice(choices.lap, ["sides", "ends"], ["lap"])
    .quantity(capReach, "length", ["capReach"], { min: nothing, max: foot })
    .choice(choices.capJoint, ["mitred", "butted"], ["capJoint"])
    .count(choices.stakes, ["stakes"], { max: 50 })
    .quantity(stakeDepth, "length", ["stakeDepth"], { min: nothing, max: times(5, foot) })
    .choice(choices.liner, [true, false], ["liner"])
    .choice(choices.seasoning, ["dry", "green"], ["seasoning"]);
  checkSection(checks, choices.section, ["section"]);
  if (choices.cap !== "none") checkSection(checks, choices.cap, ["cap"]);
  checkSection(checks, choices.stakeSection, ["stakeSection"]);
  checks.done();
}

function usual(text: string): Section {
  const reading = readSection(text, { path: [] });
  if (!reading.ok) throw new Error(`${text} is a section of the standard`);
  return reading.value;
}
