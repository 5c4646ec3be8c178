import { expect } from "vitest";
import {
  inch,
  kilogramPerCubicMetre,
  type Length,
  ProblemError,
  type SoilMaterial,
  times,
} from "../../../lib/index.ts";

/** A bed by its outside sizes in inches, in 2-by boards unless said. */
export function bedOf(lengthIn: number, widthIn: number, thicknessIn = 1.5) {
  const inches = (n: number): Length => times(n, inch);
  return {
    length: inches(lengthIn),
    width: inches(widthIn),
    section: { thickness: inches(thicknessIn) },
  };
}

/** An invented material that settles by the given shares. */
export function settling(low: number, likely = low, high = likely) {
  return {
    material: "invented",
    settleLow: low,
    settleLikely: likely,
    settleHigh: high,
    settleSource: "common practice",
  };
}

/** An invented material with one density for each state. */
export function material(name: string, dry: number, moist: number, wet: number): SoilMaterial {
  const d = (n: number) => times(n, kilogramPerCubicMetre);
  return {
    ...settling(0.1, 0.2, 0.3),
    material: name,
    densityDryLow: d(dry * 0.9),
    densityDry: d(dry),
    densityDryHigh: d(dry * 1.1),
    densityMoistLow: d(moist * 0.9),
    densityMoist: d(moist),
    densityMoistHigh: d(moist * 1.1),
    densityWetLow: d(wet * 0.9),
    densityWet: d(wet),
    densityWetHigh: d(wet * 1.1),
    source: "common practice",
  };
}

/** The problems a call is refused with, as "code place"; fails where it is not refused. */
export function refusals(call: () => unknown): string[] {
  try {
    call();
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    for (const problem of error.problems) {
      expect(problem.allowed).not.toBe("");
      expect(problem.remedy).not.toBe("");
      expect(`${problem.allowed} ${problem.received}`).not.toMatch(/NaN.*NaN|undefined/);
    }
    return error.problems.map((problem) => `${problem.code} ${problem.path.join(".")}`);
  }
  return expect.fail("was not refused");
}

/** A value of a type it does not have, as callers in plain JavaScript pass it. */
export const wrong = (value: unknown): never => value as never;
