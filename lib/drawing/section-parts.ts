import { type Length, metre, times, type UnitSystem } from "../measure/index.ts";
import { tapeLength, textWidth } from "./labels.ts";
import { flecks } from "./marks.ts";
import { box, lines, px, svg, type Tree, words } from "./tree.ts";

/** A layer in the bed, from the ground up. */
export interface DrawnLayer {
  /** As the reader calls it: "compost, once settled". */
  readonly name: string;
  /** Settled depth, 0 or more. */
  readonly depth: Length;
  /** How it is filled. Default: `soil`. */
  readonly kind?: "soil" | "topsoil" | "compost" | "bark";
}

/** What a section needs to know of a bed: a bed of the garden with its layers will do. */
export interface SectionedBed {
  readonly name?: string;
  /** True outside width. */
  readonly width: Length;
  readonly courses: number;
  readonly section: { readonly thickness: Length; readonly width: Length };
  /** Section of the seat board, or `null`. */
  readonly cap?: { readonly thickness: Length; readonly width: Length } | null;
  /** How far the cap reaches past the outside of the wall. Default: 1 in. */
  readonly capReach?: Length;
  /** From the ground up; what is left to the rim is free board. */
  readonly layers: readonly DrawnLayer[];
  /** Whether the boards are lined. Default: no. */
  readonly liner?: boolean;
  /** Where the surface once was: its height above the ground, and when: "filled in April". */
  readonly was?: { readonly name: string; readonly depth: Length };
}

/** What both forms of the sheet are drawn from. */
export interface SectionSheet {
  readonly bed: SectionedBed;
  readonly layers: readonly DrawnLayer[];
  readonly wallM: number;
  /** Below 0 where the fill is heaped above the rim. */
  readonly freeM: number;
  readonly units: UnitSystem;
  readonly alternative: string;
}

/** One wall end-on: its courses, its cap, its liner, from the outer face at `x` inwards. */
export function wall(
  sheet: SectionSheet,
  at: {
    readonly x: number;
    readonly rim: number;
    readonly pxPerM: number;
    readonly inwards: 1 | -1;
  },
): readonly Tree[] {
  const { bed } = sheet;
  const { x, rim, pxPerM, inwards } = at;
  const thick = bed.section.thickness.si * pxPerM;
  const high = bed.section.width.si * pxPerM;
  const left = inwards === 1 ? x : x - thick;
  const parts: Tree[] = [];
  for (let course = 0; course < bed.courses; course++) {
    parts.push(box("board", left, rim + course * high, thick, high));
  }
  if (bed.liner === true) {
    // Over the top edge, down the soil side, under the lower edge: never inward.
    const inner = x + inwards * (thick + 1.5);
    const foot = rim + bed.courses * high + 2;
    parts.push(
      svg("path", {
        class: "liner",
        d: `M${px(x)} ${px(rim - 2)}H${px(inner)}V${px(foot)}H${px(x)}`,
      }),
    );
  }
  if (bed.cap) {
    const reach = (bed.capReach?.si ?? 0.0254) * pxPerM;
    const wide = bed.cap.width.si * pxPerM;
    const capLeft = inwards === 1 ? x - reach : x + reach - wide;
    parts.push(
      box(
        "board",
        capLeft,
        rim - bed.cap.thickness.si * pxPerM,
        wide,
        bed.cap.thickness.si * pxPerM,
      ),
    );
  }
  return parts;
}

/** Where a layer lies on the sheet. */
export interface LayerBand {
  readonly layer: DrawnLayer;
  readonly y: number;
  readonly high: number;
}

/** The layers' bands from the ground up. */
export function bands(sheet: SectionSheet, ground: number, pxPerM: number): readonly LayerBand[] {
  let y = ground;
  return sheet.layers.map((layer) => {
    const high = layer.depth.si * pxPerM;
    y -= high;
    return { layer, y, high };
  });
}

export function drawnBand(
  { layer, y, high }: LayerBand,
  left: number,
  right: number,
): readonly Tree[] {
  const kind = layer.kind ?? "soil";
  const filled = box(kind, left, y, right - left, high);
  return kind === "bark" ? [filled, flecks(left, y, right - left, high)] : [filled];
}

/** A word at the side with a thin lead to what it names. */
export interface Lead {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** Leads to words in a column at the right, none over another. */
export function drawnLeads(
  leads: readonly Lead[],
  column: { readonly x: number; readonly top: number },
): readonly Tree[] {
  let free = column.top;
  return [...leads]
    .sort((a, b) => a.y - b.y)
    .flatMap((lead) => {
      const y = Math.max(lead.y, free);
      free = y + 19;
      return [
        lines("lead-line", [
          [lead.x, lead.y, column.x - 10, y],
          [column.x - 10, y, column.x - 4, y],
        ]),
        words("label", lead.text, { x: column.x, y: y + 4.8 }),
      ];
    });
}

/** How deep a layer is, for its lead: "bark 1″". */
export function leadText(layer: DrawnLayer, units: UnitSystem): string {
  return `${layer.name.split(",")[0]} ${tapeLength(layer.depth, units)}`;
}

export function freeText(sheet: SectionSheet, long: boolean): string {
  const size = tapeLength(times(metre, Math.abs(sheet.freeM)), sheet.units);
  if (sheet.freeM < 0) return long ? `${size} above the rim` : `${size} heaped`;
  return long ? `${size} free below the rim` : `${size} free`;
}

/** The former surface: a line across at its height, with how far it has sunk since. */
export function formerSurface(
  { bed, wallM, freeM, units }: SectionSheet,
  { ground, pxPerM, left, right }: { ground: number; pxPerM: number; left: number; right: number },
): { readonly parts: readonly Tree[]; readonly leads: readonly Lead[] } {
  if (bed.was === undefined) return { parts: [], leads: [] };
  const y = ground - bed.was.depth.si * pxPerM;
  // Nobody reads a sunken bed closer than an eighth of an inch.
  const eighth = 0.003175;
  const sunkM = Math.round((bed.was.depth.si - (wallM - freeM)) / eighth) * eighth;
  const size = tapeLength(times(metre, Math.abs(sunkM)), units);
  const text =
    Math.abs(sunkM) < 0.0008
      ? bed.was.name
      : `${bed.was.name}, ${size} ${sunkM > 0 ? "higher" : "lower"}`;
  return {
    parts: [lines("former", [[left, y, right, y]])],
    leads: [{ text, x: right - 4, y }],
  };
}

export const labelPx = 14;

/** Whether words fit into a band of this size. */
export function fits(text: string, wide: number, high: number): boolean {
  return high >= 19 && textWidth(text, labelPx) <= wide;
}
