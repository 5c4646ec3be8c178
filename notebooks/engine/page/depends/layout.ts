import { type Band, heightsOf } from "./heights.ts";
import { type Arrow, type Box, layersOf, withoutCircles } from "./layers.ts";
import { ordered, type Stop } from "./order.ts";

/** Where a box stands: its left and upper edge, and its layer from the left. */
export interface Placed {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly layer: number;
}

/** The way of an arrow: points it passes, from the right edge of one box to the left edge of another. */
export interface Way {
  readonly from: string;
  readonly to: string;
  readonly points: readonly (readonly [x: number, y: number])[];
}

export interface Layout {
  readonly boxes: readonly Placed[];
  readonly ways: readonly Way[];
  /** Arrows that would close a circle; they are not drawn. */
  readonly circling: readonly Arrow[];
  readonly bands: readonly Band[];
  readonly width: number;
  readonly height: number;
}

/** Room between two layers, and the height a passing line needs (pixels). */
const between = 72;
const passingHeight = 2;

/**
 * Lays boxes out in layers from the left, so that every arrow goes forward and no box covers another;
 * long arrows keep a place in each layer they pass. The same input gives the same picture.
 */
export function layOut(boxes: readonly Box[], arrows: readonly Arrow[]): Layout {
  const known = new Set(boxes.map(({ id }) => id));
  const usable = arrows.filter(({ from, to }) => from !== to && known.has(from) && known.has(to));
  const { forward, circling } = withoutCircles(boxes, usable);
  const layerOf = layersOf(boxes, forward);
  const threads = threaded(boxes, forward, layerOf);
  const { stops, layers } = threads;
  const { tops, bands } = heightsOf(ordered(stops, layers), stops);
  const widths = layers.map((layer) => Math.max(0, ...layer.map((at) => boxes[at]?.width ?? 0)));
  const lefts = widths.map((_, at) =>
    widths.slice(0, at).reduce((left, width) => left + width + between, 0),
  );
  const placed = boxes.map(({ id, width, height }, at) => {
    const layer = layerOf.get(id) ?? 0;
    return { id, x: lefts[layer] ?? 0, y: tops[at] ?? 0, width, height, layer };
  });
  const middle = (stop: number) => (tops[stop] ?? 0) + (stops[stop]?.height ?? 0) / 2;
  const ways = threads.trails.map(({ from, to, trail }) => {
    const first = layerOf.get(from) ?? 0;
    const points = trail.flatMap((stop, index): [number, number][] => {
      const left = lefts[first + index] ?? 0;
      const right = left + (widths[first + index] ?? 0);
      const y = middle(stop);
      if (index === trail.length - 1) return [[left, y]];
      // Level to the edge of the layer, so that a line passes behind no other box of it.
      return [
        [index === 0 ? left + (boxes[stop]?.width ?? 0) : left, y],
        [right, y],
      ];
    });
    return { from, to, points };
  });
  const width = (lefts.at(-1) ?? 0) + (widths.at(-1) ?? 0);
  const height = Math.max(0, ...bands.map((band) => band.top + band.height));
  return { boxes: placed, ways, circling, bands, width, height };
}

interface Threads {
  /** The boxes, in their order, then a stop for each layer that a long arrow passes. */
  readonly stops: readonly Stop[];
  /** The stops of each layer, by their number. */
  readonly layers: readonly (readonly number[])[];
  /** The stops of each arrow, from its beginning to its end. */
  readonly trails: readonly (Arrow & { readonly trail: readonly number[] })[];
}

/**
 * Gives long arrows a stop in each layer they pass, and ties stops of neighbouring layers. Arrows from
 * one box go together as far as they can: one line, that parts where it has to.
 */
function threaded(
  boxes: readonly Box[],
  arrows: readonly Arrow[],
  layerOf: ReadonlyMap<string, number>,
): Threads {
  const stops: Stop[] = [];
  const layers: number[][] = [];
  const put = (height: number, group: number, layer: number): number => {
    while (layers.length <= layer) layers.push([]);
    const number = stops.push({ height, group, before: [], after: [] }) - 1;
    layers[layer]?.push(number);
    return number;
  };
  const numbers = new Map(
    boxes.map(({ id, height, group = 0 }) => [id, put(height, group, layerOf.get(id) ?? 0)]),
  );
  const shared = new Map<string, number>();
  const passing = (from: string, group: number, layer: number): number => {
    const key = `${group} ${layer} ${from}`;
    const stop = shared.get(key) ?? put(passingHeight, group, layer);
    shared.set(key, stop);
    return stop;
  };
  const trails = arrows.map(({ from, to }) => {
    const [first = 0, last = 0] = [numbers.get(from), numbers.get(to)];
    const group = Math.max(stops[first]?.group ?? 0, stops[last]?.group ?? 0);
    const begin = (layerOf.get(from) ?? 0) + 1;
    const passed = Math.max(0, (layerOf.get(to) ?? 0) - begin);
    const between = Array.from({ length: passed }, (_, at) => passing(from, group, begin + at));
    const trail = [first, ...between, last];
    for (const [at, stop] of trail.slice(0, -1).entries()) {
      const next = trail[at + 1] ?? last;
      if (stops[stop]?.after.includes(next)) continue;
      stops[stop]?.after.push(next);
      stops[next]?.before.push(stop);
    }
    return { from, to, trail };
  });
  return { stops, layers, trails };
}
