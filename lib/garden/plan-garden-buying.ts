import { atMainYard } from "../buying/at-main-yard.ts";
import {
  type BuyingPlan,
  type BuyingProblem,
  type BuyingProof,
  planBuying,
} from "../buying/index.ts";
import { totalOf } from "../buying/receipts.ts";
import { withSpareBoards } from "../buying/spare-boards.ts";
import {
  type Caution,
  type Problem,
  ProblemError,
  type Remark,
  requireRecord,
} from "../check/index.ts";
import type { YardReceipt } from "../cost/index.ts";
import type { Money } from "../measure/index.ts";
import { type GardenBuyingOptions, splitOptions } from "./buying-choices.ts";
import {
  checkGardenNeed,
  type GardenNeed,
  type GardenProblem,
  gardenProblem,
} from "./garden-problem.ts";
import type { KeptStock } from "./kept-stock.ts";
import { withoutBeds } from "./without-beds.ts";

/** What is bought for a garden where, how its boards are cut, and what that comes to. */
export interface GardenBuying {
  /** The plan; its receipts are without spare boards. */
  readonly buying: BuyingPlan;
  /** What was planned: of the beds whose boards can be had, at all yards. */
  readonly problem: BuyingProblem;
  /** The main yard; null where it is the cheapest. */
  readonly yard: string | null;
  /** Spare boards included. */
  readonly receipts: readonly YardReceipt[];
  /** Sum of the receipts. */
  readonly total: Money;
  /** How sure it is that nothing cheaper can be had, with the main yard and spare boards named. */
  readonly proof: BuyingProof;
  /** Why beds are left out; empty for a plan of all pieces. */
  readonly problems: readonly Problem[];
  /** Rows of the price list that could not be used. */
  readonly priceProblems: readonly Problem[];
  readonly currency: string;
  /** Bought on top of each kind that is bought. */
  readonly spareBoards: number;
  /** Boards kept that are not used in beds for food. */
  readonly leftOut: KeptStock["leftOut"];
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
}

/**
 * Plans what to buy where for a garden: boards, fill, liner and fittings together, since a trip or a
 * delivery is shared, for the least money in all, with how sure that is. With a main yard, all that
 * it sells is bought there, the rest where it costs least. Spare boards are bought on top. Where
 * pieces of some beds cannot be had (no board is long enough, no price, limits too small) the plan is
 * for the other beds, with the problems. Works on plain data and takes long: it may run apart.
 *
 * @param need pieces, other needs, boards kept, yards and prices, as read
 * @param options as for `planBuying`, and `CuttingChoices` and `MoneyChoices`; `improved` is given
 * each better plan, whole
 * @throws ProblemError where two currencies are written, a choice is out of range, or a yard chosen
 * is not one of the garden's. That boards cannot be had is not thrown: it is in `problems`. An error
 * named `AbortError` where it was stopped
 * @rule least sum of boards + goods + tax + delivery + trips over all ways to buy at the yards and to cut the boards
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const plan = await planGardenBuying({ pieces: [], needs, onHand, yards, prices }, { solve });
 * plan.total // => $20.22
 */
export async function planGardenBuying(
  need: GardenNeed,
  options: GardenBuyingOptions & { readonly improved?: (better: GardenBuying) => void },
): Promise<GardenBuying> {
  checkGardenNeed(need);
  requireRecord(options, ["options"]);
  const { improved, ...rest } = options;
  const { choices, planning } = splitOptions(rest);
  const found = gardenProblem(need, choices);
  const { yard } = found;
  const made = (planned: Planned) => gardenBuying(planned, found, choices.spareBoards);
  const planned = await planOfSome(found.problem, (problem, problems) =>
    planBuying(yard === undefined ? problem : atMainYard(problem, yard), {
      ...planning,
      ...(improved && {
        improved: (plan: BuyingPlan) => improved(made({ plan, problem, problems })),
      }),
    }),
  );
  return made(planned);
}

function gardenBuying(planned: Planned, found: GardenProblem, spareBoards: number): GardenBuying {
  const { plan, problem, problems } = planned;
  const { market, kept, yard } = found;
  const receipts = withSpareBoards(problem, plan, spareBoards);
  return {
    buying: plan,
    problem,
    yard: yard ?? null,
    receipts,
    total: totalOf(receipts, market.currency),
    proof: proofInWords(plan.proof, yard, spareBoards),
    problems,
    priceProblems: market.problems,
    currency: market.currency,
    spareBoards,
    leftOut: kept.leftOut,
    remarks: [...market.remarks, ...plan.boards.remarks],
    cautions: [...kept.cautions, ...plan.boards.cautions],
  };
}

interface Planned {
  readonly plan: BuyingPlan;
  readonly problem: BuyingProblem;
  readonly problems: readonly Problem[];
}

/** The plan of all pieces, or else of those beds that nothing stands in the way of. */
async function planOfSome(
  all: BuyingProblem,
  plan: (problem: BuyingProblem, problems: readonly Problem[]) => Promise<BuyingPlan>,
): Promise<Planned> {
  const problems: Problem[] = [];
  let problem = all;
  for (;;) {
    try {
      return { plan: await plan(problem, problems), problem, problems };
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      const { pieces } = problem.boards;
      const rest = withoutBeds(pieces, error.problems);
      if (rest.length === pieces.length) throw error;
      problems.push(...error.problems);
      problem = { ...problem, boards: { ...problem.boards, pieces: rest } };
    }
  }
}

/** What the proof does not speak of is said with it: a yard that was chosen, boards bought on top. */
function proofInWords(proof: BuyingProof, yard: string | undefined, spare: number): BuyingProof {
  const main = yard === undefined ? "" : ` with ${yard} as the main yard`;
  const apart = spare === 0 ? "" : ", spare boards apart";
  return { ...proof, words: `${proof.words}${main}${apart}` };
}
