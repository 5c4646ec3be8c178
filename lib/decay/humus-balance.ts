import { Given } from "../measure/given.ts";
import type { Duration } from "../measure/index.ts";
import { carbonLimits, rateLimits, shareLimits, spanLimits, yearsOf } from "./limits.ts";

/** A soil's humus and what is added each year, in any one unit of mass for an area. */
export interface HumusOptions {
  /** Humus at the start, 0 to 1,000,000,000. */
  readonly start: number;
  /** Organic matter added each year, 0 to 1,000,000,000; default none. */
  readonly added?: number;
  /** Share of what is added that becomes humus, 0 to 1; default 0. */
  readonly kept?: number;
  /** Share of the humus that rots in a year, as a rate, 0 to 100. */
  readonly rate: number;
}

/** The humus after a time, and what it comes to in the end. */
export interface HumusBalance {
  readonly humus: number;
  /** Where it no longer changes; null where nothing rots and something is added. */
  readonly inTheEnd: number | null;
}

/**
 * The humus of a soil that gets the same each year: the balance of Hénin and Dupuis.
 *
 * @param span 0 to 1,000 years.
 * @param options `start`, `added` each year, and the share of it `kept` as humus; `rate` a year.
 * @throws ProblemError where a figure is missing, of another kind or out of range.
 * @rule dH/dt = kept x added - rate x H; in the end H = kept x added / rate
 * @source henin-dupuis
 * @example
 * const year5 = humusBalance(times(5, year), { start: 90, added: 0, rate: 1 / 60 });
 * Number(year5.humus.toFixed(1)) // => 82.8
 */
export function humusBalance(span: Duration, options: HumusOptions): HumusBalance {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const years = yearsOf(given.si(span, "duration", ["span"], spanLimits));
  const start = given.plain(chosen.start, ["start"], carbonLimits);
  const added = given.plain(chosen.added ?? 0, ["added"], carbonLimits);
  const kept = given.plain(chosen.kept ?? 0, ["kept"], shareLimits);
  const rate = given.plain(chosen.rate, ["rate"], rateLimits);
  given.done();
  const made = kept * added;
  const left = Math.exp(-rate * years);
  // (1 - e^(-rate t)) / rate without losing digits where the rate is small.
  const grown = rate === 0 ? years : -Math.expm1(-rate * years) / rate;
  return {
    humus: start * left + made * grown,
    inTheEnd: rate > 0 ? made / rate : made > 0 ? null : start,
  };
}
