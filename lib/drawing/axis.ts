import { dimensionName, printQuantity, type Quantity, type UnitSystem } from "../measure/index.ts";

/** Round places along an axis, and how they are printed. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** How values of a drawing are measured: the size of a unit in SI, and a value in words. */
export interface Scale {
  readonly unitSi: number;
  print(si: number): string;
  /** A round place of the axis: no decimals it does not need. */
  tick(si: number): string;
}

/** Units in which amounts of a kind are read, from the smallest; the first that keeps figures short is taken. */
const units: Readonly<Record<string, Readonly<Record<UnitSystem, readonly Unit[]>>>> = {
  length: {
    us: [
      ["in", 0.0254, 60],
      ["ft", 0.3048, Number.POSITIVE_INFINITY],
    ],
    metric: [
      ["cm", 0.01, 300],
      ["m", 1, Number.POSITIVE_INFINITY],
    ],
  },
  volume: {
    us: [
      ["cu ft", 0.028316846592, 81],
      ["cu yd", 0.764554857984, Number.POSITIVE_INFINITY],
    ],
    metric: [
      ["L", 0.001, 2000],
      ["m3", 1, Number.POSITIVE_INFINITY],
    ],
  },
  mass: {
    us: [["lb", 0.45359237, Number.POSITIVE_INFINITY]],
    metric: [["kg", 1, Number.POSITIVE_INFINITY]],
  },
  area: {
    us: [["sq ft", 0.09290304, Number.POSITIVE_INFINITY]],
    metric: [["m2", 1, Number.POSITIVE_INFINITY]],
  },
  time: {
    us: [["years", 31_536_000, Number.POSITIVE_INFINITY]],
    metric: [["years", 31_536_000, Number.POSITIVE_INFINITY]],
  },
};
type Unit = readonly [symbol: string, si: number, most: number];

/** A scale for quantities like this one, or for plain numbers (`undefined`), shares as per cent. */
export function scaleFor(
  like: Quantity | undefined,
  options: { readonly most: number; readonly units: UnitSystem; readonly percent: boolean },
): Scale {
  const { most, units: system, percent } = options;
  if (like === undefined) return percent ? percentScale : plainScale;
  const print = (si: number, more: { unit?: string; digits?: number }): string =>
    printQuantity({ ...like, si }, { system, style: "typographic", ...more });
  const found = units[dimensionName(like)]?.[system].find(([, si, top]) => most / si <= top);
  if (found === undefined) {
    const short = (text: string): string => text.replace(/[.,]00\b/, "");
    return { unitSi: 1, print: (si) => print(si, {}), tick: (si) => short(print(si, {})) };
  }
  const [unit, unitSi] = found;
  return {
    unitSi,
    print: (si) => print(si, {}),
    tick: (si) => print(si, { unit, digits: 12 }),
  };
}

const percentScale: Scale = {
  unitSi: 0.01,
  print: (share) => `${Number((100 * share).toPrecision(2))} %`,
  tick: (share) => `${Number((100 * share).toPrecision(6))} %`,
};
const plainScale: Scale = {
  unitSi: 1,
  print: (value) => String(Number(value.toPrecision(3))),
  tick: (value) => String(Number(value.toPrecision(6))),
};

/** An axis from nothing, or from below it, to a round place above all values, with few ticks. */
export function axisOver(
  [least, most]: readonly [number, number],
  scale: Scale,
  mostTicks: number,
): Axis {
  const [low, high] = [Math.min(0, least) / scale.unitSi, Math.max(0, most) / scale.unitSi];
  const span = high - low;
  const step = span > 0 ? roundStep(span / Math.max(1, mostTicks)) : 1;
  const [first, last] = [Math.floor(low / step + 1e-9), Math.max(1, Math.ceil(high / step - 1e-9))];
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => {
    const at = Number(((first + index) * step).toPrecision(12)) * scale.unitSi;
    return { at, text: scale.tick(at) };
  });
  return { from: first * step * scale.unitSi, to: last * step * scale.unitSi, ticks };
}

/** The round number at or above: 1, 2, 5 or ten times as much. */
export function roundStep(least: number): number {
  const ten = 10 ** Math.floor(Math.log10(least));
  for (const times of [1, 2, 5]) if (times * ten >= least * (1 - 1e-9)) return times * ten;
  return 10 * ten;
}
