import type { Problem, Reading } from "../check/index.ts";
import type { PriceForm, PriceLine } from "../cost/index.ts";
import { readBoardItem } from "../lumber/index.ts";
import { cubicYard, foot, type Money, times } from "../measure/index.ts";
import type { TableText } from "../table/index.ts";
import { headingOf } from "./heading-of.ts";
import type { WrittenSize } from "./read-size.ts";
import { amountInSizes, type WrittenAmount } from "./written-amount.ts";

/** A row of a price list, read field by field. */
export interface WrittenPrice {
  readonly row: number;
  readonly yard: string;
  readonly item: string;
  readonly size: WrittenSize;
  readonly price: Money;
  readonly form: PriceForm | undefined;
  readonly limit: WrittenAmount | undefined;
  readonly from: WrittenAmount | undefined;
  readonly step: WrittenAmount | undefined;
}

type Own =
  | Omit<Extract<PriceLine, { kind: "board" }>, keyof Terms>
  | Omit<Extract<PriceLine, { kind: "goods" }>, keyof Terms>
  | Omit<Extract<PriceLine, { kind: "sheet" }>, keyof Terms>
  | Omit<Extract<PriceLine, { kind: "kit" }>, keyof Terms>;
type Terms = Pick<
  Extract<PriceLine, { kind: "goods" }>,
  "row" | "yard" | "item" | "price" | "form" | "limit" | "from" | "step"
>;

/** Puts the fields together: what kind of line it is, and whether they agree. */
export function priceLine(
  written: WrittenPrice,
  table: TableText,
): Reading<PriceLine & { readonly row: number }> {
  const own = ownPart(written, table);
  if (!own.ok) return own;
  const form = written.form ?? usualForm(own.value);
  const misfit = formProblem(own.value, form, { written, table });
  if (misfit !== undefined) return { ok: false, problem: misfit };
  const size = own.value.kind === "goods" ? own.value.size : own.value.kind;
  const amounts: { limit?: number; from?: number; step?: number } = {};
  for (const name of ["limit", "from", "step"] as const) {
    const field = written[name];
    if (field === undefined) continue;
    const reading = amountInSizes(field, size);
    if (!reading.ok) return reading;
    amounts[name] = reading.value;
  }
  const { row, yard, item, price } = written;
  const { limit, from = 0, step = 1 } = amounts;
  return { ok: true, value: { ...own.value, row, yard, item, price, form, limit, from, step } };
}

function ownPart(written: WrittenPrice, table: TableText): Reading<Own> {
  const { item, size, form, row } = written;
  if (size.kind === "sides") {
    const [length, width, height] = size.sides;
    if (length === undefined || width === undefined) throw new Error("sides are two or three");
    if (height !== undefined)
      return { ok: true, value: { kind: "kit", sides: size.text, length, width, height } };
    const [wide, long] = length.si < width.si ? [length, width] : [width, length];
    return { ok: true, value: { kind: "sheet", sides: size.text, length: long, width: wide } };
  }
  const path = [table.name, row, headingOf(table, "item")];
  const board = readBoardItem(item, { path });
  const length = size.size.kind === "length" ? size.size.length : undefined;
  if (form === "board" && !board.ok) return board;
  if (!board.ok || (length === undefined && form !== "board")) {
    return { ok: true, value: { kind: "goods", size: size.size } };
  }
  const { section, timber } = board.value;
  if (length !== undefined && length.si >= foot.si / 2 && length.si <= 60 * foot.si) {
    return { ok: true, value: { kind: "board", section, timber, length } };
  }
  const problem = disagreement(written, table, {
    column: "size",
    code: length === undefined ? "wrong-unit" : length.si > foot.si ? "too-large" : "too-small",
    allowed: "the length of a board, from 6 in to 60 ft",
    received: "",
    remedy: "Write the length of one board, as 8 ft or 2.4 m.",
  });
  return { ok: false, problem };
}

function usualForm(own: Own): PriceForm {
  if (own.kind === "board") return "board";
  if (own.kind === "kit") return "kit";
  if (own.kind === "sheet") return "roll";
  if (own.size.kind === "length") return "roll";
  if (own.size.kind !== "volume") return own.size.kind === "mass" ? "bag" : "pack";
  return own.size.volume.si >= times(cubicYard, 0.25).si - 1e-9 ? "bulk" : "bag";
}

const fitting: Readonly<Record<Own["kind"], readonly PriceForm[]>> = {
  board: ["board"],
  goods: ["bag", "bulk", "pack", "roll"],
  sheet: ["roll", "pack"],
  kit: ["kit"],
};

function formProblem(
  own: Own,
  form: PriceForm,
  { written, table }: { readonly written: WrittenPrice; readonly table: TableText },
): Problem | undefined {
  if (fitting[own.kind].includes(form)) return undefined;
  const kinds = {
    board: "a board",
    goods: "something sold by volume, mass, count or length",
    sheet: "a sheet",
    kit: "a kit",
  };
  return disagreement(written, table, {
    column: "form",
    code: "contradiction",
    allowed: `${fitting[own.kind].join(", ")} for ${kinds[own.kind]}`,
    received: form,
    remedy: "Make item, size and form agree: boards have a length, sheets two sides, kits three.",
  });
}

function disagreement(
  written: WrittenPrice,
  table: TableText,
  found: Pick<Problem, "code" | "allowed" | "received" | "remedy"> & { readonly column: string },
): Problem {
  const { column, ...rest } = found;
  const heading = headingOf(table, column);
  const raw = table.rows[written.row - 1]?.[table.columns.indexOf(heading)] ?? "";
  return {
    ...rest,
    received: rest.received === "" ? raw : rest.received,
    path: [table.name, written.row, heading],
  };
}
