import type { Stop } from "./order.ts";

/** Room between two stops of a layer, and between two bands (pixels). */
const gap = 10;
export const bandGap = 44;

/** The band of a group: from its upper edge, so high. */
export interface Band {
  readonly group: number;
  readonly top: number;
  readonly height: number;
}

/** How often stops are drawn towards their neighbours, there and back. */
const pulls = 8;

/**
 * The upper edge of each stop: as near to the mean of its neighbours as its own neighbours in the
 * layer allow, each group within its band.
 */
export function heightsOf(
  order: readonly (readonly number[])[],
  stops: readonly Stop[],
): { readonly tops: readonly number[]; readonly bands: readonly Band[] } {
  const bands = bandsOf(order, stops);
  const tops = new Array<number>(stops.length).fill(0);
  for (const layer of order) for (const band of bands) place(inBand(layer, band, stops), () => 0);
  for (let pull = 0; pull < pulls; pull += 1) {
    const side = pull % 2 === 0 ? "before" : "after";
    const layers = side === "before" ? order : order.toReversed();
    for (const layer of layers)
      for (const band of bands) place(inBand(layer, band, stops), (at) => wanted(at, side));
  }
  return { tops, bands };

  function wanted(at: number, side: "before" | "after"): number {
    const stop = stops[at];
    const near = stop?.[side] ?? [];
    if (!stop || near.length === 0) return tops[at] ?? 0;
    const middles = near.map((one) => (tops[one] ?? 0) + (stops[one]?.height ?? 0) / 2);
    return middles.reduce((sum, one) => sum + one, 0) / near.length - stop.height / 2;
  }

  function place({ layer, band }: InBand, want: (at: number) => number): void {
    const offsets: number[] = [];
    let height = -gap;
    for (const at of layer) {
      offsets.push(height + gap);
      height += gap + (stops[at]?.height ?? 0);
    }
    const free = layer.map((at, index) => want(at) - (offsets[index] ?? 0));
    const lowest = band.top + band.height - Math.max(height, 0);
    for (const [index, top] of rising(free).entries()) {
      const at = layer[index];
      const within = Math.min(Math.max(top, band.top), Math.max(lowest, band.top));
      if (at !== undefined) tops[at] = within + (offsets[index] ?? 0);
    }
  }
}

interface InBand {
  readonly layer: readonly number[];
  readonly band: Band;
}

function inBand(layer: readonly number[], band: Band, stops: readonly Stop[]): InBand {
  return { layer: layer.filter((at) => stops[at]?.group === band.group), band };
}

/** Each group's band is as high as its fullest layer. */
function bandsOf(order: readonly (readonly number[])[], stops: readonly Stop[]): readonly Band[] {
  const heights = new Map<number, number>();
  for (const layer of order) {
    const own = new Map<number, number>();
    for (const at of layer) {
      const { group = 0, height = 0 } = stops[at] ?? {};
      own.set(group, (own.get(group) ?? -gap) + gap + height);
    }
    for (const [group, height] of own)
      heights.set(group, Math.max(heights.get(group) ?? 0, height));
  }
  let top = 0;
  return [...heights]
    .sort(([a], [b]) => a - b)
    .map(([group, height]) => {
      const band = { group, top, height };
      top += height + bandGap;
      return band;
    });
}

/** The numbers that never fall and lie nearest to these: neighbours that would fall share their mean. */
export function rising(wanted: readonly number[]): readonly number[] {
  const runs: { sum: number; count: number }[] = [];
  for (const one of wanted) {
    let run = { sum: one, count: 1 };
    for (
      let last = runs.at(-1);
      last && last.sum / last.count > run.sum / run.count;
      last = runs.at(-1)
    ) {
      run = { sum: last.sum + run.sum, count: last.count + run.count };
      runs.pop();
    }
    runs.push(run);
  }
  return runs.flatMap(({ sum, count }) => new Array<number>(count).fill(sum / count));
}
