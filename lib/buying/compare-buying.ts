import { ProblemError, requireRecord, sentence } from "../check/index.ts";
import { centsOf, moneyFromCents } from "../cost/cents.ts";
import type { YardReceipt } from "../cost/index.ts";
import { type Money, requireChoice } from "../measure/index.ts";
import { atMainYard } from "./at-main-yard.ts";
import type { BuyingOptions } from "./buying-options.ts";
import type { BuyingPlan, BuyingProof } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { checkBuyingProblem } from "./check-buying-problem.ts";
import { firstFitBuying } from "./first-fit-buying.ts";
import { planBuying } from "./plan-buying.ts";
import { totalOf } from "./receipts.ts";
import { withSpareBoards } from "./spare-boards.ts";

/** What another way of buying comes to. */
export interface BuyingComparison {
  /** What is chosen: "this plan", "all at Alder". */
  readonly choice: string;
  /** Null where it cannot be. */
  readonly total: Money | null;
  /** How much more than this plan; null where there is no total. */
  readonly more: Money | null;
  /** How many boards are bought; null where there is no total. */
  readonly boards: number | null;
  /** Null where there is no total, and for what people do by hand. */
  readonly proof: BuyingProof | null;
  /** What comes from other yards, what cannot be had, or why there is no total; may be empty. */
  readonly note: string;
}

/** What `planBuying` takes, and the main yard of the plan itself. */
export interface CompareBuyingOptions extends Omit<BuyingOptions, "improved"> {
  /** The yard at which the plan itself buys all that is sold there. Default: none, the cheapest. */
  readonly yard?: string;
  /** Given the rows that are there, each time one more is. */
  readonly improved?: (rows: readonly BuyingComparison[]) => void;
}

/**
 * What other choices would cost, beside the plan itself: the cheapest where the plan has a main
 * yard; everything at each single yard, where what it does not sell comes from the others; sawing
 * by first fit, as by hand; without the boards kept; with one spare board of each kind bought.
 *
 * @param problem as for `planBuying`
 * @param options as for `planBuying`, and `yard`
 * @throws ProblemError where there is no plan itself, as `planBuying` does; `unknown` for a yard that
 * is none of the problem's. That another choice
 * cannot be is not thrown: its row has no total, and says why. An error named `AbortError` where it
 * was stopped
 * @rule more = total of the choice - total of this plan
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,screws,100,9\nBirch,screws,100,8", "prices")).rows;
 * const yards = [{ yard: "Alder", tax: 0, taxOn: "goods" }, { yard: "Birch", tax: 0, taxOn: "goods" }];
 * const needs = [{ kind: "count", item: "screws", use: "fasteners", count: 150, shares: [] }];
 * const boards = { pieces: [], stock: [], kerf: times(0, inch), shortfall: times(0, inch) };
 * const problem = { boards, needs, prices, yards, currency: "USD", taxIncluded: false, carriesBulk: false };
 * const rows = await compareBuying(problem, { solve });
 * rows.map((row) => `${row.choice} ${row.total.si}`) // => ["this plan 16","all at Alder 18","all at Birch 16"]
 */
export async function compareBuying(
  problem: BuyingProblem,
  options: CompareBuyingOptions,
): Promise<readonly BuyingComparison[]> {
  requireRecord(options, ["options"]);
  checkBuyingProblem(problem).done();
  const { yard, progress, improved, ...planning } = options;
  if (yard !== undefined) {
    const names = problem.yards.map((terms) => terms.yard);
    requireChoice(yard, names, ["yard"]);
  }
  const planned = (of: BuyingProblem, choice: string) =>
    planBuying(of, {
      ...planning,
      ...(progress && {
        progress: (words: string, fraction?: number) => progress(`${choice}: ${words}`, fraction),
      }),
    });
  const own = await planned(yard === undefined ? problem : atMainYard(problem, yard), "this plan");
  const tried = async (choice: string, of: BuyingProblem, main?: string) => {
    try {
      const plan = await planned(of, choice);
      const note = noteOn(plan, main);
      // What leaves more unbought is no cheaper for it.
      if (plan.notSold.length > own.notSold.length) return withoutTotal(choice, note);
      return rowOf(choice, plan, own, note);
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      return withoutTotal(choice, error.problems.map(sentence)[0] ?? "");
    }
  };
  const { timber } = planning;
  const rows: BuyingComparison[] = [];
  const add = (row: BuyingComparison) => {
    rows.push(row);
    improved?.([...rows]);
  };
  add(rowOf("this plan", own, own, noteOn(own)));
  if (problem.boards.pieces.length > 0)
    add(byHand(problem, own, timber === undefined ? {} : { timber }));
  if (own.boards.boughtCount > 0) add(withOneSpare(problem, own));
  if (yard !== undefined) add(await tried("cheapest yards", problem));
  for (const main of singleYards(problem))
    add(await tried(`all at ${main}`, atMainYard(problem, main), main));
  if (problem.boards.stock.some((board) => board.yard === null))
    add(await tried("no boards kept", withoutKept(problem)));
  return rows;
}

const boardsIn = (receipts: readonly YardReceipt[]): number =>
  receipts
    .flatMap(({ lines }) => lines)
    .reduce((sum, { board, count }) => (board === undefined ? sum : sum + count), 0);

function rowOf(
  choice: string,
  plan: Pick<BuyingPlan, "receipts" | "total" | "proof">,
  own: BuyingPlan,
  note: string,
): BuyingComparison {
  const { total, proof, receipts } = plan;
  return { choice, total, more: moreThan(own, total), boards: boardsIn(receipts), proof, note };
}

function moreThan(own: BuyingPlan, total: Money): Money {
  return moneyFromCents(centsOf(total) - centsOf(own.total), total.currency);
}

function withoutTotal(choice: string, note: string): BuyingComparison {
  return { choice, total: null, more: null, boards: null, proof: null, note };
}

/** What a plan buys elsewhere than at its main yard, and what it cannot have. */
function noteOn({ receipts, notSold }: BuyingPlan, main?: string): string {
  const elsewhere = receipts
    .filter(({ yard }) => main !== undefined && yard !== main)
    .map(({ yard, lines }) => `${yard}: ${namesOf(lines)}`);
  const lacking =
    notSold.length > 0 ? [`not to be had: ${namesOf(notSold.map(({ need }) => need))}`] : [];
  const from = elsewhere.length > 0 ? [`from ${elsewhere.join("; from ")}`] : [];
  return [...from, ...lacking].join("; ");
}

const namesOf = (things: readonly { readonly item: string }[]): string =>
  [...new Set(things.map(({ item }) => item))].join(", ");

/** The yards that sell anything that is wanted, where there are several. */
function singleYards({ boards, needs, prices, yards }: BuyingProblem): readonly string[] {
  const selling = new Set([
    ...boards.stock.map((board) => board.yard),
    ...(needs.length > 0 ? prices.map((line) => line.yard) : []),
  ]);
  const names = yards.map(({ yard }) => yard).filter((yard) => selling.has(yard));
  return names.length > 1 ? names : [];
}

function byHand(
  problem: BuyingProblem,
  own: BuyingPlan,
  options: { readonly timber?: string },
): BuyingComparison {
  const choice = "first fit by hand";
  const found = firstFitBuying(problem, options);
  if (found === null) return withoutTotal(choice, "no single yard has all the boards");
  const { total, yard, boards, notSold } = found;
  // What leaves more unbought is no cheaper for it.
  if (notSold > own.notSold.length) return withoutTotal(choice, `things not to be had: ${notSold}`);
  const note = `boards of one length for each section, all at ${yard}`;
  return { choice, total, more: moreThan(own, total), boards, proof: null, note };
}

function withoutKept(problem: BuyingProblem): BuyingProblem {
  const stock = problem.boards.stock.filter((board) => board.yard !== null);
  return { ...problem, boards: { ...problem.boards, stock } };
}

function withOneSpare(problem: BuyingProblem, own: BuyingPlan): BuyingComparison {
  const receipts = withSpareBoards(problem, own, 1);
  const total = totalOf(receipts, problem.currency);
  const note = "one more of each section and length that is bought";
  return rowOf("with spare boards", { receipts, total, proof: own.proof }, own, note);
}
