import { centsOf } from "../cost/cents.ts";
import type { YardTerms } from "../cost/index.ts";
import { grainsPerMinor } from "../cutting/cut-part.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import type { YardWay } from "./ways.ts";

/** What buying at yards costs besides the goods, in grains and kilograms. */

/** What a price is multiplied by, for the tax on it. */
export const taxedAt = ({ tax }: YardTerms, { taxIncluded }: BuyingProblem): number =>
  taxIncluded ? 1 : 1 + tax;

export const grainsOf = (cents: number): number => Math.round(cents * grainsPerMinor);

/** One trip there and back. */
export const tripGrains = ({ tripCost }: YardTerms): number =>
  tripCost === undefined ? 0 : grainsOf(Math.round(centsOf(tripCost)));

/** One order brought, with the tax on it where there is one. */
export function deliveryGrains(terms: YardTerms, problem: BuyingProblem): number {
  if (terms.delivery === undefined) return 0;
  const taxed = terms.taxOn === "goods and delivery" ? taxedAt(terms, problem) : 1;
  return grainsOf(Math.round(centsOf(terms.delivery)) * taxed);
}

/** What the car carries from a yard, in kilograms; endless where weights do not count. */
export function payloadKg({ terms, way }: YardWay, problem: BuyingProblem): number {
  if (way === "delivered" || tripGrains(terms) === 0) return Number.POSITIVE_INFINITY;
  return (terms.payload ?? problem.carPayload)?.si ?? Number.POSITIVE_INFINITY;
}

/** The least order that is brought, in minor units before tax; 0 where any is. */
export function leastOrderCents({ terms, way }: YardWay): number {
  if (way === "fetched" || terms.deliveryFrom === undefined) return 0;
  return Math.round(centsOf(terms.deliveryFrom));
}

export function tripsFor(kg: number, payload: number): number {
  return Number.isFinite(payload) ? Math.max(1, Math.ceil(kg / payload - 1e-9)) : 1;
}
