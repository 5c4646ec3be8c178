import { Given } from "../measure/given.ts";
import { quantity, type Volume, volumeDimension } from "../measure/index.ts";
import { volumeLimits } from "./limits.ts";

/** How soil changes volume between lying in place, heaped loose, and compacted. */
export interface SwellingSoil {
  readonly soil: string;
  /** Loose volume of one volume in place, 0.5 to 3: 1.25 for common earth. */
  readonly bankToLoose: number;
  /** Compacted volume of one volume in place, 0.5 to 3: 0.9 for common earth. */
  readonly bankToCompacted: number;
}

/** In place (`bank`), dug and heaped (`loose`), rolled or tamped (`compacted`). */
export type SoilState = "bank" | "loose" | "compacted";

/** From which state to which. */
export interface SwellOptions {
  /** Default `bank`. */
  readonly from?: SoilState;
  /** Default `loose`. */
  readonly to?: SoilState;
}

const factor = { min: 0.5, max: 3 };
const states = ["bank", "loose", "compacted"] as const;

/**
 * The volume of soil in another state: by default the loose heap that soil makes when it is dug
 * out. The factors are for soil long undisturbed; soil of a bed that is dug each year swells less.
 *
 * @param volume in the state it is in, 0 to 1,000,000 m3.
 * @param soil a row with `bankToLoose` and `bankToCompacted`, each from 0.5 to 3.
 * @param options `from` and `to`: `bank`, `loose` or `compacted`; default from bank to loose.
 * @throws ProblemError where the volume or a factor is missing, of another kind or out of range, or
 * a state is not one of the three (`unknown`).
 * @rule volume x factor from bank to the new state / factor from bank to the old one
 * @source fm-5-434
 * @example
 * const earth = { soil: "common earth", bankToLoose: 1.25, bankToCompacted: 0.9 };
 * swell(times(100, cubicYard), earth) // => 125 cu yd
 * swell(times(100, cubicYard), earth, { from: "loose", to: "compacted" }) // => 72 cu yd
 */
export function swell(volume: Volume, soil: SwellingSoil, options: SwellOptions = {}): Volume {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const m3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const factors = swellFactors(given, soil, ["soil"]);
  const from = given.oneOf(chosen.from ?? "bank", states, ["from"]);
  const to = given.oneOf(chosen.to ?? "loose", states, ["to"]);
  given.done();
  return quantity((m3 * factors[to]) / factors[from], volumeDimension);
}

/** The factors of a row from its place to each state, checked. */
export function swellFactors(
  given: Given,
  soil: SwellingSoil,
  path: readonly (string | number)[],
): Readonly<Record<SoilState, number>> {
  const row = given.fields(soil, path);
  return {
    bank: 1,
    loose: given.plain(row.bankToLoose, [...path, "bankToLoose"], factor),
    compacted: given.plain(row.bankToCompacted, [...path, "bankToCompacted"], factor),
  };
}
