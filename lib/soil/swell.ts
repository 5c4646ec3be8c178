import type { Volume } from "../measure/index.ts";
import { Given } from "./given.ts";
import { volumeLimits } from "./limits.ts";
import { volumeOf } from "./si.ts";

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

const factor = { min: 0.5, max: 3, words: "a factor from 0.5 to 3" };
const states: readonly SoilState[] = ["bank", "loose", "compacted"];

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
 * swell(times(100, cubicYard), earth) // => 125 yd³
 * swell(times(100, cubicYard), earth, { from: "loose", to: "compacted" }) // => 72 yd³
 */
export function swell(volume: Volume, soil: SwellingSoil, options: SwellOptions = {}): Volume {
  const given = new Given();
  const m3 = given.volume(volume, ["volume"], volumeLimits);
  const row = given.record(soil, ["soil"]);
  const factors: Record<SoilState, number> = {
    bank: 1,
    loose: given.number(row.bankToLoose, ["soil", "bankToLoose"], factor),
    compacted: given.number(row.bankToCompacted, ["soil", "bankToCompacted"], factor),
  };
  const from = given.choice(options.from ?? "bank", ["from"], states);
  const to = given.choice(options.to ?? "loose", ["to"], states);
  given.done();
  return volumeOf((m3 * factors[to]) / factors[from]);
}
