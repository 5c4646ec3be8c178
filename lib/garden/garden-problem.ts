import type { BuyingProblem } from "../buying/index.ts";
import { type Problem, ProblemError, requireRecord } from "../check/index.ts";
import type { BoardPrice, Need, PriceLine, YardTerms } from "../cost/index.ts";
import { mergeNeeds } from "../cost/merge-needs.ts";
import type { Piece } from "../lumber/index.ts";
import { foot, money, moneyDimension, printQuantity, quantity } from "../measure/index.ts";
import { listed, requireShape } from "../measure/shape.ts";
import type { TableReading } from "../table/index.ts";
import { boardStock } from "./board-stock.ts";
import type { BuyingChoices } from "./buying-choices.ts";
import { requireReading } from "./checks.ts";
import { type GardenMarket, gardenMarket } from "./garden-market.ts";
import { type KeptStock, keptStock } from "./kept-stock.ts";
import type { KeptBoards } from "./read-on-hand.ts";
import { needs, piece } from "./shapes.ts";

/** What a garden needs, and where it can be had. */
export interface GardenNeed {
  /** As `gardenPieces` gives them. */
  readonly pieces: readonly Piece[];
  /** Everything else to buy: the `needs` of fill, dressing, mulch, liner and fasteners. */
  readonly needs: readonly Need[];
  readonly onHand: TableReading<KeptBoards>;
  readonly yards: TableReading<YardTerms>;
  readonly prices: TableReading<PriceLine>;
}

/** The problem of buying for a garden, and what was found on the way to it. */
export interface GardenProblem {
  readonly problem: BuyingProblem;
  readonly market: GardenMarket;
  readonly kept: KeptStock;
  /** The main yard by its spelling in the tables; undefined for the cheapest. */
  readonly yard: string | undefined;
}

/** Puts a garden's tables and choices together as one problem of buying. */
export function gardenProblem(need: GardenNeed, choices: BuyingChoices): GardenProblem {
  const all = gardenMarket(need, choices.currency);
  const market = withoutYards(all, choices.without);
  const { currency, prices, yards } = market;
  checkOffcutWorth(choices, prices, need.prices.table);
  const nothing = quantity(0, moneyDimension, currency);
  const kept = keptStock(need.onHand, need.pieces, { food: choices.food, nothing });
  const { kerf, shortfall, squaring, splice, loadLength, cutAtYard } = choices;
  const { offcutsFrom: from, offcutWorth: worth } = choices;
  const { taxIncluded, carriesBulk, carPayload, woodDensity } = choices;
  return {
    market,
    kept,
    yard: mainYard(yards, choices.yard),
    problem: {
      boards: {
        pieces: need.pieces,
        stock: [...boardStock(prices, need.pieces), ...kept.stock],
        ...{ kerf, shortfall, squaring, splice, cutAtYard },
        ...(from === undefined || worth === undefined
          ? {}
          : { offcuts: { from, worth: quantity(worth.si, worth.dim, currency) } }),
        ...(loadLength === undefined ? {} : { loadLength }),
      },
      needs: mergeNeeds(need.needs).filter(isSomething),
      ...{ prices, yards, currency, taxIncluded, carriesBulk },
      ...(carPayload === undefined ? {} : { carPayload }),
      ...(woodDensity === undefined ? {} : { woodDensity }),
    },
  };
}

/** Offcuts worth as much as boards cost would make it pay to buy boards for their offcuts. */
function checkOffcutWorth(
  { offcutWorth }: BuyingChoices,
  prices: readonly PriceLine[],
  table: string,
): void {
  if (offcutWorth === undefined || offcutWorth.si === 0) return;
  const cheapest = prices.reduce<BoardPrice | undefined>((best, line) => {
    if (line.kind !== "board") return best;
    return best === undefined || perMetre(line) < perMetre(best) ? line : best;
  }, undefined);
  if (cheapest === undefined || offcutWorth.si < perMetre(cheapest)) return;
  const perFoot = (priceSi: number) =>
    printQuantity(money(priceSi * foot.si, cheapest.price.currency));
  const problem: Problem = {
    code: "contradiction",
    path: ["offcutWorth"],
    allowed: `less than the cheapest board costs by length, ${perFoot(perMetre(cheapest))} a foot`,
    received: `${perFoot(offcutWorth.si)} a foot`,
    remedy: "Give offcuts a lower worth, or none.",
    also: [[table, cheapest.row, "price"]],
  };
  throw new ProblemError([problem]);
}

const perMetre = ({ price, length }: BoardPrice): number => price.si / length.si;

/** Refuses what is no need of a garden. */
export function checkGardenNeed(need: GardenNeed): void {
  requireRecord(need, ["need"]);
  requireShape(need.pieces, listed(piece), ["need", "pieces"]);
  requireShape(need.needs, needs, ["need", "needs"]);
  requireReading(need.onHand, ["need", "onHand"]);
  requireReading(need.yards, ["need", "yards"]);
  requireReading(need.prices, ["need", "prices"]);
}

function isSomething(need: Need): boolean {
  if (need.kind === "volume") return need.volume.si > 1e-9;
  return need.kind === "count" ? need.count > 0 : need.beds.length > 0;
}

function withoutYards(market: GardenMarket, names: readonly string[]): GardenMarket {
  const out = names.map((name, at) => named(market.yards, name, ["without", at + 1]));
  return {
    ...market,
    yards: market.yards.filter(({ yard }) => !out.includes(yard)),
    prices: market.prices.filter(({ yard }) => !out.includes(yard)),
  };
}

function mainYard(yards: readonly YardTerms[], name: string): string | undefined {
  return name === "cheapest" ? undefined : named(yards, name, ["yard"], "cheapest or ");
}

/** The yard of that name, however its letters are written. */
function named(
  yards: readonly YardTerms[],
  name: string,
  path: Problem["path"],
  before = "",
): string {
  const found = yards.find(({ yard }) => yard.toLowerCase() === name.trim().toLowerCase());
  if (found !== undefined) return found.yard;
  const problem: Problem = {
    code: "unknown",
    path,
    allowed: `${before}${yards.map(({ yard }) => yard).join(" or ")}`,
    received: name,
    remedy: "Write the name of a yard as it stands in the table of yards.",
  };
  throw new ProblemError([problem]);
}
