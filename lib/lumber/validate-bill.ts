import type { Length } from "../measure/index.ts";
import type { BoardPlan, BuyLine } from "./board-plan.ts";
import type { BoardProblem, StockBoard } from "./board-problem.ts";
import { type Findings, grouped } from "./findings.ts";

// Nothing here uses the planner's code: the rules are stated a second time.
const slackM = 1e-7;
const moneySlack = 1e-6;

const plain = (timber: string | undefined) => (timber ?? "").trim().toLowerCase();

type Sized = {
  readonly yard: string | null;
  readonly section: { readonly name: string };
  readonly length: Length;
};
const stockKey = ({ yard, section, length }: Sized) =>
  JSON.stringify([yard, section.name, length.si.toFixed(6)]);
const lineKey = (line: Sized & { readonly timber: string }) =>
  JSON.stringify([line.yard, line.section.name, line.timber, line.length.si.toFixed(6)]);

function limitOf(board: StockBoard): number {
  return board.limit ?? (board.yard === null ? 1 : Number.POSITIVE_INFINITY);
}

/** Boards come from the stock, no more of them than there are. */
export function checkSupply(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const stock = grouped(problem.stock, stockKey);
  for (const [key, cuts] of grouped(plan.cuts, stockKey)) {
    const offers = (stock.get(key) ?? []).filter((offer) =>
      cuts.some((cut) => plain(offer.timber) === "" || plain(offer.timber) === plain(cut.timber)),
    );
    const limit = offers.reduce((sum, offer) => sum + limitOf(offer), 0);
    const words = { allowed: `at most ${limit} boards ${key}`, received: String(cuts.length) };
    findings.holds(cuts.length <= limit, ["cuts"], words);
  }
}

/** The buying list agrees with the boards, with the terms of the lines, and its sums with its prices. */
export function checkBill(
  findings: Findings,
  problem: BoardProblem,
  given: { readonly plan: BoardPlan; readonly delivered: ReadonlySet<string> },
): void {
  const { plan } = given;
  const cut = grouped(
    plan.cuts.filter((board) => board.yard !== null),
    lineKey,
  );
  const lines = grouped(plan.buy, lineKey);
  for (const key of new Set([...cut.keys(), ...lines.keys()])) {
    const used = (lines.get(key) ?? []).reduce((sum, { count, unused }) => sum + count - unused, 0);
    findings.same(cut.get(key)?.length ?? 0, used, ["buy", key]);
  }
  for (const [i, line] of plan.buy.entries()) {
    findings.same(line.price.si * line.count, line.sum.si, ["buy", i + 1, "sum"], moneySlack);
  }
  checkOffers(findings, problem, given);
  const sum = plan.buy.reduce((total, line) => total + line.sum.si, 0);
  findings.same(sum, plan.cost.si, ["cost"], moneySlack);
}

/**
 * Whether so many can be bought of a line of the price list, those that lie unused for a reason: a
 * bundle, a price from so many, an order that must be large enough to be brought.
 */
function isOnTerms(
  { count, unused, yard }: BuyLine,
  offer: StockBoard,
  delivered: ReadonlySet<string>,
): boolean {
  const { from = 1, step = 1 } = offer;
  const isSold = count <= limitOf(offer) && count >= from && count % step === 0;
  const leastLot = Math.ceil(from / step) * step;
  const isForPrice = unused < count && (unused < step || count <= leastLot);
  return isSold && unused >= 0 && (isForPrice || delivered.has(yard));
}

/** Every line of the buying list is bought by a line of the price list, each of these used once. */
function checkOffers(
  findings: Findings,
  problem: BoardProblem,
  { plan, delivered }: { readonly plan: BoardPlan; readonly delivered: ReadonlySet<string> },
): void {
  const open = new Set(problem.stock.filter((offer) => offer.yard !== null));
  // Of lines at one price the strictest first: each then finds one that serves, if any does.
  for (const [i, line] of plan.buy.entries()) {
    const serving = [...open].filter(
      (offer) =>
        stockKey(offer) === stockKey(line) &&
        offer.price.si === line.price.si &&
        (plain(offer.timber) === "" || plain(offer.timber) === plain(line.timber)) &&
        isOnTerms(line, offer, delivered),
    );
    const [taken] = serving.sort((a, b) => limitOf(a) - limitOf(b));
    findings.holds(taken !== undefined, ["buy", i + 1], {
      allowed: "a line of the price list, within its limit, least number and bundles",
      received: `${line.count} at ${line.price.si}, ${line.unused} of them unused`,
    });
    if (taken !== undefined) open.delete(taken);
  }
}

/** What the offcuts of bought boards are worth, each at least as long as is kept. */
export function checkOffcuts(findings: Findings, problem: BoardProblem, plan: BoardPlan): void {
  const { offcuts } = problem;
  const rests = plan.cuts
    .filter(({ yard }) => yard !== null)
    .flatMap(({ offcut, atYard }) => [offcut.si, ...(atYard === null ? [] : [atYard.rest.si])]);
  const worth = (slack: number) =>
    rests
      .filter((restM) => offcuts !== undefined && restM > 0 && restM >= offcuts.from.si - slack)
      .reduce((sum, restM) => sum + restM * (offcuts?.worth.si ?? 0), 0);
  // One that is just so long as is kept may be counted or not.
  const [least, most] = [worth(-slackM), worth(slackM)];
  const said = plan.offcutWorth.si;
  const words = { allowed: `${least} to ${most}`, received: String(said) };
  const isRight = said >= least - moneySlack && said <= most + moneySlack;
  findings.holds(isRight, ["offcutWorth"], words);
}
