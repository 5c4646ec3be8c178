import type { GoodsPrice, ReceiptLine, YardReceipt, YardTerms } from "../cost/index.ts";
import { yardReceipt } from "../cost/index.ts";
import { cheapestPurchase } from "../cost/purchase.ts";
import type { StockBoard } from "../lumber/index.ts";
import { type Length, massDimension, moneyDimension, quantity } from "../measure/index.ts";
import { kindOf } from "./board-kind.ts";
import type { BuyingPlan } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";

/**
 * The receipts of a plan with so many spare boards of each kind that is bought, at its yard and at
 * the best price for that number. Boards of a bundle that no piece is cut from count as spare; where
 * the yard has no more, as many are bought as the plan has.
 */
export function withSpareBoards(
  problem: BuyingProblem,
  plan: BuyingPlan,
  spare: number,
): readonly YardReceipt[] {
  if (spare === 0) return plan.receipts;
  const unused = new Map<string, number>();
  for (const line of plan.boards.buy) {
    const kind = `${line.yard} ${kindOf(line)}`;
    unused.set(kind, (unused.get(kind) ?? 0) + line.unused);
  }
  return plan.receipts.map((receipt) => {
    const terms = problem.yards.find(({ yard }) => yard === receipt.yard);
    if (terms === undefined) return receipt;
    const lines = boardKinds(receipt).flatMap(({ kind, lines: alike }) => {
      const more = Math.max(0, spare - (unused.get(`${receipt.yard} ${kind}`) ?? 0));
      return withMore(alike, more, stockOf(problem, receipt.yard, kind));
    });
    const others = receipt.lines.filter(({ board }) => board === undefined);
    return receiptOf([...lines, ...others], terms, problem);
  });
}

interface AlikeLines {
  readonly kind: string;
  readonly lines: readonly ReceiptLine[];
}

/** Lines of boards of one kind, which may stand there at several prices. */
function boardKinds({ lines }: YardReceipt): readonly AlikeLines[] {
  const byKind = new Map<string, ReceiptLine[]>();
  for (const line of lines) {
    if (line.board === undefined) continue;
    const { section, timber } = line.board;
    const kind = kindOf({ section: { name: section }, timber, length: line.size as Length });
    byKind.set(kind, [...(byKind.get(kind) ?? []), line]);
  }
  return [...byKind].map(([kind, alike]) => ({ kind, lines: alike }));
}

function stockOf(problem: BuyingProblem, yard: string, kind: string): readonly StockBoard[] {
  return problem.boards.stock.filter((board) => board.yard === yard && kindOf(board) === kind);
}

function withMore(
  lines: readonly ReceiptLine[],
  more: number,
  stock: readonly StockBoard[],
): readonly ReceiptLine[] {
  const [first] = lines;
  if (first === undefined || more === 0) return lines;
  const count = lines.reduce((sum, line) => sum + line.count, 0) + more;
  const need = { kind: "count", item: "", use: "", count, shares: [] } as const;
  const purchase = cheapestPurchase(need, stock.map(asGoods));
  if (purchase === undefined) return lines;
  return purchase.parts.map((part): ReceiptLine => {
    const { price } = part.line;
    const mass =
      first.mass === undefined
        ? {}
        : { mass: quantity((first.mass.si / first.count) * part.count, massDimension) };
    const total = quantity(price.si * part.count, moneyDimension, price.currency);
    return { ...first, count: part.count, price, ...mass, total };
  });
}

function asGoods(board: StockBoard): GoodsPrice {
  const { yard, price, limit, from = 0, step = 1 } = board;
  const size = { kind: "count", count: 1 } as const;
  const terms = { yard: yard ?? "", item: "", form: "board", row: 0 } as const;
  return { kind: "goods", size, ...terms, price, limit, from, step };
}

function receiptOf(
  lines: readonly ReceiptLine[],
  terms: YardTerms,
  { currency, taxIncluded, carPayload }: BuyingProblem,
): YardReceipt {
  const car = carPayload === undefined ? {} : { carPayload };
  return yardReceipt(lines, terms, { currency, taxIncluded, ...car });
}
