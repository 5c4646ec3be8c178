import { requireRecord } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import type { Quantity } from "../measure/index.ts";
import { type Axis, axisOver, type Scale, scaleFor } from "./axis.ts";
import type { DrawingOptions } from "./board-drawing.ts";
import { shortened, textWidth } from "./labels.ts";
import { requireAmounts } from "./require-amounts.ts";
import { defaultWidths, requireDrawable } from "./require-drawable.ts";
import { box, type Drawing, lines, picture, type Tree, words } from "./tree.ts";

/** A year with what falls into it. */
export interface YearColumn {
  /** As it stands under its column: "2026", or "3". */
  readonly year: string;
  /** Amounts of one kind, by name; a name that is left out is nothing. */
  readonly parts: readonly { readonly name: string; readonly amount: Quantity }[];
}

/** How the columns are drawn. */
export interface YearColumnsOptions extends DrawingOptions {
  /** What the columns show. Default: `Year by year`. */
  readonly title?: string;
}

const mostYears = 60;
const mostParts = 6;

/**
 * Amounts year by year as columns, each made up of its parts: what is bought, what is paid. Columns
 * begin at nothing; the parts lie in one order in all of them, from the one named first.
 *
 * @param years 1 to 60, each with its `parts`, amounts of one kind, together at most 6 names
 * @param options `title`, default `Year by year`; `units` of the figures; `widths` it is drawn for,
 * 200 to 2,000 px
 * @returns a drawing in a form for each width
 * @throws ProblemError where there is no year or too many, an amount is negative, of another kind
 * than the first (`wrong-unit`), or in another currency (`mixed-currency`)
 * @rule height of a part = its amount / the greatest year's
 * @source common practice
 * @example
 * const years = [1, 2].map((year) => ({ year: `${year}`, parts: [{ name: "compost", amount: times(year, cubicYard) }] }));
 * yearColumns(years, { title: "Compost" }).title // => "Compost"
 */
export function yearColumns(
  years: readonly YearColumn[],
  options: YearColumnsOptions = {},
): Drawing {
  requireRecord(options, ["options"]);
  const { title = "Year by year", units = "us", widths = defaultWidths } = options;
  new Given().text(title, ["title"]).done();
  requireDrawable(units, widths);
  requireYears(years);
  const names = [...new Set(years.flatMap(({ parts }) => parts.map(({ name }) => name)))];
  requireFew(names);
  const columns = years.map(({ year, parts }) => ({
    year,
    amounts: names.map((name) =>
      parts.reduce((sum, part) => sum + (part.name === name ? part.amount.si : 0), 0),
    ),
  }));
  const most = Math.max(...columns.map(({ amounts }) => total(amounts)));
  const like = years.flatMap(({ parts }) => parts.map(({ amount }) => amount))[0];
  const scale = scaleFor(like, { most, units, percent: false });
  const alternative = `${years
    .map(({ year, parts }) => {
      const told = parts.filter(({ amount }) => amount.si > 0);
      const list = told.map(({ name, amount }) => `${name} ${scale.print(amount.si)}`).join(", ");
      return `${year}: ${list === "" ? "nothing" : list}`;
    })
    .join("; ")}.`;
  return {
    kind: "drawing",
    title,
    alternative,
    forms: widths.map((width, at) => ({
      from: at === 0 ? 0 : width,
      tree: sheet({ columns, names, most, scale, alternative }, width),
    })),
  };
}

function requireYears(years: unknown): void {
  const given = new Given();
  const list = given.list(years, ["years"], 1);
  if (list.length > mostYears) tooMany(given, ["years"], list.length, mostYears);
  const parts = list.flatMap((one, at) => {
    const path = ["years", at + 1];
    const row = given.fields(one, path);
    given.text(row.year, [...path, "year"]);
    return given.list(row.parts, [...path, "parts"]);
  });
  given.done();
  requireAmounts(parts);
}

function requireFew(names: readonly string[]): void {
  const given = new Given();
  if (names.length > mostParts) tooMany(given, ["years"], names.length, mostParts);
  given.done();
}

function tooMany(given: Given, path: readonly string[], found: number, most: number): void {
  given.add({
    code: "too-large",
    path,
    allowed: `at most ${most}`,
    received: String(found),
    remedy: "Draw fewer, or add some of them up.",
  });
}

const total = (amounts: readonly number[]): number => amounts.reduce((sum, each) => sum + each, 0);

interface Columns {
  readonly columns: readonly { readonly year: string; readonly amounts: readonly number[] }[];
  readonly names: readonly string[];
  readonly most: number;
  readonly scale: Scale;
  readonly alternative: string;
}

const textPx = 14;
const lineHigh = 18;

function sheet(given: Columns, width: number): Tree {
  const { columns, names, most, scale, alternative } = given;
  const broad = width >= 500;
  const axis = axisOver([0, most], scale, broad ? 5 : 4);
  const left = Math.max(...axis.ticks.map(({ text }) => textWidth(text, textPx))) + 10;
  const keys = keyOf(names, width);
  const top = 20 + keys.high;
  const foot = top + (broad ? 200 : 160);
  const step = (width - left) / columns.length;
  const wide = Math.min(step * 0.72, 46);
  const y = (si: number): number => foot - (si / (axis.to || 1)) * (foot - top);
  const every = Math.ceil(
    (Math.max(...columns.map(({ year }) => textWidth(year, textPx))) + 8) / step,
  );
  const figures = columns.map(({ amounts }) => scale.print(total(amounts)));
  const fit = Math.max(...figures.map((text) => textWidth(text, textPx))) < step - 2;
  return picture("columns", { width, height: foot + 26 }, alternative, [
    ...keys.parts,
    ...grid(axis, { left, width, y }),
    ...columns.flatMap(({ year, amounts }, at): readonly Tree[] => {
      const middle = left + (at + 0.5) * step;
      const x = middle - wide / 2;
      // The last year's figure stays on the sheet.
      const under = Math.min(middle, width - textWidth(year, textPx) / 2);
      const label = words("note", year, { x: under, y: foot + 19, anchor: "middle" });
      const above = words("label strong halo", figures[at] ?? "", {
        x: middle,
        y: y(total(amounts)) - 5,
        anchor: "middle",
      });
      return [
        ...stacked(amounts, { x, wide, y }),
        ...(at % every === 0 ? [label] : []),
        ...(fit && total(amounts) > 0 ? [above] : []),
      ];
    }),
    lines("dim", [[left, foot, width, foot]]),
  ]);
}

/** Parts one upon the other, each with its outline so that they are told apart without colour. */
function stacked(
  amounts: readonly number[],
  { x, wide, y }: { readonly x: number; readonly wide: number; readonly y: (si: number) => number },
): readonly Tree[] {
  let below = 0;
  return amounts.flatMap((amount, part) => {
    const from = below;
    below += amount;
    if (amount <= 0) return [];
    return [box(`part of-${part + 1}`, x, y(below), wide, y(from) - y(below))];
  });
}

function grid(
  { ticks }: Axis,
  {
    left,
    width,
    y,
  }: { readonly left: number; readonly width: number; readonly y: (si: number) => number },
): readonly Tree[] {
  return [
    lines(
      "square",
      ticks.map(({ at }) => [left, y(at), width, y(at)]),
    ),
    ...ticks.map(({ at, text }) =>
      words("note", text, { x: left - 6, y: y(at) + 4.5, anchor: "end" }),
    ),
  ];
}

/** Names with their colours, in rows as wide as the sheet; none where there is one part. */
function keyOf(
  names: readonly string[],
  width: number,
): { readonly parts: readonly Tree[]; readonly high: number } {
  if (names.length < 2) return { parts: [], high: 0 };
  let [x, y] = [0, 6];
  const parts = names.flatMap((name, at): readonly Tree[] => {
    const wide = 18 + textWidth(name, textPx) + 18;
    if (x > 0 && x + wide > width) [x, y] = [0, y + lineHigh];
    const left = x;
    x += wide;
    return [
      box(`part of-${at + 1}`, left, y - 6, 12, 12),
      words("label", shortened(name, width - left - 18, textPx), { x: left + 18, y: y + 4.8 }),
    ];
  });
  return { parts, high: y + 12 };
}
