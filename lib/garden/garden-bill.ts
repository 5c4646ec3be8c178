import type { BuyingPlan, BuyingProof } from "../buying/index.ts";
import type { Caution, Problem, Remark } from "../check/index.ts";
import { type BedCost, type NotSold, shareReceipts, type YardReceipt } from "../cost/index.ts";
import type { BoardPlan } from "../lumber/index.ts";
import type { Money } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import type { Bed } from "./bed.ts";
import { requireBeds } from "./checks.ts";
import { heaviestLift } from "./heaviest-lift.ts";
import type { GardenBuying } from "./plan-garden-buying.ts";
import { gardenBuying } from "./shapes.ts";
import { unpricedCaution } from "./unpriced-caution.ts";

/** What everything costs, at which yards. */
export interface GardenBill {
  readonly receipts: readonly YardReceipt[];
  /** Of all that has a price. */
  readonly total: Money;
  /** What is needed and has no price. */
  readonly notSold: readonly NotSold[];
  readonly byBed: readonly BedCost[];
  /** How what is bought at each yard comes to the garden. */
  readonly ways: BuyingPlan["ways"];
  /** How sure it is that nothing cheaper can be had. */
  readonly proof: BuyingProof;
  /** The plan of the boards that are bought; null where there is none. */
  readonly boards: BoardPlan | null;
  /** Why there is no plan of boards, or why it leaves beds out; empty where it has all of them. */
  readonly boardProblems: readonly Problem[];
  /** Rows of the price list that could not be used. */
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
}

/**
 * The bill of what is bought: a receipt for each yard, spare boards included, shared out to beds. A
 * need without a price stays, without one.
 *
 * @param buying as `planGardenBuying` gives it
 * @param beds those of the garden, for what each costs
 * @throws ProblemError for what is no such plan, or no bed
 * @rule sum of the receipts; each line is rounded to the minor unit, tax once for each yard
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const buying = await planGardenBuying({ pieces: [], needs, onHand, yards, prices }, { solve });
 * gardenBill(buying, []).total // => $20.22
 */
export function gardenBill(buying: GardenBuying, beds: readonly Bed[]): GardenBill {
  requireShape(buying, gardenBuying, ["buying"]);
  requireBeds(beds);
  const { receipts, total, currency, proof, problems, priceProblems, remarks, cautions } = buying;
  const { notSold, ways, boards } = buying.buying;
  const names = beds.map((bed) => bed.name);
  const isWithout = problems.length > 0 && buying.problem.boards.pieces.length === 0;
  return {
    receipts,
    total,
    notSold,
    byBed: shareReceipts(receipts, names, currency),
    ways,
    proof,
    boards: isWithout ? null : boards,
    boardProblems: problems,
    problems: priceProblems,
    remarks,
    cautions: [...cautions, ...heaviestLift(receipts), ...unpricedCaution(notSold)],
  };
}
