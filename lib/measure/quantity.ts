import { ProblemError } from "../check/index.ts";
import type {
  AreaDimension,
  DensityDimension,
  Dimension,
  LengthDimension,
  MassDimension,
  MoneyDimension,
  PricePerAreaDimension,
  PricePerLengthDimension,
  PricePerMassDimension,
  PricePerVolumeDimension,
  TemperatureDimension,
  TimeDimension,
  VolumeDimension,
} from "./dimension.ts";
import { rawText } from "./raw-text.ts";

/**
 * A value with its dimension. `si` is the value in the coherent SI unit (metre, kilogram, second;
 * for money the major unit of the currency). A plain record: it survives structured cloning, and
 * two quantities are combined by `plus`, `times` and the like, never by JavaScript's operators.
 */
export interface Quantity<D extends Dimension = Dimension> {
  readonly si: number;
  readonly dim: D;
  /** ISO 4217 code where the money exponent is not 0; absent for money written without a sign. */
  readonly currency?: string;
}

// Named, so that the compiler's messages say `Volume` and not a tuple.
/** A length; `si` in metres. */
export interface Length extends Quantity<LengthDimension> {}
/** An area; `si` in square metres. */
export interface Area extends Quantity<AreaDimension> {}
/** A volume; `si` in cubic metres. */
export interface Volume extends Quantity<VolumeDimension> {}
/** A mass; `si` in kilograms. */
export interface Mass extends Quantity<MassDimension> {}
/** A time that something takes; `si` in seconds. */
export interface Duration extends Quantity<TimeDimension> {}
/** Money; `si` in the major unit of `currency`. */
export interface Money extends Quantity<MoneyDimension> {}
/** A difference of temperatures; `si` in kelvins. */
export interface TemperatureDifference extends Quantity<TemperatureDimension> {}
/** A mass per volume; `si` in kg/m³. */
export interface Density extends Quantity<DensityDimension> {}
/** A price per metre in SI. */
export interface PricePerLength extends Quantity<PricePerLengthDimension> {}
/** A price per square metre in SI. */
export interface PricePerArea extends Quantity<PricePerAreaDimension> {}
/** A price per cubic metre in SI. */
export interface PricePerVolume extends Quantity<PricePerVolumeDimension> {}
/** A price per kilogram in SI. */
export interface PricePerMass extends Quantity<PricePerMassDimension> {}

/** The named quantity of a dimension; `number` where all exponents are 0. */
export type Named<D extends Dimension> = D extends readonly [0, 0, 0, 0, 0]
  ? number
  : D extends LengthDimension
    ? Length
    : D extends AreaDimension
      ? Area
      : D extends VolumeDimension
        ? Volume
        : D extends MassDimension
          ? Mass
          : D extends TimeDimension
            ? Duration
            : D extends MoneyDimension
              ? Money
              : D extends DensityDimension
                ? Density
                : D extends PricePerLengthDimension
                  ? PricePerLength
                  : D extends PricePerAreaDimension
                    ? PricePerArea
                    : D extends PricePerVolumeDimension
                      ? PricePerVolume
                      : D extends PricePerMassDimension
                        ? PricePerMass
                        : Quantity<D>;

/** An uncertain quantity: what is likely, between what bounds, and what that rests on. */
export interface Range<Q extends Quantity | number> {
  readonly low: Q;
  readonly likely: Q;
  readonly high: Q;
  /** Source ids of `data/sources.json`, `common practice` or `from memory`. */
  readonly basis: readonly string[];
}

const refusesNumbers = Object.freeze(
  Object.create(Object.prototype, {
    // Not on the record itself: functions do not survive cloning.
    [Symbol.toPrimitive]: {
      value(this: Quantity): never {
        throw new TypeError(
          "a quantity was used as a bare number or text: take its amount in a unit first, as in amount(q, foot)",
        );
      },
    },
  }),
) as object;

function refusal(argument: string, value: unknown, allowed: string): ProblemError {
  const isNothing = value === undefined || value === null;
  const received = isNothing ? "" : rawText(value);
  const code = isNothing ? "missing" : "unreadable";
  return new ProblemError([
    { code, path: [argument], allowed, received, remedy: `Give ${allowed}.` },
  ]);
}

/**
 * A quantity from its value in the coherent SI unit (metre, kilogram, second; for money the major
 * unit) and its dimension. Units and readers build on it; people give `times(8, foot)`.
 *
 * @throws ProblemError for a value that is no finite number (`missing`, `unreadable`), or no
 * dimension of five exponents
 * @rule the value in coherent SI with its dimension
 * @source nist-sp-811
 * @example
 * quantity(2.4384, lengthDimension) // => 8 ft
 */
export function quantity<D extends Dimension>(si: number, dim: D, currency?: string): Named<D> {
  if (!Number.isFinite(si)) throw refusal("si", si, "a finite number, the value in coherent SI");
  if (!Array.isArray(dim) || dim.length !== 5) {
    throw refusal("dim", dim, "a dimension, as lengthDimension or that of a quantity");
  }
  if (currency !== undefined && typeof currency !== "string") {
    throw refusal("currency", currency, "a code of ISO 4217, as USD or EUR");
  }
  const made = Object.create(refusesNumbers) as {
    si: number;
    dim: D;
    currency?: string;
  };
  made.si = si;
  made.dim = dim;
  if (currency !== undefined) made.currency = currency;
  return Object.freeze(made) as unknown as Named<D>;
}

/**
 * Whether a value is a quantity, one that has been through structured cloning or JSON included.
 * Its value may still be no finite number: the guards look at that.
 *
 * @rule a value in SI and five whole exponents
 * @source common practice
 * @example
 * isQuantity(foot) // => true
 * isQuantity(12) // => false
 */
export function isQuantity(value: unknown): value is Quantity {
  if (typeof value !== "object" || value === null) return false;
  // Made here, and frozen: nothing more to look at.
  if (Object.getPrototypeOf(value) === refusesNumbers) return true;
  const { si, dim, currency } = value as Partial<Quantity>;
  const isSized = typeof si === "number" && Array.isArray(dim) && dim.length === 5;
  const isCurrency = currency === undefined || typeof currency === "string";
  return isSized && isCurrency && dim.every((exponent) => Number.isInteger(exponent));
}
