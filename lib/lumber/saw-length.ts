import { type Length, quantity } from "../measure/index.ts";

const lengthDimension = [1, 0, 0, 0, 0] as const;

/** An inch is 25.4 mm exactly. */
export const metresPerInch = 0.0254;

/** A length from metres, for inner loops that work on plain numbers. */
export function metresToLength(lengthM: number): Length {
  return quantity(lengthM, lengthDimension);
}

export function inchesToLength(lengthIn: number): Length {
  return metresToLength(lengthIn * metresPerInch);
}
