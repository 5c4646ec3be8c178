import type { UnitSystem } from "../measure/index.ts";
import type { PlacedBed } from "./bed-places.ts";
import { px, svg, type Tree } from "./tree.ts";

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
}

/** The beds with where they come to lie on the sheet, in pixels. */
export interface Sketch {
  readonly placed: readonly PlacedBed[];
  readonly rects: readonly Rect[];
  readonly pxPerM: number;
  readonly units: UnitSystem;
  readonly width: number;
}

/** How broad the boards of a bed are drawn: as they are, or as broad as can be seen. */
export function bandOf(sketch: Sketch, index: number): number {
  const bed = sketch.placed[index]?.bed;
  const rect = sketch.rects[index];
  if (bed === undefined || rect === undefined) return 0;
  const across = (bed.cap?.width ?? bed.section.thickness).si * sketch.pxPerM;
  const seen = sketch.width < 500 ? 2.5 : 4;
  return Math.min(Math.max(across, seen), rect.wide / 4, rect.high / 4);
}

/** All soil, all new and all kept boards, a path each: few elements however many beds. */
export function boardsAndSoil(sketch: Sketch, kept: ReadonlyMap<string, number>): readonly Tree[] {
  const { placed, rects } = sketch;
  const paths = { soil: "", board: "", kept: "" };
  placed.forEach(({ bed, upright }, index) => {
    const rect = rects[index] as Rect;
    const band = bandOf(sketch, index);
    paths.soil += rectPath(rect);
    const isKept = (part: string, nth: number) => (kept.get(`${bed.name}|${part}`) ?? 0) > nth;
    // Which boards run through at the corners: the others stand between them.
    const through = bed.lap ?? "sides";
    const endBack = through === "sides" ? band : 0;
    const sideBack = through === "ends" ? band : 0;
    const ends = upright ? level(rect, band, endBack) : standing(rect, band, endBack);
    const sides = upright ? standing(rect, band, sideBack) : level(rect, band, sideBack);
    ends.forEach((end, nth) => {
      paths[isKept("end", nth) ? "kept" : "board"] += rectPath(end);
    });
    sides.forEach((side, nth) => {
      paths[isKept("side", nth) ? "kept" : "board"] += rectPath(side);
    });
  });
  return (["soil", "board", "kept"] as const).flatMap((kind) =>
    paths[kind] === "" ? [] : [svg("path", { class: kind, d: paths[kind] })],
  );
}

function level({ x, y, wide, high }: Rect, band: number, back: number): readonly Rect[] {
  const board = { x: x + back, wide: wide - 2 * back, high: band };
  return [
    { ...board, y },
    { ...board, y: y + high - band },
  ];
}

function standing({ x, y, wide, high }: Rect, band: number, back: number): readonly Rect[] {
  const board = { y: y + back, wide: band, high: high - 2 * back };
  return [
    { ...board, x },
    { ...board, x: x + wide - band },
  ];
}

function rectPath({ x, y, wide, high }: Rect): string {
  return `M${px(x)} ${px(y)}h${px(wide)}v${px(high)}h${px(-wide)}z`;
}
