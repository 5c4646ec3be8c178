import { costOf, type PlainOffer, sizesFor } from "./offer-cost.ts";

// Bags are counted one by one below this; prices that meet only beyond it are as good as equal.
const mostBags = 200_000;

/**
 * The least need, in m3, above which bulk never costs more than bags; null where there is none.
 * Both costs rise in steps. Between two whole bags the bags' cost is the same while bulk's does not
 * fall, so it is enough to look at needs of whole bags, from above down to the last that is dearer.
 */
export function breakEvenM3(
  bag: PlainOffer,
  bulk: PlainOffer,
  currency: string | undefined,
): number | null {
  const bagPerM3 = bag.price / bag.sizeM3;
  const bulkPerM3 = bulk.price / bulk.sizeM3;
  if (bulkPerM3 >= bagPerM3) return null;
  // From here on bulk is no dearer even when almost a whole step and the least order are wasted.
  const wasted = bulk.price * (bulk.step + bulk.from) + bulk.delivery - bag.delivery + 0.02;
  const bound = Math.max(wasted / (bagPerM3 - bulkPerM3), bag.from * bag.sizeM3) / bag.sizeM3;
  if (bound > mostBags) return null;
  for (let bags = Math.ceil(bound) + 1; bags > 0; bags -= 1) {
    const needM3 = bags * bag.sizeM3;
    const inBags = costOf(sizesFor(needM3, bag), bag, currency).cost.si;
    if (costOf(sizesFor(needM3, bulk), bulk, currency).cost.si > inBags) return needM3;
  }
  return 0;
}
