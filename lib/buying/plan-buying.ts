import { requireRecord } from "../check/index.ts";
import { indexPrices } from "../cost/price-index.ts";
import { checkTimber } from "../lumber/checks.ts";
import { chooseTimbers } from "../lumber/choose-timber.ts";
import { splicePieces } from "../lumber/splicing.ts";
import { tooLongToLoad } from "../lumber/too-long-to-load.ts";
import type { BuyingOptions } from "./buying-options.ts";
import type { BuyingPlan } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { BuyingSearch } from "./buying-search.ts";
import { checkBuyingProblem, checkSolver } from "./check-buying-problem.ts";

/**
 * What to buy where, for the least money in all: boards and how to cut them, and everything else,
 * over all yards and ways to have the goods (fetched in the car, or the whole order brought), with
 * tax, trips and delivery. An order that is brought brings all that is bought at that yard; each
 * need is bought at one yard. A first plan by first fit comes at once through `improved`, better
 * ones follow; the last one says whether it is proven that nothing cheaper can be had.
 *
 * @param problem what is to be bought; every yard of stock and prices is in `yards`
 * @param options the solver, and what else the plan may need
 * @throws ProblemError with all problems: bad values by row, `no-fit` for a piece longer than every
 * board, `unpriced` for a section without a price, `contradiction` where limits are too small,
 * `missing` where a timber must be chosen. An error named `AbortError` where it was stopped.
 * @rule least of goods x (1 + tax) + delivery + trips - worth of offcuts, over all yards, ways and cuts
 * @source gilmore-gomory-1961, common practice
 * @example
 * const section = readSection("2x12", { path: ["section"] }).value
 * const piece = { name: "A-1 side", bed: "A-1", part: "side", section, length: times(7, foot), count: 1 }
 * const board = { yard: "Alder", section, length: times(8, foot), price: money(20, "USD") }
 * const boards = { pieces: [piece], stock: [board], kerf: times(0.125, inch), shortfall: times(0, inch) }
 * const yards = [{ yard: "Alder", tax: 0.05, taxOn: "goods", tripCost: money(4, "USD") }]
 * const problem = { boards, needs: [], prices: [], yards, currency: "USD", taxIncluded: false, carriesBulk: false }
 * const solve = async (program) => ({ state: "optimal", values: program.columns.map(() => 1), bound: 1, rowWorth: [] })
 * const plan = await planBuying(problem, { solve })
 * plan.total // => $25.00
 */
export async function planBuying(
  problem: BuyingProblem,
  options: BuyingOptions,
): Promise<BuyingPlan> {
  requireRecord(options, ["options"]);
  const checks = checkBuyingProblem(problem);
  checkSolver(checks, options);
  checkTimber(checks, options.timber, ["timber"]);
  checks.done();
  const timbers = chooseTimbers(problem.boards, checks, options.timber);
  checks.done();
  const brings = new Set(
    problem.yards.filter(({ delivery }) => delivery !== undefined).map(({ yard }) => yard),
  );
  const onlyByCar = (yard: string) => !brings.has(yard);
  const joined = splicePieces(problem.boards, timbers, onlyByCar);
  const remarks = [...timbers.remarks, ...tooLongToLoad(problem.boards, onlyByCar)];
  const search = new BuyingSearch(
    { ...problem, boards: joined.problem },
    { ...joined, remarks },
    indexPrices(problem.prices),
    options,
  );
  return search.run();
}
