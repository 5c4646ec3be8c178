export { minus, over, plus, remainder, times } from "./arithmetic.ts";
export type { Bounds } from "./bounds.ts";
export { type CalendarDate, dateBefore, isCalendarDate } from "./calendar.ts";
export { Checks } from "./checks.ts";
export { atLeast, atMost, less, more, same } from "./compare.ts";
export { currencyCodes, isCurrencyCode, minorDigits } from "./currency.ts";
export {
  addDays,
  type DateOptions,
  daysBetween,
  isoDate,
  printDate,
  readDate,
  yearsBetween,
} from "./dates.ts";
export type {
  AreaDimension,
  DensityDimension,
  Dimension,
  Inverse,
  LengthDimension,
  MassDimension,
  MoneyDimension,
  NoDimension,
  PricePerAreaDimension,
  PricePerLengthDimension,
  PricePerMassDimension,
  PricePerVolumeDimension,
  Product,
  TemperatureDimension,
  TimeDimension,
  VolumeDimension,
} from "./dimension.ts";
export {
  areaDimension,
  densityDimension,
  lengthDimension,
  massDimension,
  moneyDimension,
  temperatureDimension,
  timeDimension,
  volumeDimension,
} from "./dimensions.ts";
export {
  requireChoice,
  requireCount,
  requireMoney,
  requireNumber,
  requireQuantity,
  requireText,
} from "./guards.ts";
export { type MoneyJson, type QuantityJson, quantityJson, reviveQuantities } from "./json.ts";
export { dimensionName, type Kind, type KindTypes } from "./kinds.ts";
export { addMoney, money, roundMoney } from "./money.ts";
export { absolute, negative, power } from "./power.ts";
export type { PrintedParts, PrintOptions, UnitSystem } from "./print-options.ts";
export { printParts, printQuantity } from "./print-quantity.ts";
export { isRange, printRange } from "./print-range.ts";
export {
  type Area,
  type Density,
  type Duration,
  isQuantity,
  type Length,
  type Mass,
  type Money,
  type Named,
  type PricePerArea,
  type PricePerLength,
  type PricePerMass,
  type PricePerVolume,
  type Quantity,
  quantity,
  type Range,
  type TemperatureDifference,
  type Volume,
} from "./quantity.ts";
export {
  readArea,
  readDensity,
  readDuration,
  readLength,
  readMass,
  readMoney,
  readVolume,
} from "./read-kinds.ts";
export type { ReadOptions } from "./read-options.ts";
export {
  type ChoiceOptions,
  type PercentOptions,
  readChoice,
  readCount,
  readNumber,
  readPercent,
  readYesNo,
} from "./read-plain.ts";
export { readQuantity } from "./read-quantity.ts";
export { readUnit } from "./read-unit.ts";
export { amount, greatest, least, roundUpTo, sumOf, zeroOf } from "./sums.ts";
export {
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
  kilogramPerCubicMetre,
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
  poundPerCubicYard,
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
