import type { BuyingOptions } from "../buying/index.ts";
import { requireRecord } from "../check/index.ts";
import { type CuttingChoices, cuttingChoices } from "./cutting-choices.ts";
import { type MoneyChoices, moneyChoices } from "./money-choices.ts";
import { withDefaults } from "./with-defaults.ts";

/** The choices of cutting and of buying in one. */
export type BuyingChoices = CuttingChoices & MoneyChoices;

/** What the planner needs besides the choices. */
export type GardenPlanning = Omit<BuyingOptions, "timber" | "improved">;

/** The choices of cutting and buying, and what the planner needs. */
export type GardenBuyingOptions = Partial<BuyingChoices> & GardenPlanning;

/** The choices, complete, apart from what the planner needs; a name that is none of theirs is refused. */
export function splitOptions(options: GardenBuyingOptions): {
  readonly choices: BuyingChoices;
  readonly planning: Omit<BuyingOptions, "improved">;
} {
  requireRecord(options, ["options"]);
  const { solve, seconds, progress, signal, remembered, pause, ...chosen } = options;
  const choices = completed(chosen);
  const planning = { seconds, progress, signal, remembered, pause };
  const given = Object.entries(planning).filter(([, value]) => value !== undefined);
  return { choices, planning: { solve, timber: choices.timber, ...Object.fromEntries(given) } };
}

function completed(chosen: Partial<BuyingChoices>): BuyingChoices {
  const [cutting, money] = [cuttingChoices(), moneyChoices()];
  const all = withDefaults({ ...cutting, ...money }, chosen);
  return { ...cuttingChoices(fieldsOf(all, cutting)), ...moneyChoices(fieldsOf(all, money)) };
}

/** Of a record, the fields that another has. */
function fieldsOf<T extends object>(all: Partial<T>, other: T): Partial<T> {
  const own = Object.entries(all).filter(([name]) => Object.hasOwn(other, name));
  return Object.fromEntries(own) as Partial<T>;
}
