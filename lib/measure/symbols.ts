import { areaDimension, temperatureDimension, volumeDimension } from "./dimensions.ts";
import { type Quantity, quantity } from "./quantity.ts";
import {
  centimetre,
  cubicFoot,
  cubicInch,
  cubicMetre,
  cubicYard,
  day,
  fluidOunce,
  foot,
  gallon,
  gram,
  hour,
  inch,
  kilogram,
  kilometre,
  litre,
  metre,
  mile,
  millilitre,
  millimetre,
  minute,
  ounce,
  pound,
  poundPerCubicFoot,
  second,
  shortTon,
  squareCentimetre,
  squareFoot,
  squareInch,
  squareMetre,
  squareYard,
  tonne,
  week,
  yard,
  year,
} from "./units.ts";

/**
 * The names people write for units. The first of each row is how it is printed; all are accepted
 * when reading, in capitals too where that is not another unit.
 */
const rows: readonly (readonly [Quantity, string])[] = [
  [inch, `in|inch|inches|"|″|in.`],
  [foot, `ft|foot|feet|'|′|ft.|lf|lin ft|linear ft|linear foot|linear feet`],
  [yard, "yd|yard|yards|yd."],
  [mile, "mi|mile|miles"],
  [millimetre, "mm|millimetre|millimetres|millimeter|millimeters"],
  [centimetre, "cm|centimetre|centimetres|centimeter|centimeters"],
  [metre, "m|metre|metres|meter|meters"],
  [kilometre, "km|kilometre|kilometres|kilometer|kilometers"],
  [squareInch, "sq in|in2|in²|square inch|square inches|sq. in."],
  [squareFoot, "sq ft|ft2|ft²|square foot|square feet|sf|sqft|sq. ft."],
  [squareYard, "sq yd|yd2|yd²|square yard|square yards|sq. yd."],
  [squareCentimetre, "cm²|cm2|square centimetre|square centimetres|square centimeters"],
  [squareMetre, "m²|m2|sq m|square metre|square metres|square meter|square meters|sqm"],
  [quantity(0.000001, areaDimension), "mm²|mm2|square millimetres|square millimeters"],
  [cubicInch, "cu in|in3|in³|cubic inch|cubic inches|cu. in."],
  [cubicFoot, "cu ft|ft3|ft³|cubic foot|cubic feet|cf|cft|cuft|cu. ft."],
  [cubicYard, "cu yd|yd3|yd³|cubic yard|cubic yards|cy|cuyd|cu. yd."],
  [gallon, "gal|gallon|gallons|US gal|US gallon|US gallons|gal."],
  [fluidOunce, "fl oz|fluid ounce|fluid ounces|fl. oz."],
  [millilitre, "mL|ml|millilitre|millilitres|milliliter|milliliters"],
  [litre, "L|l|litre|litres|liter|liters"],
  [quantity(0.000001, volumeDimension), "cm³|cm3|cubic centimetres|cubic centimeters"],
  [cubicMetre, "m³|m3|cu m|cubic metre|cubic metres|cubic meter|cubic meters|cbm"],
  [ounce, "oz|ounce|ounces|oz."],
  [pound, "lb|lbs|pound|pounds|lb.|lbs."],
  [shortTon, "short ton|short tons"],
  [gram, "g|gram|grams|gramme|grammes"],
  [kilogram, "kg|kilogram|kilograms|kilo|kilos"],
  [tonne, "t|tonne|tonnes|metric ton|metric tons"],
  [second, "s|second|seconds|sec"],
  [minute, "min|minute|minutes|mins"],
  [hour, "h|hour|hours|hr|hrs"],
  [day, "d|day|days"],
  [week, "wk|week|weeks|wks"],
  [year, "yr|year|years|yrs|a"],
  [quantity(1, temperatureDimension), "K|kelvin"],
  [poundPerCubicFoot, "pcf"],
];

const exact = new Map<string, Quantity>();
const folded = new Map<string, Quantity>();
for (const [unit, names] of rows) {
  for (const name of names.split("|")) {
    exact.set(name, unit);
    if (!folded.has(name.toLowerCase())) folded.set(name.toLowerCase(), unit);
  }
}

/** The unit of a symbol or name, in capitals too; undefined for one that is not known. */
export function unitOfSymbol(symbol: string): Quantity | undefined {
  const name = symbol.trim().replace(/\s+/g, " ");
  return exact.get(name) ?? folded.get(name.toLowerCase());
}
