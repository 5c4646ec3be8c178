import type { Caution } from "../check/index.ts";
import type { NotSold } from "../cost/index.ts";

/** The caution that a total leaves something out, naming it; none where all has a price. */
export function unpricedCaution(notSold: readonly NotSold[]): readonly Caution[] {
  if (notSold.length === 0) return [];
  const names = notSold.map(({ need, why }) => `${need.item} (${need.use}): ${why}`);
  return [
    {
      id: "without-price",
      fact: "The total leaves out what has no price.",
      advice: "Ask the yards for these prices and write them into the price list.",
      defersTo: "The yard's own offer goes above any estimate.",
      sources: ["common practice"],
      because: names.join("; "),
    },
  ];
}
