import { requireRecord } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  isQuantity,
  plus,
  printQuantity,
  type Quantity,
  type UnitSystem,
} from "../measure/index.ts";
import type { DrawingOptions } from "./board-drawing.ts";
import { textWidth } from "./labels.ts";
import { requireAmounts } from "./require-amounts.ts";
import { defaultWidths, requireDrawable } from "./require-drawable.ts";
import { box, type Drawing, lines, picture, type Tree, words } from "./tree.ts";

/** A named amount. */
export interface DrawnAmount {
  readonly name: string;
  /** All amounts of a drawing are of one kind, and of one currency. */
  readonly amount: Quantity;
}

/** How the bars are drawn. */
export interface BarsDrawingOptions extends DrawingOptions {
  /** What the bars show. Default: `Amounts`. */
  readonly title?: string;
}

/** More bars than this are not read one by one; the smallest are added up in one. */
const mostBars = 24;

/**
 * Amounts as bars, the largest first, each with its figure at its end: where money goes, what
 * weighs most. Bars begin at nothing, so that their lengths are to one another as the amounts are.
 *
 * @param amounts names with amounts of one kind, 0 or more
 * @param options `title`, default `Amounts`; `units` of the figures; `widths` it is drawn for, 200 to
 * 2,000 px
 * @returns a drawing in a form for each width; of more than 24 amounts the smallest as one
 * @throws ProblemError where an amount is negative, of another kind than the first (`wrong-unit`), or
 * in another currency (`mixed-currency`), or `units` or a width is not one of these
 * @rule Length of a bar = its amount / the largest amount.
 * @source common practice
 * @example
 * barsDrawing([{ name: "boards", amount: money(60, "USD") }, { name: "tax", amount: money(3, "USD") }]).alternative // => "boards $60.00; tax $3.00"
 */
export function barsDrawing(
  amounts: readonly DrawnAmount[],
  options: BarsDrawingOptions = {},
): Drawing {
  requireRecord(options, ["options"]);
  const { title = "Amounts", units = "us", widths = defaultWidths } = options;
  new Given().text(title, ["title"]).done();
  requireDrawable(units, widths);
  requireAmounts(amounts);
  const bars = shortened(amounts).map((bar) => ({ ...bar, figure: figureOf(bar.amount, units) }));
  const alternative = bars.map(({ name, figure }) => `${name} ${figure}`).join("; ");
  const said = alternative === "" ? "Nothing to show." : alternative;
  return {
    kind: "drawing",
    title,
    alternative: said,
    forms: widths.map((width, at) => ({
      from: at === 0 ? 0 : width,
      tree: sheet(bars, width, said),
    })),
  };
}

interface Bar extends DrawnAmount {
  readonly figure: string;
}

function figureOf(amount: Quantity, system: UnitSystem): string {
  return printQuantity(amount, { system, style: "typographic" });
}

/** The largest first; what is too many as one bar at the end. */
function shortened(amounts: readonly DrawnAmount[]): readonly DrawnAmount[] {
  const sorted = [...amounts].sort((a, b) => b.amount.si - a.amount.si);
  if (sorted.length <= mostBars) return sorted;
  const rest = sorted.slice(mostBars - 1);
  const sum = rest.reduce<Quantity | undefined>(
    (total, { amount }) => (total === undefined ? amount : (plus(total, amount) as Quantity)),
    undefined,
  );
  const last = isQuantity(sum) ? [{ name: `${rest.length} more`, amount: sum }] : [];
  return [...sorted.slice(0, mostBars - 1), ...last];
}

const textPx = 14;

function sheet(bars: readonly Bar[], width: number, alternative: string): Tree {
  if (bars.length === 0) {
    return picture("bars", { width, height: 24 }, alternative, [
      words("note", alternative, { x: 0, y: 16 }),
    ]);
  }
  const broad = width >= 500;
  const widest = (texts: readonly string[]) =>
    Math.max(...texts.map((text) => textWidth(text, textPx)));
  const left = broad ? Math.min(widest(bars.map(({ name }) => name)) + 16, width * 0.4) : 0;
  const right = widest(bars.map(({ figure }) => figure)) + 14;
  const step = broad ? 26 : 42;
  const top = broad ? 4 : 18;
  const most = Math.max(...bars.map(({ amount }) => amount.si));
  const perUnit = most > 0 ? (width - left - right) / most : 0;
  const parts = bars.flatMap(({ name, amount, figure }, at): readonly Tree[] => {
    const y = top + at * step;
    const long = amount.si * perUnit;
    return [
      words("label", name, broad ? { x: 0, y: y + 13 } : { x: 0, y: y - 4 }),
      box("bar", left, y, long, 16),
      words("label strong", figure, { x: left + long + 6, y: y + 13 }),
    ];
  });
  const height = top + bars.length * step - (broad ? 6 : 22);
  const base = lines("dim", [[left, top - 3, left, height]]);
  return picture("bars", { width, height }, alternative, [...parts, base]);
}
