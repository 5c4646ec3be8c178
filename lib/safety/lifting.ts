import { type Caution, requireRecord } from "../check/index.ts";
import {
  Checks,
  centimetre,
  foot,
  kilogram,
  type Length,
  type Mass,
  over,
  printQuantity,
  times,
} from "../measure/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";
import { frequencyMultiplier, type LiftDuration } from "./frequency-multiplier.ts";

/** The most the lifting equation allows one person, in the best posture: 23 kg (51 lb). */
export const LIFTING_LOAD_CONSTANT: Mass = times(kilogram, 23);

/** One lift, from where the hands take hold to where they let go. */
export interface Lift {
  /** Hands in front of the ankles, 0 to 3 ft; under 25 cm counts as 25 cm. */
  readonly reach: Length;
  /** Height of the hands at the start, 0 to 9 ft. */
  readonly from: Length;
  /** Height of the hands at the end, 0 to 9 ft. */
  readonly to: Length;
  /** Which end of the lift is judged. Default: `start`; judge both where the load is set down with care. */
  readonly at?: "start" | "end";
  /** Turn of the body at that end, in degrees from 0 to 180. Default: 0. */
  readonly turn?: number;
  /** Lifts a minute, 0 to 60. Default: 0.2, one in five minutes. */
  readonly liftsPerMinute?: number;
  /** Default: `up to 1 h`. */
  readonly duration?: LiftDuration;
  /** How well the hands hold. Default: `fair`. */
  readonly grip?: "good" | "fair" | "poor";
}

/** What one person should lift at most, and why. */
export interface WeightLimit {
  /** Recommended weight limit for the lift; zero where nobody should lift so. */
  readonly limit: Mass;
  /** Shares of the load constant, each 0 to 1. */
  readonly shares: {
    readonly reach: number;
    readonly height: number;
    readonly travel: number;
    readonly turn: number;
    readonly pace: number;
    readonly grip: number;
  };
}

/**
 * The recommended weight limit of the revised NIOSH lifting equation, in its metric form, for one
 * person lifting with both hands, standing: for bags, boards and posts, not for shovelling, barrows
 * or carrying farther than a step or two.
 *
 * @param lift where the hands start and end, how far in front, how often, how long, how they hold
 * @returns the limit and the share each condition leaves of 23 kg
 * @throws ProblemError where a value is of the wrong kind or out of its range
 * @rule 23 kg x 25/H x (1 - 0.003 |V - 75|) x (0.82 + 4.5/D) x (1 - 0.0032 A) x pace x grip, cm and degrees.
 * @source niosh-94-110
 * @example
 * recommendedWeightLimit({ reach: times(centimetre, 25), from: times(centimetre, 55), to: times(centimetre, 150), liftsPerMinute: 3 }).limit // => 34.6 lb
 */
export function recommendedWeightLimit(lift: Lift): WeightLimit {
  requireRecord(lift, ["lift"]);
  const {
    at = "start",
    turn = 0,
    liftsPerMinute = 0.2,
    duration = "up to 1 h",
    grip = "fair",
  } = lift;
  new Checks()
    .quantity(lift.reach, "length", ["reach"], { min: times(foot, 0), max: times(foot, 3) })
    .quantity(lift.from, "length", ["from"], { min: times(foot, 0), max: times(foot, 9) })
    .quantity(lift.to, "length", ["to"], { min: times(foot, 0), max: times(foot, 9) })
    .choice(at, ["start", "end"], ["at"])
    .number(turn, ["turn"], { min: 0, max: 180 })
    .number(liftsPerMinute, ["liftsPerMinute"], { min: 0, max: 60 })
    .choice(duration, ["up to 1 h", "up to 2 h", "up to 8 h"], ["duration"])
    .choice(grip, ["good", "fair", "poor"], ["grip"])
    .done();
  const fromCm = over(lift.from, centimetre);
  const toCm = over(lift.to, centimetre);
  const heightCm = at === "start" ? fromCm : toCm;
  const shares = {
    reach: reachShare(over(lift.reach, centimetre)),
    height: heightCm > 175 ? 0 : 1 - 0.003 * Math.abs(heightCm - 75),
    travel: travelShare(Math.abs(toCm - fromCm)),
    turn: turn > 135 ? 0 : 1 - 0.0032 * turn,
    pace: frequencyMultiplier(liftsPerMinute, duration, fromCm >= 75),
    grip: gripShare(grip, heightCm),
  };
  const share = Object.values(shares).reduce((product, factor) => product * factor, 1);
  return { limit: times(LIFTING_LOAD_CONSTANT, share), shares };
}

function reachShare(reachCm: number): number {
  if (reachCm > 63) return 0;
  return 25 / Math.max(reachCm, 25);
}

function travelShare(travelCm: number): number {
  if (travelCm > 175) return 0;
  return 0.82 + 4.5 / Math.max(travelCm, 25);
}

function gripShare(grip: "good" | "fair" | "poor", heightCm: number): number {
  if (grip === "poor") return 0.9;
  return grip === "fair" && heightCm < 75 ? 0.95 : 1;
}

/**
 * The lifting index: the load over what is recommended. Up to 1 is the aim; above 1 some people
 * are at risk, above 3 nearly all.
 *
 * @param mass lifted, 0 to 1,000 kg
 * @param limit of `recommendedWeightLimit`, more than 0
 * @returns a number
 * @throws ProblemError where either is no mass, or the limit is 0
 * @rule Load / recommended weight limit.
 * @source niosh-94-110
 * @example
 * liftingIndex(times(kilogram, 46), LIFTING_LOAD_CONSTANT) // => 2
 */
export function liftingIndex(mass: Mass, limit: Mass): number {
  new Checks()
    .quantity(mass, "mass", ["mass"], { min: times(kilogram, 0), max: times(kilogram, 1000) })
    .quantity(limit, "mass", ["limit"], { min: times(kilogram, 0.001), max: times(kilogram, 1000) })
    .done();
  return over(mass, limit);
}

/** What is lifted. */
export interface LiftingOptions extends CautionOptions {
  /** What is lifted. Default: not said. */
  readonly mass?: Mass;
}

/**
 * The caution for something too heavy for one person to lift.
 *
 * @param options `mass`: what is lifted, 0 to 10,000 kg; `because`: what it is
 * @returns the caution, under the id `lifting`
 * @throws ProblemError where the mass is no mass or out of its range
 * @rule Over 23 kg (51 lb) a lift needs help however well it is done; less in a poor posture.
 * @source niosh-94-110, hse-indg143
 * @example
 * lifting({ because: "a wet 12 ft board" }).because // => "a wet 12 ft board"
 */
export function lifting(options: LiftingOptions = {}): Caution {
  requireRecord(options, ["options"]);
  const { mass } = options;
  if (mass !== undefined) checkMass(mass);
  const says =
    mass === undefined
      ? "Some of this weighs more than one person should lift"
      : `This weighs about ${rounded(mass, "us")} (${rounded(mass, "metric")})`;
  const people =
    mass === undefined ? 2 : Math.max(2, Math.ceil(mass.si / LIFTING_LOAD_CONSTANT.si));
  return calledFor(
    {
      id: "lifting",
      fact: `${says}; over 51 lb (23 kg) is too much for one, even close to the body and at knee height.`,
      advice:
        people > 4
          ? "Don't lift it whole: take it apart, use a barrow, a plank or rollers, or have it delivered to its place."
          : `Take a barrow or plank, split the load, or lift with ${people} people: load close, no twisting, a rest after every 10 m (33 ft) of carrying.`,
      defersTo:
        "Whoever has a bad back or heart asks a doctor first; at a workplace its own lifting rules apply.",
      sources: ["niosh-94-110", "hse-indg143"],
    },
    options,
  );
}

/**
 * The cautions a mass calls for when one person lifts it: none up to 23 kg (51 lb).
 *
 * @param mass of the heaviest single thing, 0 to 10,000 kg: a wet board, a bag
 * @param options `because`: what it is
 * @returns no caution, or the one of `lifting`
 * @throws ProblemError where the mass is no mass or out of its range
 * @rule A caution above the load constant, 23 kg.
 * @source niosh-94-110
 * @example
 * cautionsForLift(times(pound, 40)).length // => 0
 */
export function cautionsForLift(mass: Mass, options: CautionOptions = {}): readonly Caution[] {
  requireRecord(options, ["options"]);
  checkMass(mass);
  return mass.si > LIFTING_LOAD_CONSTANT.si + 1e-9 ? [lifting({ ...options, mass })] : [];
}

function checkMass(mass: Mass): void {
  new Checks()
    .quantity(mass, "mass", ["mass"], { min: times(kilogram, 0), max: times(kilogram, 10_000) })
    .done();
}

function rounded(mass: Mass, system: "us" | "metric"): string {
  return printQuantity(mass, { system, digits: 2 });
}
