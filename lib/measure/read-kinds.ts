import type { Reading } from "../check/index.ts";
import type { Area, Density, Duration, Length, Mass, Money, Volume } from "./quantity.ts";
import type { ReadOptions } from "./read-options.ts";
import { readQuantity } from "./read-quantity.ts";

/**
 * Reads a length: "8 ft", `8' 3 1/2"`, "99.5 in", "2.4 m", "240 cm". A bare number takes `unit`,
 * or is refused.
 *
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readLength("240 cm") // => {"ok":true,"value":"7 ft 10 1/2 in"}
 */
export function readLength(text: string, options: ReadOptions<Length> = {}): Reading<Length> {
  return readQuantity(text, "length", options);
}

/**
 * Reads an area: "32 sq ft", "3 m²", "144 in2".
 *
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readArea("3 m²") // => {"ok":true,"value":"32.3 sq ft"}
 */
export function readArea(text: string, options: ReadOptions<Area> = {}): Reading<Area> {
  return readQuantity(text, "area", options);
}

/**
 * Reads a volume: "2 cu ft", "1 yd3", "1 cu yd", "60 L", "3 ft³", "5 gal" (US gallons).
 *
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readVolume("60 L") // => {"ok":true,"value":"2.12 cu ft"}
 */
export function readVolume(text: string, options: ReadOptions<Volume> = {}): Reading<Volume> {
  return readQuantity(text, "volume", options);
}

/**
 * Reads a mass: "40 lb", "5 lb 4 oz", "18 kg", "1 t". A bare "ton" is refused: there are three.
 *
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readMass("18 kg") // => {"ok":true,"value":"39.7 lb"}
 */
export function readMass(text: string, options: ReadOptions<Mass> = {}): Reading<Mass> {
  return readQuantity(text, "mass", options);
}

/**
 * Reads money: "$23.50", "€12", "12.50 CHF", "USD 12", or "23.50" without a currency, which then
 * takes that of `unit` ("$", "EUR"), or else of what it is added to.
 *
 * @rule the number with its currency
 * @source iso-4217
 * @example
 * readMoney("$23.50") // => {"ok":true,"value":"$23.50"}
 */
export function readMoney(text: string, options: ReadOptions<Money> = {}): Reading<Money> {
  return readQuantity(text, "money", options);
}

/**
 * Reads a duration: "90 min", "1 h 30 min", "3 days", "15 years" (of 365 days). Months are
 * refused: they differ.
 *
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readDuration("90 min") // => {"ok":true,"value":"1.5 h"}
 */
export function readDuration(text: string, options: ReadOptions<Duration> = {}): Reading<Duration> {
  return readQuantity(text, "duration", options);
}

/**
 * Reads a density: "40 lb/cu ft", "1,100 lb/yd3", "640 kg/m³".
 *
 * @rule the number times the exact value of its unit
 * @source nist-sp-811
 * @example
 * readDensity("640 kg/m³") // => {"ok":true,"value":"40 lb/cu ft"}
 */
export function readDensity(text: string, options: ReadOptions<Density> = {}): Reading<Density> {
  return readQuantity(text, "density", options);
}
