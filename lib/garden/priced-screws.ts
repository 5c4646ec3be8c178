import type { PriceLine } from "../cost/index.ts";
import { itemKey } from "../cost/item-key.ts";
import type { Screw } from "../fasteners/index.ts";
import { inch, type Length, millimetre, times } from "../measure/index.ts";

/**
 * The screws of a price list. A screw's length is in its name; its diameter is too where it is
 * written so ("5 x 60 mm screws", "#8 x 1 1/4 in screws"), else it is that of the thickest screw of
 * the nearest length among those known.
 */
export function pricedScrews(
  prices: readonly PriceLine[],
  known: readonly Screw[],
): readonly Screw[] {
  const screws = new Map<string, Screw>();
  for (const { item, kind } of prices) {
    const thousandths = kind === "goods" ? /^screw (\d+)$/.exec(itemKey(item))?.[1] : undefined;
    if (thousandths === undefined) continue;
    const length = times(inch, Number(thousandths) / 1000);
    for (const diameter of diametersOf(item, length, known)) {
      const alike = known.find((screw) => isLength(screw, length) && isDiameter(screw, diameter));
      screws.set(`${thousandths} ${diameter.si.toFixed(5)}`, alike ?? { length, diameter });
    }
  }
  return [...screws.values()];
}

/**
 * The diameter that is written; else all in which screws of this length are known, since a price
 * list that names none leaves the choice; else that of the nearest length.
 */
function diametersOf(item: string, length: Length, known: readonly Screw[]): readonly Length[] {
  const written = writtenDiameter(item);
  if (written !== undefined) return [written];
  const alike = known.filter((screw) => isLength(screw, length));
  const taken = alike.length > 0 ? alike : [nearest(length, known)];
  return taken.flatMap((screw) => screw?.diameter ?? []);
}

const isLength = (screw: Screw, length: Length): boolean =>
  Math.abs(screw.length.si - length.si) < 0.0005 * inch.si;
const isDiameter = (screw: Screw, diameter: Length): boolean =>
  Math.abs(screw.diameter.si - diameter.si) < 0.0005 * inch.si;

function writtenDiameter(item: string): Length | undefined {
  const metric = /(\d+(?:[.,]\d+)?)\s*[x×]\s*\d+(?:[.,]\d+)?\s*mm/i.exec(item)?.[1];
  if (metric !== undefined) return times(millimetre, Number(metric.replace(",", ".")));
  const gauge = /(?:#|no\.?\s*)(\d+)\b/i.exec(item)?.[1];
  // From memory: 0.060 in and 0.013 in for each number; numbers 8 and 10 of the published table agree.
  return gauge === undefined ? undefined : times(inch, 0.06 + 0.013 * Number(gauge));
}

function nearest(length: Length, known: readonly Screw[]): Screw | undefined {
  const off = (screw: Screw): number => Math.abs(screw.length.si - length.si);
  return known.toSorted((a, b) => off(a) - off(b) || b.diameter.si - a.diameter.si)[0];
}
