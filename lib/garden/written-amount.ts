import type { Reading } from "../check/index.ts";
import type { GoodsSize, PriceLine } from "../cost/index.ts";
import { readLength, readMass, readNumber, readVolume } from "../measure/index.ts";
import type { CellPlace, CellReader } from "../table/index.ts";
import { isBareNumber, withHeadingUnit } from "./bare-number.ts";

/** What stands in `limit`, `from` or `step`: a number of sizes, or a quantity of the size's kind. */
export type WrittenAmount =
  | { readonly kind: "sizes"; readonly sizes: number; readonly place: CellPlace }
  | { readonly kind: "quantity"; readonly text: string; readonly place: CellPlace };

const most = 1_000_000;

/** Reads the field as far as it can be read without knowing the size. */
export function writtenAmount(column: "limit" | "from" | "step"): CellReader<WrittenAmount> {
  return (text, place) => {
    const bounds = column === "step" ? { above: 0, max: most } : { min: 0, max: most };
    const isBare = isBareNumber(text) && place.unit === undefined;
    if (isBare || !/\d/.test(text)) {
      const number = readNumber(text, { path: place.path, decimal: place.decimal, ...bounds });
      if (!number.ok) return number;
      return { ok: true, value: { kind: "sizes", sizes: number.value, place } };
    }
    return { ok: true, value: { kind: "quantity", text, place } };
  };
}

/** The amount as a number of sizes. */
export function amountInSizes(
  written: WrittenAmount,
  size: GoodsSize | PriceLine["kind"],
): Reading<number> {
  if (written.kind === "sizes") return { ok: true, value: written.sizes };
  const { text, place } = written;
  const ofSize = typeof size === "string" ? undefined : sizeQuantity(size);
  if (ofSize === undefined) {
    const problem = {
      code: "wrong-unit",
      path: place.path,
      allowed: "a number without a unit",
      received: text,
      remedy: "Write how many, as 20.",
    } as const;
    return { ok: false, problem };
  }
  const { path, decimal } = place;
  const reading = ofSize.read(withHeadingUnit(text, place), { path, decimal });
  if (!reading.ok) return reading;
  // 3 cu yd of 1 cu yd are three, whatever binary fractions make of them.
  if (reading.value.si > 0) {
    return { ok: true, value: Number((reading.value.si / ofSize.si).toPrecision(12)) };
  }
  const problem = {
    code: "too-small",
    path: place.path,
    allowed: "more than nothing",
    received: text,
    remedy: "Leave the field blank where it does not matter.",
  } as const;
  return { ok: false, problem };
}

function sizeQuantity(size: GoodsSize) {
  if (size.kind === "volume") return { si: size.volume.si, read: readVolume };
  if (size.kind === "mass") return { si: size.mass.si, read: readMass };
  return size.kind === "length" ? { si: size.length.si, read: readLength } : undefined;
}
