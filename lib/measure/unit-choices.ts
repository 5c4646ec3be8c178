import type { Kind } from "./kinds.ts";
import type { UnitSystem } from "./print-options.ts";
import type { Quantity } from "./quantity.ts";
import {
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
  litre,
  metre,
  millilitre,
  millimetre,
  minute,
  ounce,
  pound,
  poundPerCubicFoot,
  second,
  squareCentimetre,
  squareFoot,
  squareInch,
  squareMetre,
  tonne,
  year,
} from "./units.ts";

/** A unit to print in, from the least size at which it is used. */
export interface UnitChoice {
  readonly symbol: string;
  /** The unit's value in SI. */
  readonly unitSi: number;
  readonly fromSi: number;
  /** Whether nothing at all is printed in this unit: "0 cu ft". */
  readonly home?: boolean;
  /** Decimals that are kept whatever the size, as millimetres of a metre. */
  readonly decimals?: number;
}

interface More {
  readonly decimals?: number;
  readonly home?: boolean;
}

function choice(unit: Quantity, symbol: string, from: number, more: More = {}): UnitChoice {
  return { symbol, unitSi: unit.si, fromSi: from * unit.si, ...more };
}

type Choices = readonly UnitChoice[];

const times: Choices = [
  choice(year, "years", 2),
  choice(day, "days", 10),
  choice(hour, "h", 1.5, { home: true }),
  choice(minute, "min", 1.5),
  choice(second, "s", 0),
];

const usLengths: Choices = [choice(foot, "ft", 100), choice(inch, "in", 0)];

// From large to small; the last has no least size. Cubic yards begin at one, where bulk begins.
const byKind: Readonly<Partial<Record<Kind, Readonly<Record<UnitSystem, Choices>>>>> = {
  length: {
    us: usLengths,
    metric: [
      choice(metre, "m", 100),
      choice(metre, "m", 1, { decimals: 3 }),
      choice(millimetre, "mm", 0),
    ],
  },
  area: {
    us: [choice(squareFoot, "sq ft", 1, { home: true }), choice(squareInch, "sq in", 0)],
    metric: [choice(squareMetre, "m²", 0.01, { home: true }), choice(squareCentimetre, "cm²", 0)],
  },
  volume: {
    us: [
      choice(cubicYard, "cu yd", 1),
      choice(cubicFoot, "cu ft", 0.1, { home: true }),
      choice(gallon, "gal", 0.05),
      choice(cubicInch, "cu in", 0),
    ],
    metric: [
      choice(cubicMetre, "m³", 1),
      choice(litre, "L", 0.1, { home: true }),
      choice(millilitre, "mL", 0),
    ],
  },
  mass: {
    us: [choice(pound, "lb", 1, { home: true }), choice(ounce, "oz", 0)],
    metric: [
      choice(tonne, "t", 10),
      choice(kilogram, "kg", 1, { home: true }),
      choice(gram, "g", 0),
    ],
  },
  duration: { us: times, metric: times },
  density: {
    us: [choice(poundPerCubicFoot, "lb/cu ft", 0)],
    metric: [choice(kilogramPerCubicMetre, "kg/m³", 0)],
  },
};

const liquids: Readonly<Record<UnitSystem, Choices>> = {
  us: [choice(gallon, "gal", 0.125, { home: true }), choice(fluidOunce, "fl oz", 0)],
  metric: [choice(litre, "L", 0.1, { home: true }), choice(millilitre, "mL", 0)],
};

/** The units a kind is printed in, large ones first; undefined where it has none. */
export function unitChoices(kind: Kind, system: UnitSystem, liquid: boolean): Choices | undefined {
  if (kind === "volume" && liquid) return liquids[system];
  return byKind[kind]?.[system];
}
