import {
  type Caution,
  type Problem,
  ProblemError,
  type Remark,
  requireRecord,
} from "../check/index.ts";
import type { PriceLine, YardTerms } from "../cost/index.ts";
import {
  type BoardPlan,
  type Piece,
  type PlanOptions,
  planBoards,
  type StockBoard,
} from "../lumber/index.ts";
import { moneyDimension, quantity } from "../measure/index.ts";
import { listed, requireShape } from "../measure/shape.ts";
import type { TableReading } from "../table/index.ts";
import { boardLines, stockAt, stockEverywhere } from "./board-prices.ts";
import { requireReading } from "./checks.ts";
import { type CuttingChoices, cuttingChoices } from "./cutting-choices.ts";
import { gardenMarket } from "./garden-market.ts";
import { type KeptStock, keptStock } from "./kept-stock.ts";
import type { KeptBoards } from "./read-on-hand.ts";
import { piece } from "./shapes.ts";
import { withoutBeds } from "./without-beds.ts";

/** What is to be cut, and what it can be cut from. */
export interface BoardNeed {
  readonly pieces: readonly Piece[];
  readonly onHand: TableReading<KeptBoards>;
  readonly yards: TableReading<YardTerms>;
  readonly prices: TableReading<PriceLine>;
}

/** The cheapest plan with one yard as the main one, or why there is none. */
export interface YardBoards {
  /** The main yard; null for the plan over all yards. */
  readonly yard: string | null;
  readonly plan: BoardPlan | null;
  /** Why there is no plan, or why it leaves beds out; empty for a plan of all pieces. */
  readonly problems: readonly Problem[];
}

/** The plans for each yard, to choose from. */
export interface GardenBoards {
  readonly byYard: readonly YardBoards[];
  readonly currency: string;
  /** Bought on top of each kind that is bought. */
  readonly spareBoards: number;
  readonly leftOut: KeptStock["leftOut"];
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
}

/** The choices of cutting, and what the planner of boards needs. */
export type GardenBoardsOptions = Partial<CuttingChoices> &
  Pick<PlanOptions, "solve" | "progress" | "signal" | "seconds" | "remembered">;

/**
 * Plans the boards for each yard on its own: the cheapest way to cut all pieces from what that yard
 * sells and what was kept. Sections the yard has none of come from the others. Where no yard alone
 * has enough, one plan over all yards is given; where that fails too, one that leaves out the beds
 * whose pieces no board is long enough for or has a price for, with the problems. Which yard it is to be, the bill decides, since it
 * knows the rest. Works on plain data and takes long: it may run apart.
 *
 * @param need pieces, boards kept, yards and prices, as read
 * @param options `solve`, and if wanted `progress`, `signal`, `seconds`, `remembered`, and
 * `CuttingChoices`
 * @throws ProblemError where two currencies are written, or a choice is out of range. That there is
 * no plan, or none of all beds, is not thrown: it is in `problems` of the yard
 * @rule at each yard the boards that cost least in all; kept boards are free, and every cut eats a kerf
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const boards = await planGardenBoards({ pieces: [], onHand, yards, prices }, { solve });
 * boards.byYard[0].plan.buy // => []
 */
export async function planGardenBoards(
  need: BoardNeed,
  options: GardenBoardsOptions,
): Promise<GardenBoards> {
  checkNeed(need);
  requireRecord(options, ["options"]);
  const { solve, progress, signal, seconds, remembered = new Map(), ...chosen } = options;
  const { kerf, shortfall, food, currency: fallback, spareBoards } = cuttingChoices(chosen);
  const { currency, prices, yards } = gardenMarket(need, fallback);
  const nothing = quantity(0, moneyDimension, currency);
  const kept = keptStock(need.onHand, need.pieces, { food, nothing });
  const lines = boardLines(prices);
  const plan = async (
    yard: string | null,
    bought: readonly StockBoard[],
    pieces: readonly Piece[],
  ): Promise<YardBoards> => {
    const stock = [...bought, ...kept.stock];
    const words = (text: string) => (yard === null ? text : `${yard}: ${text}`);
    const planner = {
      solve,
      remembered,
      ...(seconds === undefined ? {} : { seconds }),
      ...(signal === undefined ? {} : { signal }),
      ...(progress && {
        progress: (text: string, fraction?: number) => progress(words(text), fraction),
      }),
    };
    try {
      const made = await planBoards({ pieces, stock, kerf, shortfall }, planner);
      return { yard, plan: made, problems: [] };
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      return { yard, plan: null, problems: error.problems };
    }
  };
  const byYard: YardBoards[] = [];
  for (const { yard } of yards)
    byYard.push(await plan(yard, stockAt(yard, lines, need.pieces), need.pieces));
  if (byYard.every(({ plan: made }) => made === null)) {
    const everywhere = stockEverywhere(lines, need.pieces);
    byYard.push(await planOfSome(need.pieces, (pieces) => plan(null, everywhere, pieces)));
  }
  const remarks = new Map(
    byYard.flatMap(({ plan: made }) => made?.remarks ?? []).map((remark) => [remark.text, remark]),
  );
  return {
    byYard,
    currency,
    spareBoards,
    leftOut: kept.leftOut,
    remarks: [...remarks.values()],
    cautions: kept.cautions,
  };
}

/** The plan of all pieces, or else of those beds that nothing stands in the way of. */
async function planOfSome(
  all: readonly Piece[],
  plan: (pieces: readonly Piece[]) => Promise<YardBoards>,
): Promise<YardBoards> {
  const problems: Problem[] = [];
  let pieces = all;
  for (;;) {
    const made = await plan(pieces);
    if (made.plan !== null) return { ...made, problems };
    problems.push(...made.problems);
    const rest = withoutBeds(pieces, made.problems);
    if (rest.length === 0 || rest.length === pieces.length) return { ...made, problems };
    pieces = rest;
  }
}

function checkNeed(need: BoardNeed): void {
  requireRecord(need, ["need"]);
  requireShape(need.pieces, listed(piece), ["need", "pieces"]);
  requireReading(need.onHand, ["need", "onHand"]);
  requireReading(need.yards, ["need", "yards"]);
  requireReading(need.prices, ["need", "prices"]);
}
