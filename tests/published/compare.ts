import { expect } from "vitest";

/**
 * Compares a computed number with a printed one, to half a unit of the last printed digit:
 * `published(0.3499, "0.35")`. Thousands commas are allowed; so is a tolerance the source states.
 */
export function published(value: number, printed: string, tolerance?: number): void {
  const plain = printed.replaceAll(",", "");
  const expected = Number(plain);
  if (!Number.isFinite(expected)) throw new Error(`not a printed number: ${printed}`);
  const decimals = plain.includes(".") ? plain.length - plain.indexOf(".") - 1 : 0;
  const half = tolerance ?? 0.5 * 10 ** -decimals;
  // A hair of slack for the binary representation of the bound itself.
  const slack = Math.abs(expected) * 1e-12 + 1e-12;
  expect(
    Math.abs(value - expected),
    `computed ${value}, printed ${printed}, allowed difference ${half}`,
  ).toBeLessThanOrEqual(half + slack);
}
