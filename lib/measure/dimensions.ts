import type {
  AreaDimension,
  DensityDimension,
  Dimension,
  LengthDimension,
  MassDimension,
  MoneyDimension,
  NoDimension,
  PricePerAreaDimension,
  PricePerLengthDimension,
  PricePerMassDimension,
  PricePerVolumeDimension,
  TemperatureDimension,
  TimeDimension,
  VolumeDimension,
} from "./dimension.ts";

// The dimensions as values; their types are in dimension.ts.
export const noDimension: NoDimension = Object.freeze([0, 0, 0, 0, 0] as const);
/** The dimension of lengths, to make a quantity of a value in metres. */
export const lengthDimension: LengthDimension = Object.freeze([1, 0, 0, 0, 0] as const);
/** The dimension of areas, to make a quantity of a value in square metres. */
export const areaDimension: AreaDimension = Object.freeze([2, 0, 0, 0, 0] as const);
/** The dimension of volumes, to make a quantity of a value in cubic metres. */
export const volumeDimension: VolumeDimension = Object.freeze([3, 0, 0, 0, 0] as const);
/** The dimension of masses, to make a quantity of a value in kilograms. */
export const massDimension: MassDimension = Object.freeze([0, 1, 0, 0, 0] as const);
/** The dimension of durations, to make a quantity of a value in seconds. */
export const timeDimension: TimeDimension = Object.freeze([0, 0, 1, 0, 0] as const);
/** The dimension of money; `money` makes one with its currency checked. */
export const moneyDimension: MoneyDimension = Object.freeze([0, 0, 0, 1, 0] as const);
/** The dimension of temperature differences, in kelvins. */
export const temperatureDimension: TemperatureDimension = Object.freeze([0, 0, 0, 0, 1] as const);
/** The dimension of densities, to make a quantity of a value in kg/m³. */
export const densityDimension: DensityDimension = Object.freeze([-3, 1, 0, 0, 0] as const);
export const pricePerLengthDimension: PricePerLengthDimension = Object.freeze([
  -1, 0, 0, 1, 0,
] as const);
export const pricePerAreaDimension: PricePerAreaDimension = Object.freeze([
  -2, 0, 0, 1, 0,
] as const);
export const pricePerVolumeDimension: PricePerVolumeDimension = Object.freeze([
  -3, 0, 0, 1, 0,
] as const);
export const pricePerMassDimension: PricePerMassDimension = Object.freeze([
  0, -1, 0, 1, 0,
] as const);

/** Whether two dimensions are one; arrays that came out of a clone included. */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  if (a === b) return true;
  // Written out: this is asked at every step of every calculation.
  const isSame = a[0] === b[0] && a[1] === b[1] && a[2] === b[2];
  return isSame && a[3] === b[3] && a[4] === b[4];
}

/** Sum of exponents, or undefined beyond the fourth power, which no calculation here has. */
export function productDimension(a: Dimension, b: Dimension, sign: 1 | -1): Dimension | undefined {
  const sums = [
    a[0] + sign * b[0] + 0,
    a[1] + sign * b[1] + 0,
    a[2] + sign * b[2] + 0,
    a[3] + sign * b[3] + 0,
    a[4] + sign * b[4] + 0,
  ];
  for (const sum of sums) if (sum > 4 || sum < -4) return undefined;
  return sums as unknown as Dimension;
}
