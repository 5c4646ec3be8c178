import {
  Checks,
  currencyCodes,
  type Density,
  kilogram,
  type Mass,
  times,
} from "../measure/index.ts";
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
  /** What boards weigh as they are bought. Default: undefined, not counted against the car. */
  readonly woodDensity: Density | undefined;
}

/**
 * The choices of buying, complete.
 *
 * @param chosen any of the fields; a field that is there wins
 * @throws ProblemError with path [field] for every field that is unknown, of another kind or
 * out of its range: carPayload 1 kg to 100 t, woodDensity 50 to 2000 kg/m3
 * @rule prices before tax, the cheapest yard, loose goods brought, one trip a yard
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
    woodDensity: undefined,
  };
  const choices = withDefaults(defaults, chosen);
  const { carPayload, woodDensity } = choices;
  const checks = new Checks()
    .choice(choices.taxIncluded, [true, false], ["taxIncluded"])
    .choice(choices.currency, currencyCodes, ["currency"])
    .text(choices.yard, ["yard"])
    .choice(choices.carriesBulk, [true, false], ["carriesBulk"]);
  if (carPayload !== undefined) {
    const bounds = { min: kilogram, max: times(100_000, kilogram) };
    checks.quantity(carPayload, "mass", ["carPayload"], bounds);
  }
  checkWoodDensity(checks, woodDensity, ["woodDensity"]);
  checks.done();
  return choices;
}
