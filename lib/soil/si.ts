import {
  type Area,
  type Density,
  type Length,
  type Mass,
  type Money,
  quantity,
  type Volume,
} from "../measure/index.ts";

// Makers of quantities from SI values, for the end of a calculation done in plain numbers.
export const lengthOf = (m: number): Length => quantity(m, [1, 0, 0, 0, 0]);
export const areaOf = (m2: number): Area => quantity(m2, [2, 0, 0, 0, 0]);
export const volumeOf = (m3: number): Volume => quantity(m3, [3, 0, 0, 0, 0]);
export const massOf = (kg: number): Mass => quantity(kg, [0, 1, 0, 0, 0]);
export const densityOf = (kgPerM3: number): Density => quantity(kgPerM3, [-3, 1, 0, 0, 0]);
export const moneyOf = (amount: number, currency: string | undefined): Money =>
  quantity(amount, [0, 0, 0, 1, 0], currency);

/**
 * Whole steps needed to cover a need. A need that exceeds a whole step only by the noise of binary
 * fractions (27 ft3 in bags of 1 ft3 must be 27) is not rounded up.
 */
export function stepsToCover(need: number, step: number): number {
  const steps = need / step;
  return Math.ceil(steps - 1e-9 * Math.max(1, steps));
}

export const roundMoney = (money: Money): Money =>
  moneyOf(Math.round(Number((money.si * 100).toPrecision(13))) / 100, money.currency);
