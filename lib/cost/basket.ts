import { boughtOf } from "./bought-of.ts";
import { centsOf } from "./cents.ts";
import type { Need } from "./need.ts";
import type { PriceIndex } from "./price-index.ts";
import type { Purchase } from "./purchase.ts";
import type { Bought, YardReceipt } from "./receipt.ts";
import type { Basket, NotSold, Shopping } from "./shopping.ts";
import { yardReceipt } from "./yard-receipt.ts";
import type { YardTerms } from "./yard-terms.ts";

interface Offered {
  readonly terms: YardTerms;
  readonly purchase: Purchase;
}

/**
 * What is bought where, when one yard is the main one: there all that it sells, the rest where it
 * costs least, a trip that becomes necessary included. Whether each yard brings loose goods is tried
 * both ways; given is the cheapest basket, one that leaves less unsold before all others.
 */
export function basketAt(main: string, shopping: Shopping, index: PriceIndex): Basket {
  let best: Basket = { receipts: [], notSold: [], cents: Infinity };
  for (const bringing of deliveries(shopping, index)) {
    const basket = oneBasket(main, bringing, shopping, index);
    if (basket === undefined) continue;
    if (best.cents === Infinity || betterBasket(basket, best)) best = basket;
  }
  return best;
}

/** Whether a basket leaves less unsold than another, or as much and costs less. */
export function betterBasket(a: Basket, b: Basket): boolean {
  const [unsoldA, unsoldB] = [a.notSold.length, b.notSold.length];
  return unsoldA < unsoldB || (unsoldA === unsoldB && a.cents < b.cents);
}

/** The sets of yards that bring loose goods: every set of a few yards; of many none, one, or all. */
function deliveries(shopping: Shopping, index: PriceIndex): ReadonlySet<string>[] {
  if (shopping.carriesBulk) return [new Set()];
  const bulkYards = new Set(
    shopping.needs
      .flatMap((need) => index.linesFor(need))
      .filter((line) => line.form === "bulk")
      .map((line) => line.yard),
  );
  const able = shopping.yards
    .filter(({ yard, delivery }) => delivery !== undefined && bulkYards.has(yard))
    .map(({ yard }) => yard);
  if (able.length > 5) return [new Set(), ...able.map((yard) => new Set([yard])), new Set(able)];
  return Array.from(
    { length: 2 ** able.length },
    (_, bits) => new Set(able.filter((_yard, place) => (bits & (2 ** place)) !== 0)),
  );
}

/** One basket, or undefined where a yard would bring less than its least order. */
function oneBasket(
  main: string,
  bringing: ReadonlySet<string>,
  shopping: Shopping,
  index: PriceIndex,
): Basket | undefined {
  const { yards, boards, needs, carriesBulk } = shopping;
  const chosen = new Map<string, Bought[]>(yards.map(({ yard }) => [yard, []]));
  for (const { yard, ...board } of boards) chosen.get(yard)?.push(board);
  const notSold: NotSold[] = [];
  for (const need of needs) {
    const offers = yards.flatMap((terms): Offered[] => {
      const withBulk = carriesBulk || bringing.has(terms.yard);
      const purchase = index.purchase(need, terms.yard, withBulk);
      return purchase === undefined ? [] : [{ terms, purchase }];
    });
    const taken = takenOffer(offers, main, { shopping, chosen });
    if (taken === undefined) {
      notSold.push({ need, why: whyNotSold(need, shopping, index) });
      continue;
    }
    const parts = taken.purchase.parts.map((part) => boughtOf(part, need, carriesBulk));
    chosen.get(taken.terms.yard)?.push(...parts);
  }
  const receipts = receiptsOf(chosen, shopping);
  if (receipts === undefined) return undefined;
  return { receipts, notSold, cents: receipts.reduce((sum, { total }) => sum + centsOf(total), 0) };
}

function takenOffer(
  offers: readonly Offered[],
  main: string,
  state: { readonly shopping: Shopping; readonly chosen: ReadonlyMap<string, Bought[]> },
): Offered | undefined {
  const there = offers.find(({ terms }) => terms.yard === main);
  if (there !== undefined) return there;
  const costs = offers.map((offer) => costThere(offer, state));
  return offers[costs.indexOf(Math.min(...costs))];
}

/** What buying there adds: goods, tax, and the trip or delivery that was not needed before. */
function costThere(
  { terms, purchase }: Offered,
  state: { readonly shopping: Shopping; readonly chosen: ReadonlyMap<string, Bought[]> },
): number {
  const { taxIncluded, carriesBulk } = state.shopping;
  const before = state.chosen.get(terms.yard) ?? [];
  const isBrought = (form: string) => form === "bulk" && !carriesBulk;
  const brings = purchase.parts.some(({ line }) => isBrought(line.form));
  const fetches = purchase.parts.some(({ line }) => !isBrought(line.form));
  const newTrip = fetches && !before.some((bought) => bought.delivered !== true);
  const newDelivery = brings && !before.some((bought) => bought.delivered === true);
  const tax = taxIncluded ? 0 : purchase.cents * terms.tax;
  const trip = newTrip && terms.tripCost !== undefined ? centsOf(terms.tripCost) : 0;
  const delivery = newDelivery && terms.delivery !== undefined ? centsOf(terms.delivery) : 0;
  return purchase.cents + tax + trip + delivery;
}

/** The receipts, or undefined where a delivery is under its yard's least order. */
function receiptsOf(
  chosen: ReadonlyMap<string, readonly Bought[]>,
  shopping: Shopping,
): YardReceipt[] | undefined {
  const { taxIncluded, currency, carPayload } = shopping;
  const options = { taxIncluded, currency, ...(carPayload === undefined ? {} : { carPayload }) };
  const receipts: YardReceipt[] = [];
  for (const terms of shopping.yards) {
    const bought = chosen.get(terms.yard) ?? [];
    if (bought.length === 0) continue;
    const receipt = yardReceipt(bought, terms, options);
    if (isUnderLeastOrder(receipt, terms)) return undefined;
    receipts.push(receipt);
  }
  return receipts;
}

function isUnderLeastOrder(receipt: YardReceipt, { deliveryFrom }: YardTerms): boolean {
  const brought = receipt.lines.filter((line) => line.delivered === true);
  if (deliveryFrom === undefined || brought.length === 0) return false;
  return brought.reduce((sum, line) => sum + centsOf(line.total), 0) < centsOf(deliveryFrom);
}

function whyNotSold(need: Need, shopping: Shopping, index: PriceIndex): NotSold["why"] {
  const lines = index.linesFor(need);
  if (lines.length === 0) return "no price";
  const covering = lines.filter(({ yard }) => index.purchase(need, yard, true) !== undefined);
  if (covering.length === 0) return "not enough";
  const brought = shopping.yards.some(
    ({ yard, delivery }) => delivery !== undefined && covering.some((line) => line.yard === yard),
  );
  return brought ? "under the least order" : "not brought";
}
