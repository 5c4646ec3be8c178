import {
  areaDimension,
  densityDimension,
  lengthDimension,
  massDimension,
  timeDimension,
  volumeDimension,
} from "./dimensions.ts";
import {
  type Area,
  type Density,
  type Duration,
  type Length,
  type Mass,
  quantity,
  type Volume,
} from "./quantity.ts";

// Every constant is the unit's exact definition. The decimals of areas and volumes are written out:
// products of binary fractions would be off in the last place.

/** One metre. @source nist-sp-811 */
export const metre: Length = quantity(1, lengthDimension);
/** One centimetre, 0.01 m. @source nist-sp-811 */
export const centimetre: Length = quantity(0.01, lengthDimension);
/** One millimetre, 0.001 m. @source nist-sp-811 */
export const millimetre: Length = quantity(0.001, lengthDimension);
/** One inch, 2.54 cm exactly. @source nist-sp-811 */
export const inch: Length = quantity(0.0254, lengthDimension);
/** One foot, 0.3048 m exactly (the international foot). @source nist-sp-811 */
export const foot: Length = quantity(0.3048, lengthDimension);
/** One yard, 0.9144 m exactly. @source nist-sp-811 */
export const yard: Length = quantity(0.9144, lengthDimension);
/** One mile, 5,280 ft. @source nist-sp-811 */
export const mile: Length = quantity(1609.344, lengthDimension);
/** One kilometre, 1,000 m. @source nist-sp-811 */
export const kilometre: Length = quantity(1000, lengthDimension);

/** One square metre. @source nist-sp-811 */
export const squareMetre: Area = quantity(1, areaDimension);
/** One square centimetre, 0.0001 m². @source nist-sp-811 */
export const squareCentimetre: Area = quantity(0.0001, areaDimension);
/** One square inch, 6.4516 cm² exactly. @source nist-sp-811 */
export const squareInch: Area = quantity(0.00064516, areaDimension);
/** One square foot, 0.09290304 m² exactly. @source nist-sp-811 */
export const squareFoot: Area = quantity(0.09290304, areaDimension);
/** One square yard, 0.83612736 m² exactly. @source nist-sp-811 */
export const squareYard: Area = quantity(0.83612736, areaDimension);

/** One cubic metre. @source nist-sp-811 */
export const cubicMetre: Volume = quantity(1, volumeDimension);
/** One litre, 0.001 m³ exactly. @source nist-sp-811 */
export const litre: Volume = quantity(0.001, volumeDimension);
/** One millilitre, a cubic centimetre. @source nist-sp-811 */
export const millilitre: Volume = quantity(0.000001, volumeDimension);
/** One cubic inch, 16.387064 cm³ exactly. @source nist-sp-811 */
export const cubicInch: Volume = quantity(0.000016387064, volumeDimension);
/** One cubic foot, 1,728 in³: 28.316846592 L exactly. @source nist-sp-811 */
export const cubicFoot: Volume = quantity(0.028316846592, volumeDimension);
/** One cubic yard, 27 ft³: 0.764554857984 m³ exactly. @source nist-sp-811 */
export const cubicYard: Volume = quantity(0.764554857984, volumeDimension);
/** One US gallon, 231 in³: 3.785411784 L exactly. @source nist-sp-811 */
export const gallon: Volume = quantity(0.003785411784, volumeDimension);
/** One US fluid ounce, a 128th of the gallon: 29.5735295625 mL exactly. @source nist-sp-811 */
export const fluidOunce: Volume = quantity(0.0000295735295625, volumeDimension);

/** One kilogram. @source nist-sp-811 */
export const kilogram: Mass = quantity(1, massDimension);
/** One gram, 0.001 kg. @source nist-sp-811 */
export const gram: Mass = quantity(0.001, massDimension);
/** One tonne, 1,000 kg. @source nist-sp-811 */
export const tonne: Mass = quantity(1000, massDimension);
/** One pound (avoirdupois), 0.45359237 kg exactly. @source nist-sp-811 */
export const pound: Mass = quantity(0.45359237, massDimension);
/** One ounce (avoirdupois), a 16th of a pound: 28.349523125 g exactly. @source nist-sp-811 */
export const ounce: Mass = quantity(0.028349523125, massDimension);
/** One short ton, 2,000 lb: 907.18474 kg exactly. @source nist-sp-811 */
export const shortTon: Mass = quantity(907.18474, massDimension);

/** One second. @source nist-sp-811 */
export const second: Duration = quantity(1, timeDimension);
/** One minute, 60 s. @source nist-sp-811 */
export const minute: Duration = quantity(60, timeDimension);
/** One hour, 3,600 s. @source nist-sp-811 */
export const hour: Duration = quantity(3600, timeDimension);
/** One day, 24 h. @source nist-sp-811 */
export const day: Duration = quantity(86400, timeDimension);
/** One week, 7 days. @source nist-sp-811 */
export const week: Duration = quantity(604800, timeDimension);
/** One year of 365 days; between dates count with `yearsBetween`. @source nist-sp-811 */
export const year: Duration = quantity(31536000, timeDimension);

/** One kilogram per cubic metre. @source nist-sp-811 */
export const kilogramPerCubicMetre: Density = quantity(1, densityDimension);
/** One pound per cubic foot, about 16.01846 kg/m³. @source nist-sp-811 */
export const poundPerCubicFoot: Density = quantity(0.45359237 / 0.028316846592, densityDimension);
/** One pound per cubic yard, about 0.5932764 kg/m³. @source nist-sp-811 */
export const poundPerCubicYard: Density = quantity(0.45359237 / 0.764554857984, densityDimension);
