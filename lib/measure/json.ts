import { minorDigits } from "./currency.ts";
import { fixedText } from "./decimal.ts";
import { dimensionInWords, kindOfDimension } from "./kinds.ts";
import type { UnitSystem } from "./print-options.ts";
import { printQuantity } from "./print-quantity.ts";
import { isQuantity, type Quantity, quantity } from "./quantity.ts";

/** A quantity for other programs: value in coherent SI, name of the dimension, printed text. */
export interface QuantityJson {
  readonly si: number;
  readonly dimension: string;
  readonly text: string;
}

/** Money for other programs: decimal text, and the ISO 4217 code or null. */
export interface MoneyJson {
  readonly amount: string;
  readonly currency: string | null;
}

/**
 * A quantity as JSON: `{ si, dimension, text }`; money as `{ amount, currency }`, the amount to the
 * minor unit.
 *
 * @throws ProblemError for what is no finite quantity (`missing`, `wrong-unit`, `unreadable`)
 * @rule the value in coherent SI beside its printed text
 * @source common practice
 * @example
 * quantityJson(cubicYard, "us") // => {"si":0.764554857984,"dimension":"volume","text":"1 cu yd"}
 */
export function quantityJson(q: Quantity, system: UnitSystem = "us"): QuantityJson | MoneyJson {
  const text = printQuantity(q, { system });
  if (kindOfDimension(q.dim) === "money") {
    const amount = fixedText(q.si, minorDigits(q.currency), { grouped: false });
    return { amount, currency: q.currency ?? null };
  }
  return { si: q.si, dimension: dimensionInWords(q.dim), text };
}

/**
 * A value out of structured cloning or JSON with its quantities made whole again, however deep:
 * a clone has lost what refuses quantities as bare numbers. Everything else is copied as it is.
 *
 * @rule records that are quantities are made anew
 * @source common practice
 * @example
 * reviveQuantities({ depth: { si: 0.3048, dim: [1, 0, 0, 0, 0] } }).depth // => 1 ft
 */
export function reviveQuantities<T>(value: T): T {
  return revived(value, new Map()) as T;
}

const plainField = { configurable: true, enumerable: true, writable: true };

function revived(value: unknown, seen: Map<object, unknown>): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (isQuantity(value) && Number.isFinite(value.si))
    return quantity(
      value.si,
      Object.freeze([...value.dim]) as unknown as Quantity["dim"],
      value.currency,
    );
  const known = seen.get(value);
  if (known !== undefined) return known;
  if (Array.isArray(value)) {
    const list: unknown[] = [];
    seen.set(value, list);
    for (const item of value) list.push(revived(item, seen));
    return list;
  }
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return value;
  const record: Record<string, unknown> = {};
  seen.set(value, record);
  for (const [key, item] of Object.entries(value)) {
    // Defined, not assigned: a key named __proto__ stays a key.
    const made = revived(item, seen);
    Object.defineProperty(record, key, { ...plainField, value: made });
  }
  return record;
}
