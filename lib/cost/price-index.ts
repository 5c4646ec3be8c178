import { itemKey } from "./item-key.ts";
import type { Need } from "./need.ts";
import type { PriceLine } from "./price-line.ts";
import { cheapestPurchase, type Purchase } from "./purchase.ts";

/** The price lines that serve each need, and the purchases tried so far. */
export interface PriceIndex {
  linesFor(need: Need): readonly PriceLine[];
  /** The cheapest purchase of a need at a yard, with or without loose goods. */
  purchase(need: Need, yard: string, withBulk: boolean): Purchase | undefined;
}

/** Goods by the name they are matched on. Each purchase is worked out once, however often asked. */
export function indexPrices(prices: readonly PriceLine[]): PriceIndex {
  const byKey = new Map<string, PriceLine[]>();
  for (const line of prices) {
    if (line.kind === "board" || line.kind === "kit") continue;
    const key = itemKey(line.item);
    const lines = byKey.get(key);
    if (lines === undefined) byKey.set(key, [line]);
    else lines.push(line);
  }
  const linesFor = (need: Need): readonly PriceLine[] => byKey.get(itemKey(need.item)) ?? [];
  const known = new Map<Need, Map<string, Purchase | undefined>>();
  const purchase = (need: Need, yard: string, withBulk: boolean): Purchase | undefined => {
    const ofNeed = known.get(need) ?? new Map<string, Purchase | undefined>();
    known.set(need, ofNeed);
    const key = `${withBulk} ${yard}`;
    if (!ofNeed.has(key)) {
      const lines = linesFor(need).filter(
        (line) => line.yard === yard && (withBulk || line.form !== "bulk"),
      );
      ofNeed.set(key, cheapestPurchase(need, lines));
    }
    return ofNeed.get(key);
  };
  return { linesFor, purchase };
}
