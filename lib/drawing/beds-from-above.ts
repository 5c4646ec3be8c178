import { requireRecord } from "../check/index.ts";
import { foot, type Length, metre, times, type UnitSystem } from "../measure/index.ts";
import { bedPlaces, type DrawnBed, type PlacedBed } from "./bed-places.ts";
import type { DrawingOptions } from "./board-drawing.ts";
import type { DrawnBoard } from "./board-groups.ts";
import { flow } from "./flow.ts";
import { tapeLength, textWidth } from "./labels.ts";
import { north } from "./marks.ts";
import { boardsAndSoil, type Rect, type Sketch } from "./plan-beds.ts";
import { bedNames, dimensions } from "./plan-words.ts";
import { defaultWidths, requireBeds, requireBoards, requireDrawable } from "./require-drawable.ts";
import { scaleBar } from "./scale-bar.ts";
import { box, type Drawing, lines, picture, type Tree, words } from "./tree.ts";

/** How beds are drawn from above. */
export interface BedsDrawingOptions extends DrawingOptions {
  /** Boards used, as a board plan's `cuts`: those kept are drawn grey. Default: all new. */
  readonly cuts?: readonly DrawnBoard[];
}

/** More than this many beds are not told apart on any sheet. */
const mostBeds = 400;

/**
 * The beds from above on squared paper, at their places, or set in rows with 2 ft paths where they
 * have none. Boards are drawn thicker than they are; kept boards grey.
 *
 * @param beds with true outside sizes, and their `place` where they have one
 * @param options `units`; `widths` it is drawn for, 200 to 2,000 px; `cuts` of a board plan
 * @returns a drawing in a form for each width; of more than 400 beds the first 400
 * @throws ProblemError where a bed has no size above 0, or `units` or a width is not one of these
 * @rule Squares of 2 ft or 0.5 m; a bed without a place is set in a row, and the caption says so.
 * @source common practice
 * @example
 * bedsFromAbove([{ name: "1", length: times(foot, 8), width: times(foot, 4), section: { thickness: times(inch, 1.5) } }]).caption // => "Set in rows, not your layout. Boards are drawn thicker than they are."
 */
export function bedsFromAbove(
  beds: readonly DrawnBed[],
  options: BedsDrawingOptions = {},
): Drawing {
  requireRecord(options, ["options"]);
  const { units = "us", widths = defaultWidths, cuts = [] } = options;
  requireDrawable(units, widths);
  requireBeds(beds);
  requireBoards({ cuts });
  const drawn = beds.slice(0, mostBeds);
  const kept = keptParts(cuts);
  const { setInRows } = bedPlaces(drawn, 1);
  const alternative = inWords(drawn, setInRows, units);
  return {
    kind: "drawing",
    title: "The beds from above",
    alternative,
    caption: captionFor(beds.length, drawn.length, setInRows),
    forms: widths.map((width, at) => ({
      from: at === 0 ? 0 : width,
      tree: plan({ beds: drawn, kept, units, width, alternative }),
    })),
  };
}

interface Plan {
  readonly beds: readonly DrawnBed[];
  readonly kept: ReadonlyMap<string, number>;
  readonly units: UnitSystem;
  readonly width: number;
  readonly alternative: string;
}

function captionFor(all: number, drawn: number, setInRows: number): string {
  const some = drawn < all ? [`The first ${drawn} of ${all} beds.`] : [];
  return [
    ...some,
    ...rowsCaption(drawn, setInRows),
    "Boards are drawn thicker than they are.",
  ].join(" ");
}

function rowsCaption(drawn: number, setInRows: number): readonly string[] {
  if (setInRows === 0) return [];
  if (setInRows === drawn) return ["Set in rows, not your layout."];
  const beds =
    setInRows === 1 ? "1 bed without a place is" : `${setInRows} beds without a place are`;
  return [`${beds} set in rows, not your layout.`];
}

/** How many boards of each part of each bed come from boards kept. */
function keptParts(cuts: readonly DrawnBoard[]): ReadonlyMap<string, number> {
  const kept = new Map<string, number>();
  for (const board of cuts) {
    if (board.yard !== null) continue;
    for (const { bed, part } of board.pieces) {
      const key = `${bed}|${part}`;
      kept.set(key, (kept.get(key) ?? 0) + 1);
    }
  }
  return kept;
}

const marginPx = 26;
const footPx = 44;

function plan(given: Plan): Tree {
  const { units, width, beds } = given;
  if (beds.length === 0) {
    return picture("plan", { width, height: 24 }, given.alternative, [
      words("note", "No beds to draw.", { x: 0, y: 16 }),
    ]);
  }
  const longestM = Math.max(...beds.map((bed) => Math.min(bed.length.si, bed.width.si)));
  const { placed, setInRows } = bedPlaces(
    beds,
    Math.max((width - 2 * marginPx) / (width < 500 ? 31 : 45), longestM),
  );
  const x0 = Math.min(...placed.map(({ x }) => x));
  const y0 = Math.min(...placed.map(({ y }) => y));
  const wideM = Math.max(...placed.map(({ x, wide }) => x + wide)) - x0;
  const highM = Math.max(...placed.map(({ y, high }) => y + high)) - y0;
  const pxPerM = Math.min((width - 2 * marginPx) / wideM, 130);
  const ground = 2 * marginPx + highM * pxPerM;
  const at = (each: PlacedBed): Rect => ({
    x: marginPx + (each.x - x0) * pxPerM,
    y: marginPx + (each.y - y0) * pxPerM,
    wide: each.wide * pxPerM,
    high: each.high * pxPerM,
  });
  const rects = placed.map(at);
  const sketch: Sketch = { placed, rects, pxPerM, units, width };
  const names = bedNames(sketch);
  const square = squareFor(units, pxPerM);
  const legendItems = [
    swatch("board", "board"),
    ...(given.kept.size > 0 ? [swatch("kept", "board kept")] : []),
    swatch("soil", "soil"),
    plainItem(`squares ${tapeOrMetres(square, units)}`),
  ];
  const legend = flow(legendItems, { x: 0, y: ground + footPx, width }, { between: 18, line: 22 });
  const bar = scaleBar(marginPx, ground + 18, pxPerM, {
    units,
    most: width / 3,
  });
  return picture(
    "plan",
    { width, height: ground + footPx + legend.height - 10 },
    given.alternative,
    [
      box("ground", 0, 0, width, ground),
      squares(width, ground, { step: square.si * pxPerM, from: marginPx }),
      ...boardsAndSoil(sketch, given.kept),
      ...names.map(({ drawn }) => drawn),
      ...dimensions(sketch, [...rects, ...names.map(({ taken }) => taken)]),
      ...bar,
      ...(setInRows === placed.length
        ? []
        : [
            ...north(width - 16, ground + 4),
            words("note", "north", { x: width - 26, y: ground + 22, anchor: "end" }),
          ]),
      ...legend.parts,
    ],
  );
}

function squareFor(units: UnitSystem, pxPerM: number): Length {
  const sizes =
    units === "us"
      ? [2, 4, 10, 50].map((feet) => times(foot, feet))
      : [0.5, 1, 5, 20].map((metres) => times(metre, metres));
  return sizes.find((size) => size.si * pxPerM >= 9) ?? (sizes.at(-1) as Length);
}

function tapeOrMetres(length: Length, units: UnitSystem): string {
  return units === "us" ? tapeLength(length, "us") : `${length.si} m`;
}

function squares(width: number, high: number, grid: { step: number; from: number }): Tree {
  const { step, from } = grid;
  const first = from % step;
  const strokes: [number, number, number, number][] = [];
  for (let x = first; x < width; x += step) strokes.push([x, 0, x, high]);
  for (let y = first; y < high; y += step) strokes.push([0, y, width, y]);
  return lines("square", strokes);
}

function swatch(kind: string, text: string) {
  return {
    width: 30 + textWidth(text, 13.5),
    draw: (x: number, y: number) => [
      box(kind, x + 0.5, y - 11, 23, 12),
      words("note", text, { x: x + 30, y }),
    ],
  };
}

function plainItem(text: string) {
  return {
    width: textWidth(text, 13.5),
    draw: (x: number, y: number) => [words("note", text, { x, y })],
  };
}

function inWords(beds: readonly DrawnBed[], setInRows: number, units: UnitSystem): string {
  if (beds.length === 0) return "No beds to draw.";
  const sizes = new Map<string, number>();
  for (const bed of beds) {
    const size = `${tapeLength(bed.width, units)} by ${tapeLength(bed.length, units)}`;
    sizes.set(size, (sizes.get(size) ?? 0) + 1);
  }
  const listed = [...sizes].map(([size, count]) => `${count} of ${size}`).join(", ");
  const where =
    setInRows === beds.length
      ? "set in rows"
      : setInRows === 0
        ? "at their places"
        : `${setInRows} of them set in rows`;
  return `${beds.length} ${beds.length === 1 ? "bed" : "beds"} from above, ${where}: ${listed}.`;
}
