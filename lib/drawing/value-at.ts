import type { SheetPoint, SheetSeries } from "./bands-sheet.ts";

/** A line's values at a place: a step's hold from the place before; undefined off the line. */
export function valueAt(
  { points, shape }: Pick<SheetSeries, "points" | "shape">,
  at: number,
): SheetPoint | undefined {
  const after = points.findIndex((point) => point.at >= at - 1e-9);
  const [from, to] = [points[Math.max(0, after - 1)], points[after]];
  if (from === undefined || to === undefined || at < from.at - 1e-9) return undefined;
  if (to.at - at < 1e-9) return { ...to, at };
  if (shape === "step") return { ...from, at };
  const share = (at - from.at) / (to.at - from.at);
  const between = (key: "low" | "likely" | "high"): number =>
    from[key] + (to[key] - from[key]) * share;
  return { at, low: between("low"), likely: between("likely"), high: between("high") };
}
