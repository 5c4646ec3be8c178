import type { Problem } from "../check/index.ts";
import {
  Checks,
  currencyCodes,
  foot,
  inch,
  type Length,
  money,
  over,
  type PricePerLength,
  times,
} from "../measure/index.ts";
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
  /** What is sawn off one end of every board to square it, 0 to 2 ft. Default: nothing. */
  readonly squaring: Length;
  /** Whether a piece longer than every board is joined over a stake. Default: no. */
  readonly splice: boolean;
  /** The shortest offcut that is worth anything, 0 to 100 ft. Default: undefined, none is. */
  readonly offcutsFrom: Length | undefined;
  /** What a length of such an offcut is worth. Default: undefined, nothing. */
  readonly offcutWorth: PricePerLength | undefined;
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
 * out of its range: kerf 0 to 1/2 in, shortfall 0 to 1 in, spareBoards 0 to 100, squaring 0 to 2 ft;
 * `missing` where offcuts have a worth and no length from which they have it
 * @rule kerf and shortfall 1/8 in, no spare boards, no squaring, no joints, offcuts worth nothing, beds for food
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
    squaring: nothing,
    splice: false,
    offcutsFrom: undefined,
    offcutWorth: undefined,
    food: true,
    timber: "treated",
    currency: "USD",
  };
  const choices = withDefaults(defaults, chosen);
  const { offcutsFrom, offcutWorth } = choices;
  const checks = new Checks();
  if (offcutsFrom !== undefined) {
    checks.quantity(offcutsFrom, "length", ["offcutsFrom"], {
      min: nothing,
      max: times(100, foot),
    });
  }
  if (offcutWorth !== undefined) {
    checks
      .quantity(offcutWorth, "price per length", ["offcutWorth"], {
        min: over(money(0), foot),
        max: over(money(1000), foot),
      })
      .unless(offcutsFrom !== undefined, noLeastOffcut);
  }
  checks
    .quantity(choices.kerf, "length", ["kerf"], { min: nothing, max: over(inch, 2) })
    .quantity(choices.shortfall, "length", ["shortfall"], { min: nothing, max: inch })
    .count(choices.spareBoards, ["spareBoards"], { max: 100 })
    .quantity(choices.squaring, "length", ["squaring"], { min: nothing, max: times(2, foot) })
    .choice(choices.splice, [true, false], ["splice"])
    .choice(choices.food, [true, false], ["food"])
    .text(choices.timber, ["timber"])
    .choice(choices.currency, currencyCodes, ["currency"])
    .done();
  return choices;
}

const noLeastOffcut: Problem = {
  code: "missing",
  path: ["offcutsFrom"],
  allowed: "a length from which offcuts are worth something",
  received: "",
  remedy: "Say from what length on offcuts are kept, or give them no worth.",
};
