import { requireRecord } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import type { Quantity, UnitSystem } from "../measure/index.ts";
import { scaleFor } from "./axis.ts";
import { bandsSheet, type SheetSeries } from "./bands-sheet.ts";
import type { DrawingOptions } from "./board-drawing.ts";
import { type ReadSeries, readSeries } from "./read-series.ts";
import { defaultWidths, requireDrawable } from "./require-drawable.ts";
import type { Drawing } from "./tree.ts";
import { valueAt } from "./value-at.ts";

/** A place of a line: how far along, and the value there, alone or with its range. */
export interface DrawnPoint {
  readonly at: number;
  readonly value: Quantity | number | DrawnRange;
}

/** A value with its range. */
export interface DrawnRange {
  readonly low: Quantity | number;
  readonly likely: Quantity | number;
  readonly high: Quantity | number;
}

/** A line with its name, and its band where its values are ranges. */
export interface DrawnSeries {
  readonly name: string;
  /** Two or more, from the left; all values of a drawing of one kind and one currency. */
  readonly points: readonly DrawnPoint[];
  /** `step` where a value holds up to the next place. Default `line`. */
  readonly shape?: "line" | "step";
}

/** A level drawn straight across. */
export interface DrawnLevel {
  readonly name: string;
  readonly value: Quantity | number;
}

/** How the lines are drawn. */
export interface BandsDrawingOptions extends DrawingOptions {
  /** What the lines show. Default: `Over the years`. */
  readonly title?: string;
  /** What is counted along: the word after its figures. Default: `years`. */
  readonly across?: string;
  /** Levels to hold the lines against. Default: none. */
  readonly levels?: readonly DrawnLevel[];
  /** A place marked with the values there. Default: none. */
  readonly marked?: number;
  /** Plain numbers are shares, printed per cent. Default: no. */
  readonly percent?: boolean;
}

/**
 * Values over the years, or over anything that is counted along: lines, each with the band of its
 * range. The axis begins at nothing, so that heights are to one another as the values are.
 *
 * @param series one to six lines: `name`; `points`, each `at` a number and a `value`, a quantity, a
 * number or a range `low`, `likely`, `high` of them; `shape`, `line` or `step`
 * @param options `title`; `across`, default `years`; `levels` straight across; a place `marked`;
 * `percent` for shares; `units` of the figures; `widths` it is drawn for, 200 to 2,000 px
 * @returns a drawing in a form for each width
 * @throws ProblemError where a line has fewer than two points or they go back, a value is no number
 * or of another kind than the first (`wrong-unit`), or in another currency (`mixed-currency`), or an
 * option is of another kind or out of range
 * @rule height of a place = its value / the greatest value of the axis
 * @source common practice
 * @example
 * const depth = [9, 8, 7.5].map((inches, at) => ({ at, value: times(inches, inch) }));
 * bandsDrawing([{ name: "soil", points: depth }], { title: "Depth" }).alternative // => "soil: 9″ at 0 years, 7 1⁄2″ at 2 years."
 */
export function bandsDrawing(
  series: readonly DrawnSeries[],
  options: BandsDrawingOptions = {},
): Drawing {
  requireRecord(options, ["options"]);
  const {
    units = "us",
    widths = defaultWidths,
    title = "Over the years",
    across = "years",
  } = options;
  const { levels = [], percent = false, marked } = options;
  requireDrawable(units, widths);
  const given = new Given();
  given.text(title, ["title"]).text(across, ["across"]).choice(percent, [true, false], ["percent"]);
  if (marked !== undefined) given.number(marked, ["marked"], { min: -1e9, max: 1e9 });
  const read = readSeries(given, series, levels);
  given.done();

  const scale = scaleFor(read.like, { most: read.most, units, percent });
  const drawn: readonly SheetSeries[] = read.series;
  const alternative = inWords(read, { across, marked, units, print: (si) => scale.print(si) });
  const sheet = { series: drawn, levels: read.levels, least: read.least, most: read.most, scale };
  return {
    kind: "drawing",
    title,
    alternative,
    forms: widths.map((width, at) => ({
      from: at === 0 ? 0 : width,
      tree: bandsSheet({ ...sheet, across, marked, alternative }, width),
    })),
  };
}

interface Words {
  readonly across: string;
  readonly marked: number | undefined;
  readonly units: UnitSystem;
  print(si: number): string;
}

/** Each line's ends, and its value where a place is marked. */
function inWords({ series, levels }: ReadSeries, { across, marked, print }: Words): string {
  const value = ({ low, likely, high }: SheetSeries["points"][number]): string =>
    low === high ? print(likely) : `${print(likely)} (${print(low)} to ${print(high)})`;
  const lines = series.map((one) => {
    const { name, points } = one;
    const there = marked === undefined ? undefined : valueAt(one, marked);
    const ends = [points[0], there, points.at(-1)];
    const told = ends.flatMap((point) =>
      point ? [`${value(point)} at ${Number(point.at.toPrecision(4))} ${across}`] : [],
    );
    return `${name}: ${[...new Set(told)].join(", ")}`;
  });
  const straight = levels.map((level) => `${level.name} ${print(level.value)}`);
  return `${[...lines, ...straight].join("; ")}.`;
}
