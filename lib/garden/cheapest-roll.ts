import type { Need, PriceLine, SheetPrice } from "../cost/index.ts";
import { itemKey } from "../cost/item-key.ts";
import { sizesNeeded } from "../cost/sizes-needed.ts";

/** The priced roll that serves a need for the least money, wherever it is sold. */
export function cheapestRoll(need: Need, prices: readonly PriceLine[]): SheetPrice | undefined {
  const key = itemKey(need.item);
  let best: { readonly line: SheetPrice; readonly cost: number } | undefined;
  for (const line of prices) {
    if (line.kind !== "sheet" || itemKey(line.item) !== key) continue;
    const rolls = sizesNeeded(need, line);
    if (rolls === undefined) continue;
    const cost = rolls * line.price.si;
    if (best === undefined || cost < best.cost) best = { line, cost };
  }
  return best?.line;
}
