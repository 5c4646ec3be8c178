import type { BedShare, BoardPrice, CountNeed, GoodsPrice } from "../cost/index.ts";
import { cheapestPurchase } from "../cost/purchase.ts";
import type { BoughtBoards } from "../cost/shopping.ts";
import type { BoardPlan, BuyLine } from "../lumber/index.ts";
import { type Density, massDimension, quantity } from "../measure/index.ts";
import { kindOf } from "./board-prices.ts";

export interface BoughtBoardsOptions {
  /** Bought on top of each kind. */
  readonly spareBoards: number;
  readonly woodDensity: Density | undefined;
}

/**
 * The boards of a plan as lines of a receipt: spare ones added, prices that hold from a number on
 * taken where the number is reached, each board's price shared by the beds whose pieces it gives.
 */
export function boughtBoards(
  plan: BoardPlan,
  prices: readonly BoardPrice[],
  options: BoughtBoardsOptions,
): BoughtBoards[] {
  const sharesOf = boardShares(plan);
  return plan.buy.flatMap((buy) => {
    const key = `${buy.yard} ${kindOf(buy)}`;
    const lines = prices.filter((line) => `${line.yard} ${kindOf(line)}` === key);
    const shares = sharesOf.get(key) ?? [];
    return countsAndPrices(buy, lines, options.spareBoards).map(
      ({ count, price }): BoughtBoards => ({
        yard: buy.yard,
        item: buy.timber === "" ? buy.section.name : `${buy.section.name} ${buy.timber}`,
        use: "boards",
        size: buy.length,
        form: "board",
        board: { section: buy.section.name, timber: buy.timber },
        count,
        price,
        ...massOf(buy, count, options.woodDensity),
        shares,
      }),
    );
  });
}

/** One line, or more where the yard has two prices for the same board. */
function countsAndPrices(
  buy: BuyLine,
  lines: readonly BoardPrice[],
  spare: number,
): readonly { readonly count: number; readonly price: BuyLine["price"] }[] {
  const asGoods = lines.map(
    ({ yard, item, price, form, limit, from, step, row }): GoodsPrice => ({
      kind: "goods",
      size: { kind: "count", count: 1 },
      ...{ yard, item, price, form, limit, from, step, row },
    }),
  );
  const need = (count: number): CountNeed => ({
    kind: "count",
    item: "",
    use: "boards",
    count,
    shares: [],
  });
  const purchase =
    cheapestPurchase(need(buy.count + spare), asGoods) ??
    cheapestPurchase(need(buy.count), asGoods);
  if (purchase === undefined) return [{ count: buy.count, price: buy.price }];
  return purchase.parts.map(({ line, count }) => ({ count, price: line.price }));
}

/** How much of each kind of board bought goes to which bed, by length of the pieces. */
function boardShares(plan: BoardPlan): ReadonlyMap<string, readonly BedShare[]> {
  const byKind = new Map<string, Map<string, number>>();
  for (const cut of plan.cuts) {
    if (cut.yard === null) continue;
    const key = `${cut.yard} ${kindOf(cut)}`;
    const beds = byKind.get(key) ?? new Map<string, number>();
    byKind.set(key, beds);
    const usedM = cut.pieces.reduce((sum, piece) => sum + piece.length.si, 0);
    // A whole board counts once, however much of it becomes offcut.
    for (const piece of cut.pieces) {
      beds.set(piece.bed, (beds.get(piece.bed) ?? 0) + piece.length.si / usedM);
    }
  }
  return new Map(
    [...byKind].map(([key, beds]) => [key, [...beds].map(([bed, share]) => ({ bed, share }))]),
  );
}

function massOf(buy: BuyLine, count: number, density: Density | undefined) {
  if (density === undefined) return {};
  const { section, length } = buy;
  const kg = section.thickness.si * section.width.si * length.si * density.si * count;
  return { mass: quantity(kg, massDimension) };
}
