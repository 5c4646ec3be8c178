// A. Thompson and B. N. Taylor, "Guide for the Use of the International System of Units (SI)", NIST
// Special Publication 811, 2008, Appendix B.8 (from memory). Factors to the coherent SI unit.
import { describe, it } from "vitest";
import * as lib from "../../lib/index.ts";
import { published } from "./compare.ts";

const factors: readonly [unit: string, value: lib.Quantity, digits: string, power: number][] = [
  ["inch", lib.inch, "2.54", -2],
  ["foot", lib.foot, "3.048", -1],
  ["yard", lib.yard, "9.144", -1],
  ["mile", lib.mile, "1.609344", 3],
  ["square inch", lib.squareInch, "6.4516", -4],
  ["square foot", lib.squareFoot, "9.290304", -2],
  ["square yard", lib.squareYard, "8.361274", -1],
  ["cubic inch", lib.cubicInch, "1.638706", -5],
  ["cubic foot", lib.cubicFoot, "2.831685", -2],
  ["cubic yard", lib.cubicYard, "7.645549", -1],
  ["gallon (US)", lib.gallon, "3.785412", -3],
  ["fluid ounce (US)", lib.fluidOunce, "2.957353", -5],
  ["liter", lib.litre, "1.0", -3],
  ["pound (avoirdupois)", lib.pound, "4.535924", -1],
  ["ounce (avoirdupois)", lib.ounce, "2.834952", -2],
  ["ton, short", lib.shortTon, "9.071847", 2],
  ["ton, metric", lib.tonne, "1.0", 3],
  ["pound per cubic foot", lib.poundPerCubicFoot, "1.601846", 1],
  ["pound per cubic yard", lib.poundPerCubicYard, "5.932764", -1],
  ["hour", lib.hour, "3.6", 3],
  ["day", lib.day, "8.64", 4],
  ["year (365 days)", lib.year, "3.1536", 7],
];

describe("measure, NIST SP 811", () => {
  it.each(factors)("%s (from memory)", (_, value, digits, power) => {
    published(value.si / 10 ** power, digits);
  });
});
