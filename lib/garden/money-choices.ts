import {
  Checks,
  currencyCodes,
  type Density,
  foot,
  kilogram,
  type Length,
  type Mass,
  times,
} from "../measure/index.ts";
import { listed, named } from "../measure/shape.ts";
import { checkWoodDensity } from "./checks.ts";
import { withDefaults } from "./with-defaults.ts";

/** How things are bought and fetched. */
export interface MoneyChoices {
  /** Whether prices have the tax in them, as is usual with euros. Default: no. */
  readonly taxIncluded: boolean;
  /** Currency of a garden in which no sign is written. Default: USD. */
  readonly currency: string;
  /** The main yard, or `cheapest`. Default: `cheapest`. */
  readonly yard: string;
  /** Whether the car takes loose goods, as with a trailer; else the yard brings them. Default: no. */
  readonly carriesBulk: boolean;
  /** What the car carries in one trip. Default: undefined, everything. */
  readonly carPayload: Mass | undefined;
  /** The longest board the car carries, 1 to 100 ft. Default: undefined, any. */
  readonly loadLength: Length | undefined;
  /** Whether the yard cuts a longer one in two, so that the car carries it. Default: no. */
  readonly cutAtYard: boolean;
  /** Names of yards where nothing is bought. Default: none. */
  readonly without: readonly string[];
  /** What boards weigh as they are bought. Default: undefined, not counted against the car. */
  readonly woodDensity: Density | undefined;
}

/**
 * The choices of buying, complete.
 *
 * @param chosen any of the fields; a field that is there wins
 * @throws ProblemError with path [field] for every field that is unknown, of another kind or
 * out of its range: carPayload 1 kg to 100 t, loadLength 1 to 100 ft, woodDensity 50 to 2000 kg/m3
 * @rule prices before tax, the cheapest yard, loose goods brought, one trip a yard, boards of any length
 * @source common practice
 * @example
 * moneyChoices().yard // => "cheapest"
 */
export function moneyChoices(chosen: Partial<MoneyChoices> = {}): MoneyChoices {
  const defaults: MoneyChoices = {
    taxIncluded: false,
    currency: "USD",
    yard: "cheapest",
    carriesBulk: false,
    carPayload: undefined,
    loadLength: undefined,
    cutAtYard: false,
    without: [],
    woodDensity: undefined,
  };
  const choices = withDefaults(defaults, chosen);
  const { carPayload, woodDensity } = choices;
  const checks = new Checks()
    .choice(choices.cutAtYard, [true, false], ["cutAtYard"])
    .choice(choices.taxIncluded, [true, false], ["taxIncluded"])
    .choice(choices.currency, currencyCodes, ["currency"])
    .text(choices.yard, ["yard"])
    .choice(choices.carriesBulk, [true, false], ["carriesBulk"]);
  if (carPayload !== undefined) {
    const bounds = { min: kilogram, max: times(100_000, kilogram) };
    checks.quantity(carPayload, "mass", ["carPayload"], bounds);
  }
  if (choices.loadLength !== undefined) {
    const bounds = { min: foot, max: times(100, foot) };
    checks.quantity(choices.loadLength, "length", ["loadLength"], bounds);
  }
  listed(named)(checks, choices.without, ["without"]);
  checkWoodDensity(checks, woodDensity, ["woodDensity"]);
  checks.done();
  return choices;
}
