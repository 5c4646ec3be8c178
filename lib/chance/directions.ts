/**
 * Primitive polynomials over the field of two elements and first direction numbers of Sobol's sequence,
 * from the second dimension on: degree, inner coefficients as a binary number, direction numbers. They
 * are those of Joe and Kuo (2008), chosen for good projections onto any two dimensions.
 */
export const directions: readonly (readonly [
  degree: number,
  inner: number,
  first: readonly number[],
])[] = [
  [1, 0, [1]],
  [2, 1, [1, 3]],
  [3, 1, [1, 3, 1]],
  [3, 2, [1, 1, 1]],
  [4, 1, [1, 1, 3, 3]],
  [4, 4, [1, 3, 5, 13]],
  [5, 2, [1, 1, 5, 5, 17]],
  [5, 4, [1, 1, 5, 5, 5]],
  [5, 7, [1, 1, 7, 11, 19]],
  [5, 11, [1, 1, 5, 1, 1]],
  [5, 13, [1, 1, 1, 3, 11]],
  [5, 14, [1, 3, 5, 5, 31]],
  [6, 1, [1, 3, 3, 9, 7, 49]],
  [6, 13, [1, 1, 1, 15, 21, 21]],
  [6, 16, [1, 3, 1, 13, 27, 49]],
  [6, 19, [1, 1, 1, 15, 7, 5]],
  [6, 22, [1, 3, 1, 15, 13, 25]],
  [6, 25, [1, 1, 5, 5, 19, 61]],
  [7, 1, [1, 3, 7, 11, 23, 15, 103]],
  [7, 4, [1, 3, 7, 13, 13, 15, 69]],
  [7, 7, [1, 1, 3, 13, 7, 35, 63]],
  [7, 8, [1, 3, 5, 9, 1, 25, 53]],
  [7, 14, [1, 3, 1, 13, 9, 35, 107]],
];
