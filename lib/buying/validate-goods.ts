import type { Need, PriceLine, ReceiptLine, YardReceipt } from "../cost/index.ts";
import { itemKey } from "../cost/item-key.ts";
import { sizesNeeded } from "../cost/sizes-needed.ts";
import { type Findings, grouped } from "../lumber/findings.ts";
import { isQuantity, type Quantity } from "../measure/index.ts";
import type { BuyingPlan } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";

// What is bought besides boards is held against the price list and the needs; nothing here uses the
// planner's code.

const isNear = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));

function isSize(shown: ReceiptLine["size"], size: Quantity | number | string): boolean {
  if (isQuantity(shown) && isQuantity(size)) return isNear(shown.si, size.si);
  if (typeof shown === "number" && typeof size === "number") return isNear(shown, size);
  return shown === size;
}

function sizeOf(line: PriceLine): Quantity | number | string {
  if (line.kind === "board") return line.length;
  if (line.kind !== "goods") return line.sides;
  const { size } = line;
  if (size.kind === "volume") return size.volume;
  if (size.kind === "mass") return size.mass;
  return size.kind === "length" ? size.length : size.count;
}

/** The lines of the price list that something on a receipt may be bought by. */
function pricesOf(problem: BuyingProblem, yard: string, line: ReceiptLine): PriceLine[] {
  return problem.prices.filter(
    (price) =>
      price.kind !== "board" &&
      price.yard === yard &&
      itemKey(price.item) === itemKey(line.item) &&
      (line.form === undefined || price.form === line.form) &&
      isNear(price.price.si, line.price.si) &&
      isSize(line.size, sizeOf(price)),
  );
}

const isWhole = (number: number): boolean => isNear(number, Math.round(number));

/** Every line of goods is one of the price list, bought in its steps, from its least number, within its limit. */
export function checkGoodsLines(
  findings: Findings,
  problem: BuyingProblem,
  receipt: { readonly yard: string; readonly lines: YardReceipt["lines"]; readonly at: number },
): void {
  for (const [at, line] of receipt.lines.entries()) {
    if (line.board !== undefined) continue;
    const isSold = pricesOf(problem, receipt.yard, line).some(
      ({ limit = Number.POSITIVE_INFINITY, from, step }) =>
        line.count >= from - 1e-9 && line.count <= limit + 1e-9 && isWhole(line.count / step),
    );
    findings.holds(isSold, ["receipts", receipt.at, "lines", at + 1], {
      allowed: "a line of the price list, within its limit, least number and steps",
      received: `${line.count} of ${line.item} at ${line.price.si}`,
    });
    const isNeeded = problem.needs.some((need) => nameOf(need) === nameOf(line));
    findings.holds(isNeeded, ["receipts", receipt.at, "lines", at + 1], {
      allowed: "what is needed",
      received: `${line.item} for ${line.use}`,
    });
  }
}

const nameOf = ({ item, use }: { readonly item: string; readonly use: string }) =>
  JSON.stringify([item, use]);

/** Every need is covered whole, by what is bought for it at one yard, or is said not to be sold. */
export function checkNeeds(findings: Findings, problem: BuyingProblem, plan: BuyingPlan): void {
  const unsold = new Set(plan.notSold.map(({ need }) => nameOf(need)));
  for (const [name, needs] of grouped(problem.needs, nameOf)) {
    const path = ["needs", ...needs.slice(0, 1).map(({ item }) => item)];
    const bought = plan.receipts.flatMap(({ yard, lines }) =>
      lines
        .filter((line) => line.board === undefined && nameOf(line) === name)
        .map((line) => ({ line, yard })),
    );
    const yards = new Set(bought.map(({ yard }) => yard));
    // Needs of one name and use can't be told apart on a receipt: together they are covered.
    findings.holds(yards.size <= needs.length, path, {
      allowed: "one yard",
      received: [...yards].join(", "),
    });
    const covered = bought.reduce(
      (sum, { line, yard }) => sum + shareCovered(problem, needs, { line, yard }),
      0,
    );
    const isNothing = needs.every((need) => amountOf(need) === 0);
    const isCovered = isNothing || covered >= 1 - 1e-9;
    findings.holds(isCovered || unsold.has(name), path, {
      allowed: "all that is needed, or that it is not sold",
      received: `${Math.floor(covered * 100)} %`,
    });
    findings.holds(!unsold.has(name) || needs.length > 1 || bought.length === 0, path, {
      allowed: "nothing bought of what is not sold",
      received: `${bought.length} lines`,
    });
  }
}

function amountOf(need: Need): number {
  if (need.kind === "volume") return need.volume.si;
  return need.kind === "count" ? need.count : need.beds.length;
}

/** What share of the needs a line of a receipt covers. */
function shareCovered(
  problem: BuyingProblem,
  needs: readonly Need[],
  { line, yard }: { readonly line: ReceiptLine; readonly yard: string },
): number {
  const [price] = pricesOf(problem, yard, line);
  if (price === undefined) return 0;
  const sizes = needs.reduce((sum, need) => sum + (sizesNeeded(need, price) ?? Infinity), 0);
  return sizes > 0 ? line.count / sizes : 1;
}

/** What a line of a receipt weighs, as far as that follows from the problem. */
export function lineMassKg(problem: BuyingProblem, line: ReceiptLine): number | undefined {
  const { size, count } = line;
  if (line.board !== undefined) {
    const { section } =
      problem.boards.stock.find((board) => board.section.name === line.board?.section) ?? {};
    if (section === undefined || problem.woodDensity === undefined || !isQuantity(size)) return 0;
    return section.thickness.si * section.width.si * size.si * problem.woodDensity.si * count;
  }
  const need = problem.needs.find((each) => nameOf(each) === nameOf(line));
  if (need?.kind !== "volume" || !isQuantity(size)) return undefined;
  const [metre, kilogram] = size.dim;
  if (kilogram === 1) return size.si * count;
  return metre === 3 && need.density ? size.si * need.density.likely.si * count : undefined;
}
