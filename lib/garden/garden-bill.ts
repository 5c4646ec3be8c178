import {
  type Caution,
  type Problem,
  ProblemError,
  type Remark,
  requireRecord,
} from "../check/index.ts";
import { basketAt, betterBasket } from "../cost/basket.ts";
import {
  type BedCost,
  type Need,
  type NotSold,
  type PriceLine,
  shareReceipts,
  type YardReceipt,
  type YardTerms,
} from "../cost/index.ts";
import { mergeNeeds } from "../cost/merge-needs.ts";
import { indexPrices } from "../cost/price-index.ts";
import type { Basket, Shopping } from "../cost/shopping.ts";
import type { BoardPlan } from "../lumber/index.ts";
import { type Money, minorDigits, moneyDimension, quantity } from "../measure/index.ts";
import { listed, requireShape } from "../measure/shape.ts";
import type { TableReading } from "../table/index.ts";
import type { Bed } from "./bed.ts";
import { boardLines } from "./board-prices.ts";
import { boughtBoards } from "./bought-boards.ts";
import { requireReading } from "./checks.ts";
import { gardenMarket } from "./garden-market.ts";
import { heaviestLift } from "./heaviest-lift.ts";
import { type MoneyChoices, moneyChoices } from "./money-choices.ts";
import type { GardenBoards, YardBoards } from "./plan-garden-boards.ts";
import { bed, gardenBoards, needs } from "./shapes.ts";
import { unpricedCaution } from "./unpriced-caution.ts";

/** What a bill is made from. */
export interface BillInput {
  readonly boards: GardenBoards;
  /** Everything else to buy: the `needs` of fill, dressing, mulch, liner and fasteners. */
  readonly needs: readonly Need[];
  readonly prices: TableReading<PriceLine>;
  readonly yards: TableReading<YardTerms>;
  /** For the bill by bed. */
  readonly beds: readonly Bed[];
}

/** What everything costs, at which yards. */
export interface GardenBill {
  /** Where the boards, and all else that is sold there, are bought; null where there is no yard. */
  readonly yard: string | null;
  readonly receipts: readonly YardReceipt[];
  /** Of all that has a price. */
  readonly total: Money;
  /** What is needed and has no price. */
  readonly notSold: readonly NotSold[];
  readonly byBed: readonly BedCost[];
  /** What it would cost with another main yard. */
  readonly others: readonly OtherYard[];
  /** The plan of the boards that are bought; null where there is none. */
  readonly boards: BoardPlan | null;
  /** Why there is no plan of boards, or why it leaves beds out; empty where it has all of them. */
  readonly boardProblems: readonly Problem[];
  /** Rows of the price list that could not be used. */
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
}

/** The bill with another main yard. */
export interface OtherYard {
  readonly yard: string;
  /** Null where the yard cannot give all boards. */
  readonly total: Money | null;
  /** How much more than the yard taken; null where there is no total. */
  readonly more: Money | null;
  /** Things that no yard sells then. */
  readonly notSold: number;
}

interface Option {
  readonly at: YardBoards;
  readonly basket: Basket;
}

/**
 * The bill: for each yard as the main one, its cheapest boards and all other goods it sells, the
 * rest where it costs least (a trip there counts), tax, delivery and trips; given is the yard with
 * the least total, or the one chosen, with what the others would cost. A need without a price stays,
 * without one.
 *
 * @param input boards as `planGardenBoards` gives them, needs, prices, yards, beds
 * @param choices `MoneyChoices`; all have defaults
 * @throws ProblemError where two currencies are written (`mixed-currency`), or the yard chosen is
 * not one of the garden's (`unknown`)
 * @rule at each yard: boards + other goods + tax + delivery + trips; taken is the yard where that is least, or the one chosen
 * @source common practice
 * @example
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const boards = await planGardenBoards({ pieces: [], onHand, yards, prices }, { solve });
 * const needs = [{ kind: "volume", item: "compost", use: "mulch", volume: times(5, cubicFoot), shares: [] }];
 * const bill = gardenBill({ boards, needs, prices, yards, beds: [] });
 * bill.total // => $20.22
 */
export function gardenBill(input: BillInput, choices: Partial<MoneyChoices> = {}): GardenBill {
  checkBillInput(input);
  const chosen = moneyChoices(choices);
  const market = gardenMarket(input, chosen.currency);
  const { currency, prices, yards } = market;
  const index = indexPrices(prices);
  const needs = mergeNeeds(input.needs).filter(isSomething);
  const { spareBoards } = input.boards;
  const options = input.boards.byYard.map((at): Option => {
    const { taxIncluded, carriesBulk, carPayload, woodDensity } = chosen;
    const boards =
      at.plan === null
        ? []
        : boughtBoards(at.plan, boardLines(prices), { spareBoards, woodDensity });
    const shopping: Shopping = {
      ...{ boards, needs, prices, yards, currency, taxIncluded, carriesBulk, carPayload },
    };
    return { at, basket: basketAt(at.yard ?? "", shopping, index) };
  });
  const allowed = candidates(input.boards, chosen.yard);
  const best = options
    .filter(({ at }) => allowed.includes(at))
    .reduce<Option | undefined>(
      (taken, option) => (taken === undefined || isBetter(option, taken) ? option : taken),
      undefined,
    );
  const basket = best?.basket ?? { receipts: [], notSold: needs.map(noPrice), cents: 0 };
  const money = (cents: number) =>
    quantity(cents / 10 ** minorDigits(currency), moneyDimension, currency);
  const plan = best?.at.plan ?? null;
  return {
    yard: best?.at.yard ?? null,
    receipts: basket.receipts,
    total: money(basket.cents),
    notSold: basket.notSold,
    byBed: shareReceipts(
      basket.receipts,
      input.beds.map((bed) => bed.name),
      currency,
    ),
    others: options.flatMap((option) => otherYard(option, best, money)),
    boards: plan,
    boardProblems: whyNoBoards(input.boards, best),
    problems: market.problems,
    remarks: market.remarks,
    cautions: [
      ...(plan?.cautions ?? []),
      ...heaviestLift(basket.receipts),
      ...unpricedCaution(basket.notSold),
    ],
  };
}

function checkBillInput(input: BillInput): void {
  requireRecord(input, ["input"]);
  requireShape(input.boards, gardenBoards, ["input", "boards"]);
  requireShape(input.needs, needs, ["input", "needs"]);
  requireReading(input.prices, ["input", "prices"]);
  requireReading(input.yards, ["input", "yards"]);
  requireShape(input.beds, listed(bed), ["input", "beds"]);
}

const noPrice = (need: Need): NotSold => ({ need, why: "no price" });

function isSomething(need: Need): boolean {
  if (need.kind === "volume") return need.volume.si > 1e-9;
  return need.kind === "count" ? need.count > 0 : need.beds.length > 0;
}

/** The yards among which to choose: all, or the one asked for. */
function candidates(boards: GardenBoards, yard: string): readonly YardBoards[] {
  if (yard === "cheapest") return boards.byYard;
  const found = boards.byYard.filter((at) => at.yard?.toLowerCase() === yard.trim().toLowerCase());
  if (found.length > 0) return found;
  const problem: Problem = {
    code: "unknown",
    path: ["yard"],
    allowed: ["cheapest", ...boards.byYard.flatMap((at) => at.yard ?? [])].join(" or "),
    received: yard,
    remedy: "Choose a yard of the table of yards, or cheapest.",
  };
  throw new ProblemError([problem]);
}

function isBetter(a: Option, b: Option): boolean {
  if ((a.at.plan === null) !== (b.at.plan === null)) return b.at.plan === null;
  return betterBasket(a.basket, b.basket);
}

function otherYard(
  option: Option,
  best: Option | undefined,
  money: (cents: number) => Money,
): OtherYard[] {
  const { yard, plan } = option.at;
  if (option === best || yard === null || best === undefined) return [];
  const { cents, notSold } = option.basket;
  const has = plan !== null;
  return [
    {
      yard,
      total: has ? money(cents) : null,
      more: has ? money(cents - best.basket.cents) : null,
      notSold: notSold.length,
    },
  ];
}

/** The problems of the yard taken, or of the plan over all yards. */
function whyNoBoards(boards: GardenBoards, best: Option | undefined): readonly Problem[] {
  return best?.at.problems ?? boards.byYard.at(-1)?.problems ?? [];
}
