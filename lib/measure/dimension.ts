type Exponent = -4 | -3 | -2 | -1 | 0 | 1 | 2 | 3 | 4;

// Sums of exponents by look-up: TypeScript cannot add.
interface Sums {
  [-4]: { [-4]: never; [-3]: never; [-2]: never; [-1]: never; 0: -4; 1: -3; 2: -2; 3: -1; 4: 0 };
  [-3]: { [-4]: never; [-3]: never; [-2]: never; [-1]: -4; 0: -3; 1: -2; 2: -1; 3: 0; 4: 1 };
  [-2]: { [-4]: never; [-3]: never; [-2]: -4; [-1]: -3; 0: -2; 1: -1; 2: 0; 3: 1; 4: 2 };
  [-1]: { [-4]: never; [-3]: -4; [-2]: -3; [-1]: -2; 0: -1; 1: 0; 2: 1; 3: 2; 4: 3 };
  0: { [-4]: -4; [-3]: -3; [-2]: -2; [-1]: -1; 0: 0; 1: 1; 2: 2; 3: 3; 4: 4 };
  1: { [-4]: -3; [-3]: -2; [-2]: -1; [-1]: 0; 0: 1; 1: 2; 2: 3; 3: 4; 4: never };
  2: { [-4]: -2; [-3]: -1; [-2]: 0; [-1]: 1; 0: 2; 1: 3; 2: 4; 3: never; 4: never };
  3: { [-4]: -1; [-3]: 0; [-2]: 1; [-1]: 2; 0: 3; 1: 4; 2: never; 3: never; 4: never };
  4: { [-4]: 0; [-3]: 1; [-2]: 2; [-1]: 3; 0: 4; 1: never; 2: never; 3: never; 4: never };
}
interface Opposites {
  [-4]: 4;
  [-3]: 3;
  [-2]: 2;
  [-1]: 1;
  0: 0;
  1: -1;
  2: -2;
  3: -3;
  4: -4;
}
type Sum<A extends Exponent, B extends Exponent> = Sums[A][B] & Exponent;

/** Exponents of length, mass, time, money and temperature, in that order. */
export type Dimension = readonly [
  length: Exponent,
  mass: Exponent,
  time: Exponent,
  money: Exponent,
  temperature: Exponent,
];

/** The dimension of a product. */
export type Product<A extends Dimension, B extends Dimension> = readonly [
  Sum<A[0], B[0]>,
  Sum<A[1], B[1]>,
  Sum<A[2], B[2]>,
  Sum<A[3], B[3]>,
  Sum<A[4], B[4]>,
];

/** The dimension of one over a quantity. */
export type Inverse<A extends Dimension> = readonly [
  Opposites[A[0]],
  Opposites[A[1]],
  Opposites[A[2]],
  Opposites[A[3]],
  Opposites[A[4]],
];

/** No dimension: plain numbers. */
export type NoDimension = readonly [0, 0, 0, 0, 0];
/** The dimension of lengths. */
export type LengthDimension = readonly [1, 0, 0, 0, 0];
/** The dimension of areas: length². */
export type AreaDimension = readonly [2, 0, 0, 0, 0];
/** The dimension of volumes: length³. */
export type VolumeDimension = readonly [3, 0, 0, 0, 0];
/** The dimension of masses. */
export type MassDimension = readonly [0, 1, 0, 0, 0];
/** The dimension of durations. */
export type TimeDimension = readonly [0, 0, 1, 0, 0];
/** The dimension of money. */
export type MoneyDimension = readonly [0, 0, 0, 1, 0];
/** The dimension of temperature differences. */
export type TemperatureDimension = readonly [0, 0, 0, 0, 1];
/** The dimension of densities: mass per volume. */
export type DensityDimension = readonly [-3, 1, 0, 0, 0];
/** The dimension of prices per length. */
export type PricePerLengthDimension = readonly [-1, 0, 0, 1, 0];
/** The dimension of prices per area. */
export type PricePerAreaDimension = readonly [-2, 0, 0, 1, 0];
/** The dimension of prices per volume. */
export type PricePerVolumeDimension = readonly [-3, 0, 0, 1, 0];
/** The dimension of prices per mass. */
export type PricePerMassDimension = readonly [0, -1, 0, 1, 0];
