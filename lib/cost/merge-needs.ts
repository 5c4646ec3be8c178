import { quantity, type Range } from "../measure/index.ts";
import { itemKey } from "./item-key.ts";
import type { BedShare, CountNeed, Need, VolumeNeed } from "./need.ts";

/**
 * Needs of one thing put together, so that bags are rounded up once: compost for the fill and for
 * the dressing is bought as one. Sheets stay apart.
 */
export function mergeNeeds(needs: readonly Need[]): Need[] {
  const merged = new Map<string, Need>();
  needs.forEach((need, place) => {
    const isSummed = need.kind === "volume" || need.kind === "count";
    const key = isSummed ? `${need.kind} ${itemKey(need.item)}` : `apart ${place}`;
    const before = merged.get(key);
    if (need.kind === "volume" && before?.kind === "volume") merged.set(key, volumes(before, need));
    else if (need.kind === "count" && before?.kind === "count")
      merged.set(key, counts(before, need));
    else merged.set(key, need);
  });
  return [...merged.values()];
}

function volumes(a: VolumeNeed, b: VolumeNeed): VolumeNeed {
  const volume = quantity(a.volume.si + b.volume.si, a.volume.dim);
  const density = meanDensity(a, b);
  return {
    ...together(a, b, { a: a.volume.si, b: b.volume.si }),
    kind: "volume",
    volume,
    ...(density === undefined ? {} : { density }),
  };
}

function counts(a: CountNeed, b: CountNeed): CountNeed {
  return {
    ...together(a, b, a.count === 0 && b.count === 0 ? { a: 1, b: 1 } : { a: a.count, b: b.count }),
    kind: "count",
    count: a.count + b.count,
  };
}

function together(a: Need, b: Need, weights: { readonly a: number; readonly b: number }) {
  const use = a.use === b.use ? a.use : `${a.use}, ${b.use}`;
  const shares = [...scaled(a.shares, weights.a), ...scaled(b.shares, weights.b)];
  return { item: a.item, use, shares };
}

/** The same shares, adding up to a sum. */
function scaled(shares: readonly BedShare[], sum: number): BedShare[] {
  const total = shares.reduce((all, { share }) => all + share, 0);
  return shares.map(({ bed, share }) => ({ bed, share: total > 0 ? (share * sum) / total : 0 }));
}

function meanDensity(a: VolumeNeed, b: VolumeNeed): VolumeNeed["density"] {
  if (a.density === undefined || b.density === undefined) return a.density ?? b.density;
  const [one, other] = [a.density, b.density];
  const whole = a.volume.si + b.volume.si;
  if (whole === 0) return one;
  const mean = (key: "low" | "likely" | "high") =>
    quantity((one[key].si * a.volume.si + other[key].si * b.volume.si) / whole, one.likely.dim);
  const basis = [...new Set([...one.basis, ...other.basis])];
  const range: Range<typeof one.likely> = {
    low: mean("low"),
    likely: mean("likely"),
    high: mean("high"),
    basis,
  };
  return range;
}
