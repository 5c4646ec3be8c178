import type { Length } from "../measure/index.ts";
import { inchesToLength } from "./saw-length.ts";

/** Softwood is sold dry (19 % moisture at most) or green, and dressed to match after drying. */
export type Seasoning = "dry" | "green";

type Rungs = readonly (readonly [nominalIn: number, dryIn: number, greenIn: number])[];

// American Softwood Lumber Standard PS 20-20, Table 3 (thickness and width in inches).
const boardThicknesses: Rungs = [
  [3 / 8, 5 / 16, 11 / 32],
  [1 / 2, 7 / 16, 15 / 32],
  [5 / 8, 9 / 16, 19 / 32],
  [3 / 4, 5 / 8, 11 / 16],
  [1, 3 / 4, 25 / 32],
  [1.25, 1, 1 + 1 / 32],
  [1.5, 1.25, 1 + 9 / 32],
];
const dimensionThicknesses: Rungs = [
  [2, 1.5, 1.5625],
  [2.5, 2, 2.0625],
  [3, 2.5, 2.5625],
  [3.5, 3, 3.0625],
  [4, 3.5, 3.5625],
  [4.5, 4, 4.0625],
];
const widths: Rungs = [
  [2, 1.5, 1.5625],
  [3, 2.5, 2.5625],
  [4, 3.5, 3.5625],
  [5, 4.5, 4.625],
  [6, 5.5, 5.625],
  [7, 6.5, 6.625],
  [8, 7.25, 7.5],
  [9, 8.25, 8.5],
  [10, 9.25, 9.5],
  [11, 10.25, 10.5],
  [12, 11.25, 11.5],
  [14, 13.25, 13.5],
  [16, 15.25, 15.5],
];

function rung(rungs: Rungs, nominalIn: number, seasoning: Seasoning): number | undefined {
  const found = rungs.find(([nominal]) => nominal === nominalIn);
  return found?.[seasoning === "dry" ? 1 : 2];
}

// Timbers (5 in and more both ways) lose an amount that grows with the nominal size.
function timberFace(nominalIn: number, seasoning: Seasoning): number | undefined {
  if (!Number.isInteger(nominalIn) || nominalIn > 24) return undefined;
  if (seasoning === "green" || nominalIn <= 6) return nominalIn - 0.5;
  return nominalIn <= 15 ? nominalIn - 0.75 : nominalIn - 1;
}

/** Dressed thickness and width in inches of a nominal section, or undefined where there is none. */
export function dressedInches(
  thicknessIn: number,
  widthIn: number,
  seasoning: Seasoning,
): readonly [number, number] | undefined {
  const timber = thicknessIn >= 5;
  const thickness = timber
    ? timberFace(thicknessIn, seasoning)
    : (rung(boardThicknesses, thicknessIn, seasoning) ??
      rung(dimensionThicknesses, thicknessIn, seasoning));
  const width = timber ? timberFace(widthIn, seasoning) : rung(widths, widthIn, seasoning);
  return thickness === undefined || width === undefined ? undefined : [thickness, width];
}

/** The same as lengths. */
export function dressedLengths(
  thicknessIn: number,
  widthIn: number,
  seasoning: Seasoning,
): { readonly thickness: Length; readonly width: Length } | undefined {
  const inches = dressedInches(thicknessIn, widthIn, seasoning);
  if (!inches) return undefined;
  return { thickness: inchesToLength(inches[0]), width: inchesToLength(inches[1]) };
}
