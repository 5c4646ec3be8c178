import { Given } from "../measure/given.ts";
import { type Duration, hour, year } from "../measure/index.ts";
import { rateLimits, spanLimits, yearsOf } from "./limits.ts";

/**
 * The share left of what rots by the same share of the rest in equal times: first-order decay.
 *
 * @param rate a year, 0 to 100: 0.105 leaves 90 per cent after a year.
 * @param span 0 to 1,000 years.
 * @returns a share, 0 to 1.
 * @throws ProblemError where a figure is missing, of another kind or out of range.
 * @rule share left = exp(-rate x years)
 * @source nmi-compost
 * @example
 * Number(shareLeft(0.288, times(1, year)).toFixed(2)) // => 0.75
 */
export function shareLeft(rate: number, span: Duration): number {
  const given = new Given();
  const perYear = given.plain(rate, ["rate"], rateLimits);
  const years = yearsOf(given.si(span, "duration", ["span"], spanLimits));
  given.done();
  return Math.exp(-perYear * years);
}

/**
 * The yearly rate of first-order decay of which a share is left after a time.
 *
 * @param share left, above 0, to 1.
 * @param span 1 hour to 1,000 years; default a year.
 * @throws ProblemError where a figure is missing, of another kind or out of range.
 * @rule rate = -ln(share left) / years
 * @source nmi-compost
 * @example
 * Number(yearlyRate(0.5).toFixed(3)) // => 0.693
 */
export function yearlyRate(share: number, span: Duration = year): number {
  const given = new Given();
  const left = given.plain(share, ["share"], { above: 0, max: 1 });
  const years = yearsOf(given.si(span, "duration", ["span"], { min: hour, max: spanLimits.max }));
  given.done();
  return -Math.log(left) / years + 0;
}
