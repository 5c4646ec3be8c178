import type { Length } from "../measure/index.ts";
import { metresToLength } from "./saw-length.ts";

// Cutting is planned in whole numbers, so that a board that fits exactly is seen to fit. 1/320 mm is
// the largest unit in which both 1/64 in (127 units) and 1 mm (320 units) are whole.
export const unitsPerMetre = 320_000;
export const unitsPerInch = 8128;

// Binary fractions are off by far less than this share of a unit; rounding must not count that.
const hair = 1e-3;

/** Pieces and kerf are rounded up, so that a plan never asks for more than there is. */
export function unitsUp(lengthM: number): number {
  return Math.ceil(lengthM * unitsPerMetre - hair);
}

/** Boards are rounded down. */
export function unitsDown(lengthM: number): number {
  return Math.floor(lengthM * unitsPerMetre + hair);
}

export function unitsToLength(units: number): Length {
  return metresToLength(units / unitsPerMetre);
}

/**
 * The step of a saw's stop: the coarsest of the usual fractions on which all the lengths given lie,
 * 1 unit where there is none.
 */
export function sawStep(lengthsU: readonly number[]): number {
  const sixtyFourth = unitsPerInch / 64;
  const steps = [4 * sixtyFourth, 2 * sixtyFourth, sixtyFourth, 160, 32];
  return steps.find((step) => lengthsU.every((length) => length % step === 0)) ?? 1;
}
