import type { BedShare, CountNeed, PriceLine } from "../cost/index.ts";
import type { Screw, ScrewChoice } from "../fasteners/index.ts";
import { inch, type Length, millimetre, over, printQuantity } from "../measure/index.ts";
import type { Bed } from "./bed.ts";
import { pricedScrews } from "./priced-screws.ts";

/** A place that takes screws, which screw that is, and how many. */
export interface ScrewUse {
  readonly where: "corner plates" | "stakes" | "seat";
  readonly choice: ScrewChoice;
  readonly count: number;
  readonly shares: readonly BedShare[];
}

/** A kind of joint: how its screw is chosen from a stock, and how many a bed takes. */
export interface Joint {
  readonly where: ScrewUse["where"];
  /** Beds with the same key take the same screw. */
  readonly key: (bed: Bed) => string;
  readonly choose: (bed: Bed, stock: readonly Screw[]) => ScrewChoice;
  readonly count: (bed: Bed) => number;
}

/**
 * The screws of one kind of joint, by screw chosen. Screws of the price list are tried first, so
 * that nothing is put on the bill that a neighbouring length on sale would do for.
 */
export function screwUses(
  beds: readonly Bed[],
  joint: Joint,
  stock: { readonly screws: readonly Screw[]; readonly prices: readonly PriceLine[] },
): ScrewUse[] {
  const priced = pricedScrews(stock.prices, stock.screws);
  const groups = new Map<string, { readonly choice: ScrewChoice; readonly shares: BedShare[] }>();
  for (const bed of beds) {
    const count = joint.count(bed);
    if (count === 0) continue;
    const key = joint.key(bed);
    const group = groups.get(key) ?? { choice: chosenFor(bed), shares: [] };
    groups.set(key, group);
    group.shares.push({ bed: bed.name, share: count });
  }
  function chosenFor(bed: Bed): ScrewChoice {
    const first = priced.length === 0 ? undefined : joint.choose(bed, priced);
    return first !== undefined && first.screw !== null ? first : joint.choose(bed, stock.screws);
  }
  return [...groups.values()].map(({ choice, shares }) => ({
    where: joint.where,
    choice,
    count: shares.reduce((sum, { share }) => sum + share, 0),
    shares,
  }));
}

/** As a price list calls it: "3 in screws", "70 mm screws". */
export function screwName({ length }: Pick<Screw, "length">): string {
  const sixteenths = over(length, inch) * 16;
  const isInches = Math.abs(sixteenths - Math.round(sixteenths)) < 1e-6;
  return `${isInches ? printQuantity(length) : inMillimetres(length)} screws`;
}

const inMillimetres = (length: Length): string =>
  `${Number(over(length, millimetre).toFixed(1))} mm`;

/** What is bought: one need for each length of screw. */
export function screwNeeds(uses: readonly ScrewUse[]): CountNeed[] {
  const needs = new Map<string, CountNeed>();
  for (const { choice, count, shares } of uses) {
    if (choice.screw === null) continue;
    const item = screwName(choice.screw);
    const before = needs.get(item);
    needs.set(item, {
      kind: "count",
      item,
      use: "fasteners",
      count: (before?.count ?? 0) + count,
      shares: [...(before?.shares ?? []), ...shares],
    });
  }
  return [...needs.values()];
}
