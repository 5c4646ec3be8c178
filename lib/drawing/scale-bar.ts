import { foot, type Length, metre, times, type UnitSystem } from "../measure/index.ts";
import { bothLengths } from "./labels.ts";
import { lines, type Tree, words } from "./tree.ts";

/** Round lengths for a scale bar, longest first, in the reader's own system. */
const lengths: Readonly<Record<UnitSystem, readonly Length[]>> = {
  us: [40, 20, 16, 8, 4, 2, 1, 0.5].map((feet) => times(foot, feet)),
  metric: [10, 5, 4, 2, 1, 0.5, 0.2].map((metres) => times(metre, metres)),
};

export interface ScaleBarOptions {
  readonly units: UnitSystem;
  /** Longest it may be, in pixels. */
  readonly most: number;
  /** Words after the lengths: "seen on the face". */
  readonly note?: string;
}

/** A scale bar in quarters, with both units at its end. */
export function scaleBar(
  x: number,
  y: number,
  pxPerM: number,
  options: ScaleBarOptions,
): readonly Tree[] {
  const { units, most, note } = options;
  const fitting = lengths[units].find((length) => length.si * pxPerM <= most);
  const length = fitting ?? (lengths[units].at(-1) as Length);
  const long = length.si * pxPerM;
  const ticks = [0, 1, 2, 3, 4].map((quarter): [number, number, number, number] => {
    const at = x + (long * quarter) / 4;
    const half = quarter % 2 === 0 ? 4 : 3;
    return [at, y - half, at, y + half];
  });
  const text = bothLengths(length, units);
  return [
    lines("dim", [[x, y, x + long, y], ...ticks]),
    words("note", note === undefined ? text : `${text}, ${note}`, { x: x + long + 9, y: y + 4.5 }),
  ];
}
