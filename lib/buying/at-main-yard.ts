import type { Need, PriceLine, YardTerms } from "../cost/index.ts";
import { itemKey } from "../cost/item-key.ts";
import { indexPrices } from "../cost/price-index.ts";
import { groupOf } from "./board-kind.ts";
import type { BuyingProblem } from "./buying-problem.ts";

/**
 * The same problem with one yard as the main one: what it sells is on offer nowhere else, what it
 * does not sell comes from the others.
 */
export function atMainYard(problem: BuyingProblem, main: string): BuyingProblem {
  const { stock } = problem.boards;
  const groups = new Set(stock.filter(({ yard }) => yard === main).map(groupOf));
  const items = itemsSoldAt(problem, main);
  return {
    ...problem,
    boards: {
      ...problem.boards,
      stock: stock.filter(
        (board) => board.yard === null || board.yard === main || !groups.has(groupOf(board)),
      ),
    },
    prices: problem.prices.filter(
      (line) => line.yard === main || !isGoods(line) || !items.has(itemKey(line.item)),
    ),
  };
}

const isGoods = ({ kind }: PriceLine): boolean => kind !== "board" && kind !== "kit";

/** Names of the things of which the yard covers every need. */
function itemsSoldAt(problem: BuyingProblem, main: string): ReadonlySet<string> {
  const index = indexPrices(problem.prices);
  const withBulk = problem.carriesBulk || delivers(problem.yards, main);
  const isSold = (need: Need) => index.purchase(need, main, withBulk) !== undefined;
  const keys = new Set(problem.needs.map(({ item }) => itemKey(item)));
  for (const need of problem.needs) if (!isSold(need)) keys.delete(itemKey(need.item));
  return keys;
}

function delivers(yards: readonly YardTerms[], name: string): boolean {
  return yards.some(({ yard, delivery }) => yard === name && delivery !== undefined);
}
