import type { Area, Duration, Length, Mass, Money, Volume } from "../../lib/index.ts";
import type { Entry } from "../engine/types/index.ts";
import type { OrNone } from "./options.ts";
import { type QuantityEntryOptions, quantityEntry } from "./quantity-entry.ts";

// The options' type is captured as written, so that `orNone: true` puts null into the value's type.

/**
 * An entry for a length: `lengthEntry("1/8 in", { min: "0 in", max: "1/2 in", hint: "…" })`.
 *
 * @throws ProblemError where the default or a limit is no length, or an option is misspelt
 *
 * @example
 * lengthEntry("1/8 in", { max: "1/2 in" }).read("1/4 in").value // => 1/4 in
 */
export function lengthEntry<const O extends QuantityEntryOptions<Length> = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Length, O>> {
  return quantityEntry({ kind: "length", entry: "length", initial }, options);
}

/**
 * An entry for an area: `areaEntry("32 sq ft")`.
 *
 * @throws ProblemError where the default or a limit is no area, or an option is misspelt
 *
 * @example
 * areaEntry("32 sq ft").read("24 sq ft").value // => 24 sq ft
 */
export function areaEntry<const O extends QuantityEntryOptions<Area> = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Area, O>> {
  return quantityEntry({ kind: "area", entry: "area", initial }, options);
}

/**
 * An entry for a volume: `volumeEntry("2 cu ft", { max: "10 cu yd" })`.
 *
 * @throws ProblemError where the default or a limit is no volume, or an option is misspelt
 *
 * @example
 * volumeEntry("2 cu ft", { max: "10 cu yd" }).limits // => "at most 10 cu yd"
 */
export function volumeEntry<const O extends QuantityEntryOptions<Volume> = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Volume, O>> {
  return quantityEntry({ kind: "volume", entry: "volume", initial }, options);
}

/**
 * An entry for a mass: `massEntry("1000 lb")`.
 *
 * @throws ProblemError where the default or a limit is no mass, or an option is misspelt
 *
 * @example
 * massEntry("1000 lb").read("900 lb").value // => 900 lb
 */
export function massEntry<const O extends QuantityEntryOptions<Mass> = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Mass, O>> {
  return quantityEntry({ kind: "mass", entry: "mass", initial }, options);
}

/**
 * An entry for a time: `durationEntry("2 h")`.
 *
 * @throws ProblemError where the default or a limit is no duration, or an option is misspelt
 *
 * @example
 * durationEntry("2 h").read("3 h").value // => 3 h
 */
export function durationEntry<const O extends QuantityEntryOptions<Duration> = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Duration, O>> {
  return quantityEntry({ kind: "duration", entry: "text", initial }, options);
}

/**
 * An entry for money: `moneyEntry("6.00")`. Without a sign it takes the garden's currency.
 *
 * @throws ProblemError where the default or a limit is no money, or an option is misspelt
 *
 * @example
 * moneyEntry("6.00").read("$7.50").value // => $7.50
 */
export function moneyEntry<const O extends QuantityEntryOptions<Money> = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Money, O>> {
  return quantityEntry({ kind: "money", entry: "money", initial }, options);
}
