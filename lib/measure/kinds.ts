import { type ProblemCode, ProblemError } from "../check/index.ts";
import type { Dimension } from "./dimension.ts";
import {
  areaDimension,
  densityDimension,
  lengthDimension,
  massDimension,
  moneyDimension,
  noDimension,
  pricePerAreaDimension,
  pricePerLengthDimension,
  pricePerMassDimension,
  pricePerVolumeDimension,
  sameDimension,
  temperatureDimension,
  timeDimension,
  volumeDimension,
} from "./dimensions.ts";
import type {
  Area,
  Density,
  Duration,
  Length,
  Mass,
  Money,
  PricePerArea,
  PricePerLength,
  PricePerMass,
  PricePerVolume,
  Quantity,
  TemperatureDifference,
  Volume,
} from "./quantity.ts";
import { isQuantity } from "./quantity.ts";
import { rawText } from "./raw-text.ts";

/** The kinds of quantity that have a name, and the type of each. */
export interface KindTypes {
  length: Length;
  area: Area;
  volume: Volume;
  mass: Mass;
  duration: Duration;
  money: Money;
  temperature: TemperatureDifference;
  density: Density;
  "price per length": PricePerLength;
  "price per area": PricePerArea;
  "price per volume": PricePerVolume;
  "price per mass": PricePerMass;
}

/** The name of a kind of quantity, as in "a length". */
export type Kind = keyof KindTypes;

/** The dimension of each kind. */
export const kindDimensions: Readonly<Record<Kind, Dimension>> = Object.freeze({
  length: lengthDimension,
  area: areaDimension,
  volume: volumeDimension,
  mass: massDimension,
  duration: timeDimension,
  money: moneyDimension,
  temperature: temperatureDimension,
  density: densityDimension,
  "price per length": pricePerLengthDimension,
  "price per area": pricePerAreaDimension,
  "price per volume": pricePerVolumeDimension,
  "price per mass": pricePerMassDimension,
});

const kinds = Object.keys(kindDimensions) as Kind[];

function refusal(code: ProblemCode, name: string, value: unknown, allowed: string): ProblemError {
  const received = rawText(value);
  return new ProblemError([{ code, path: [name], allowed, received, remedy: `Give ${allowed}.` }]);
}

/** Refuses what is the name of no kind. */
export function requireKind(kind: unknown): void {
  if (typeof kind === "string" && Object.hasOwn(kindDimensions, kind)) return;
  const isNothing = kind === undefined || kind === null;
  const received = isNothing ? undefined : kind;
  throw refusal(isNothing ? "missing" : "unknown", "kind", received, `one of ${kinds.join(", ")}`);
}

/** The kind a dimension is, or undefined for one without a name. */
export function kindOfDimension(dim: Dimension): Kind | undefined {
  for (const kind of kinds) if (sameDimension(kindDimensions[kind], dim)) return kind;
  return undefined;
}

const baseNames = ["length", "mass", "time", "money", "temperature"] as const;

function factorsInWords(dim: Dimension, sign: 1 | -1): string {
  return dim
    .map((exponent, place) => ({ power: exponent * sign, name: baseNames[place] ?? "" }))
    .filter(({ power }) => power > 0)
    .map(({ power, name }) => (power === 1 ? name : `${name}^${power}`))
    .join(" times ");
}

/** A dimension in words: "volume", "price per volume"; "length per time" where it has no name. */
export function dimensionInWords(dim: Dimension): string {
  const kind = kindOfDimension(dim);
  if (kind !== undefined) return kind;
  if (sameDimension(dim, noDimension)) return "number";
  const above = factorsInWords(dim, 1) || "one";
  const below = factorsInWords(dim, -1);
  return below === "" ? above : `${above} per ${below}`;
}

/**
 * The name of a quantity's dimension: one of `length`, `area`, `volume`, `mass`, `duration`,
 * `money`, `temperature`, `density`, `price per …`; composed, as `length per time`, for others.
 *
 * @throws ProblemError for what is no finite quantity (`missing`, `wrong-unit`, `unreadable`)
 * @rule the exponents of length, mass, time, money and temperature name the dimension
 * @source common practice
 * @example
 * dimensionName(cubicYard) // => "volume"
 */
export function dimensionName(q: Quantity): string {
  if (!isQuantity(q) || !Number.isFinite(q.si)) {
    const isNothing = q === undefined || q === null;
    const code = isNothing ? "missing" : typeof q === "number" ? "wrong-unit" : "unreadable";
    throw refusal(code, "quantity", isNothing ? undefined : q, "a quantity, as times(3, foot)");
  }
  return dimensionInWords(q.dim);
}

/** "a length", "an area", "money". */
export function withArticle(noun: string): string {
  if (noun.startsWith("money")) return noun;
  return `${/^[aeio]/.test(noun) ? "an" : "a"} ${noun}`;
}
