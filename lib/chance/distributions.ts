// Inverse distribution functions: a number drawn evenly between 0 and 1 becomes one drawn from the
// distribution. They are for inner loops: plain numbers, no checks.

/** A figure from low to high, likeliest in between: the triangular distribution. */
export interface Triangle {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** The triangular distribution's figure below which the share `u` lies; `likely` where it has no width. */
export function triangular(u: number, { low, likely, high }: Triangle): number {
  const width = high - low;
  if (width <= 0) return likely;
  const rising = (likely - low) / width;
  return u < rising
    ? low + Math.sqrt(u * width * (likely - low))
    : high - Math.sqrt((1 - u) * width * (high - likely));
}

// Wichura's algorithm AS 241 (PPND16): about 16 digits.
const central = [
  [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946,
    45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597,
    39307.89580009271, 28729.085735721943, 5226.495278852854,
  ],
] as const;
const near = [
  [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045,
    1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008,
    0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
  ],
] as const;
const far = [
  [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
    0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
  ],
  [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
    1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
  ],
] as const;

type Quotient = readonly [readonly number[], readonly number[]];

function quotient([above, below]: Quotient, x: number): number {
  const value = (terms: readonly number[]): number =>
    terms.reduceRight((sum, term) => sum * x + term, 0);
  return value(above) / value(below);
}

/** The standard normal distribution's figure below which the share `u`, above 0 and below 1, lies. */
export function normal(u: number): number {
  const q = u - 0.5;
  if (Math.abs(q) <= 0.425) return q * quotient(central, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? u : 1 - u));
  const size = r <= 5 ? quotient(near, r - 1.6) : quotient(far, r - 5);
  return q < 0 ? -size : size;
}

/** The lognormal distribution's, by its median and the standard deviation of its logarithm. */
export const lognormal = (u: number, median: number, spread: number): number =>
  median * Math.exp(spread * normal(u));

/** The Weibull distribution's, by scale and shape. */
export const weibull = (u: number, scale: number, shape: number): number =>
  scale * (-Math.log1p(-u)) ** (1 / shape);
