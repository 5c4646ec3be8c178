import { Checks, currencyCodes, inch, type Length, over } from "../measure/index.ts";
import { nothing } from "./table-cells.ts";
import { withDefaults } from "./with-defaults.ts";

/** How boards are cut and bought. */
export interface CuttingChoices {
  /** Width of the saw cut, 0 to 1/2 in. Default: 1/8 in. */
  readonly kerf: Length;
  /** How much a piece may be cut short where that saves a board, 0 to 1 in. Default: 1/8 in. */
  readonly shortfall: Length;
  /** Boards bought on top of each kind that is bought. Default: 0. */
  readonly spareBoards: number;
  /** Whether food is grown in the beds, so that old treated boards stay out. Default: yes. */
  readonly food: boolean;
  /** For pieces without a timber. Default: `treated`. */
  readonly timber: string;
  /** Currency of a garden in which no sign is written. Default: USD. */
  readonly currency: string;
}

/**
 * The choices of cutting, complete.
 *
 * @param chosen any of the fields; a field that is there wins, zero included
 * @throws ProblemError with path [field] for every field that is unknown, of another kind or
 * out of its range: kerf 0 to 1/2 in, shortfall 0 to 1 in, spareBoards 0 to 100
 * @rule kerf and shortfall 1/8 in, no spare boards, beds for food
 * @source common practice
 * @example
 * cuttingChoices().kerf // => 1/8 in
 */
export function cuttingChoices(chosen: Partial<CuttingChoices> = {}): CuttingChoices {
  const eighth = over(inch, 8);
  const defaults: CuttingChoices = {
    kerf: eighth,
    shortfall: eighth,
    spareBoards: 0,
    food: true,
    timber: "treated",
    currency: "USD",
  };
  const choices = withDefaults(defaults, chosen);
  new Checks()
    .quantity(choices.kerf, "length", ["kerf"], { min: nothing, max: over(inch, 2) })
    .quantity(choices.shortfall, "length", ["shortfall"], { min: nothing, max: inch })
    .count(choices.spareBoards, ["spareBoards"], { max: 100 })
    .choice(choices.food, [true, false], ["food"])
    .text(choices.timber, ["timber"])
    .choice(choices.currency, currencyCodes, ["currency"])
    .done();
  return choices;
}
