import { Given } from "../measure/given.ts";
import type { Duration } from "../measure/index.ts";
import { spanLimits, temperatureLimits, yearsOf } from "./limits.ts";

/** What rots, and how warm it is. */
export interface JanssenOptions {
  /** Apparent age of the material at the start, 0.1 to 100 years: green matter 1, some peats 14. */
  readonly age: number;
  /** Mean yearly temperature, -60 to 60 °C; default 9, where the equation was fitted. */
  readonly temperatureC?: number;
}

/**
 * How much faster organic matter rots at a temperature than at 9 °C, after Janssen's equation.
 *
 * @param temperatureC mean yearly temperature, -60 to 60 °C.
 * @throws ProblemError where it is missing, of another kind or out of range.
 * @rule 0 up to -1 °C; 0.1 (T + 1) to 9 °C; 2^((T - 9) / 9) to 27 °C; 4 above
 * @source janssen-1984
 * @example
 * janssenTemperature(9) // => 1
 * janssenTemperature(18) // => 2
 */
export function janssenTemperature(temperatureC: number): number {
  const given = new Given();
  const t = given.plain(temperatureC, ["temperatureC"], temperatureLimits);
  given.done();
  return temperatureFactor(t);
}

function temperatureFactor(t: number): number {
  if (t <= -1) return 0;
  if (t <= 9) return 0.1 * (t + 1);
  return t <= 27 ? 2 ** ((t - 9) / 9) : 4;
}

/**
 * The share left of organic matter that rots more slowly the longer it has rotted, by its apparent
 * age: Janssen's equation. Warmth makes time pass faster within the equation.
 *
 * @param span 0 to 1,000 years.
 * @param options apparent `age` at the start, 0.1 to 100 years; mean yearly `temperatureC`, -60 to 60,
 * default 9.
 * @returns a share, 0 to 1.
 * @throws ProblemError where a figure is missing, of another kind or out of range.
 * @rule share left = exp(4.7 ((age + f years)^-0.6 - age^-0.6)), f the factor of the temperature
 * @source janssen-1984
 * @example
 * Number(janssenLeft(times(1, year), { age: 1 }).toFixed(3)) // => 0.202
 */
export function janssenLeft(span: Duration, options: JanssenOptions): number {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const years = yearsOf(given.si(span, "duration", ["span"], spanLimits));
  const age = given.plain(chosen.age, ["age"], { min: 0.1, max: 100 });
  const t = given.plain(chosen.temperatureC ?? 9, ["temperatureC"], temperatureLimits);
  given.done();
  return Math.exp(4.7 * ((age + temperatureFactor(t) * years) ** -0.6 - age ** -0.6));
}
