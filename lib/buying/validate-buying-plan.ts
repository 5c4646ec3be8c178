import type { Problem } from "../check/index.ts";
import { checkCertificate } from "../lumber/check-certificate.ts";
import { Findings, grouped } from "../lumber/findings.ts";
import { validateBoardPlan } from "../lumber/index.ts";
import { minorDigits } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import type { BuyingPlan, Way } from "./buying-plan.ts";
import type { BuyingProblem } from "./buying-problem.ts";
import { buyingPlan, buyingProblem } from "./plan-shape.ts";
import { checkGoodsLines, checkNeeds } from "./validate-goods.ts";
import { checkReceipt } from "./validate-receipts.ts";

const remedy = "The plan breaks its own rules: make it again, and report this.";
const hairMinor = 1e-4;

/** Every yard with a receipt is gone to or brings, and no other; none brings that does not deliver. */
function checkWays(findings: Findings, problem: BuyingProblem, plan: BuyingPlan): void {
  const places = (list: readonly { readonly yard: string }[]) =>
    list
      .map(({ yard }) => yard)
      .sort()
      .join(", ");
  const [bought, gone] = [places(plan.receipts), places(plan.ways)];
  const words = { allowed: `where something is bought: ${bought}`, received: gone };
  findings.holds(bought === gone, ["ways"], words);
  const twice = new Set(plan.receipts.map(({ yard }) => yard)).size < plan.receipts.length;
  findings.holds(!twice, ["receipts"], { allowed: "one for each yard", received: bought });
  for (const [at, { yard, way }] of plan.ways.entries()) {
    const terms = problem.yards.find((each) => each.yard === yard);
    const isHad = terms !== undefined && (way === "fetched" || terms.delivery !== undefined);
    findings.holds(isHad, ["ways", at + 1], {
      allowed: "a yard of the problem, delivered only where it delivers",
      received: `${yard} ${way}`,
    });
  }
}

/** The boards on the receipts are those of the buying list, at its prices. */
function checkBoardsBought(findings: Findings, plan: BuyingPlan): void {
  const onReceipts = plan.receipts.flatMap(({ yard, lines }) =>
    lines.flatMap(({ board, size, price, count }) => {
      if (board === undefined || typeof size !== "object") return [];
      return [{ name: [yard, board.section, board.timber], lengthM: size.si, price, count }];
    }),
  );
  const listed = plan.boards.buy.map(({ yard, section, timber, length, price, count }) => {
    return { name: [yard, section.name, timber], lengthM: length.si, price, count };
  });
  type Line = (typeof listed)[number];
  const keyOf = ({ name, lengthM, price }: Line) =>
    JSON.stringify([...name, lengthM.toFixed(6), price.si.toFixed(6)]);
  const counted = (lines: readonly Line[] = []) => lines.reduce((sum, line) => sum + line.count, 0);
  const [paid, wanted] = [grouped(onReceipts, keyOf), grouped(listed, keyOf)];
  for (const key of new Set([...paid.keys(), ...wanted.keys()])) {
    findings.same(counted(wanted.get(key)), counted(paid.get(key)), ["receipts", "boards", key]);
  }
}

/** Each floor that is not dismissed has a certificate that holds; a dismissed one is above the plan. */
function checkFloors(findings: Findings, problem: BuyingProblem, plan: BuyingPlan): void {
  const paid = plan.total.si - plan.boards.offcutWorth.si;
  const minor = 10 ** minorDigits(problem.currency);
  for (const [at, { yards, floor, dismissed, certificate }] of plan.floors.entries()) {
    const path = ["floors", at + 1];
    // Taxes are rounded once for each yard, half a minor unit at most.
    const slack = (yards.length + plan.receipts.length) / 2 / minor;
    findings.holds(!dismissed || floor.si >= paid - slack, path, {
      allowed: `a floor above ${paid}, to be dismissed by`,
      received: String(floor.si),
    });
    findings.holds(dismissed || certificate !== null, path, {
      allowed: "a certificate",
      received: "none",
    });
    if (certificate === null) continue;
    findings.same(certificate.floor.si, floor.si, [...path, "floor"], 1e-6);
    const problems = checkCertificate(certificate);
    findings.add(...problems.map((each) => ({ ...each, path: [...path, ...each.path] })));
  }
}

/** A plan said to be within so much of the cheapest says the same as a share. */
function checkProof(findings: Findings, { proof, total }: BuyingPlan): void {
  if (proof.kind === "cheapest") return;
  const { above, share } = proof;
  const words = { allowed: "nothing or more", received: String(above.si) };
  findings.holds(above.si >= 0, ["proof", "above"], words);
  findings.same(total.si > 0 ? above.si / total.si : 0, share, ["proof", "share"], 1e-6);
}

/**
 * Checks a buying plan against its problem by rules stated afresh, sharing nothing with the planner:
 * the boards and how they are cut, as `validateBoardPlan`; each receipt line from the price list; each
 * need covered at one yard or said not to be sold; sums, tax rounded once a yard, delivery and least
 * order, trips from what the car carries; yards in one way each; the total; and every certificate.
 *
 * @param problem what was planned
 * @param plan as `planBuying` gives it
 * @returns all that is wrong; an empty list for a sound plan
 * @throws ProblemError for what is no buying problem or no plan at all; what is wrong with a plan is in
 * the list
 * @rule total = sum over yards of goods + tax rounded once + delivery or trips x trip cost
 * @source common practice
 * @example
 * const boards = { pieces: [], stock: [], kerf: millimetre, shortfall: millimetre }
 * const none = { boards, needs: [], prices: [], yards: [], currency: "USD", taxIncluded: false, carriesBulk: false }
 * const zero = times(0, inch)
 * const certificate = { pieces: [], boards: [], others: [], kerf: millimetre, offcuts: null, floor: money(0) }
 * const cut = { cuts: [], buy: [], cost: money(0), proof: { kind: "optimal" }, boughtCount: 0, keptCount: 0, boughtLength: zero, keptLength: zero, piecesLength: zero, cutCount: 0, yield: 1, waste: 0, shortened: [], spliced: [], offcutWorth: money(0), certificate, remarks: [], cautions: [] }
 * const plan = { boards: cut, receipts: [], ways: [], notSold: [], total: money(0), proof: { kind: "cheapest", words: "No cheaper plan exists" }, floors: [] }
 * validateBuyingPlan(none, plan) // => []
 */
export function validateBuyingPlan(problem: BuyingProblem, plan: BuyingPlan): readonly Problem[] {
  requireShape(problem, buyingProblem, ["problem"]);
  requireShape(plan, buyingPlan, ["plan"]);
  const findings = new Findings(remedy, hairMinor);
  const ways = new Map<string, Way>(plan.ways.map(({ yard, way }) => [yard, way]));
  const delivered = [...ways].flatMap(([yard, way]) => (way === "delivered" ? [yard] : []));
  const ofBoards = validateBoardPlan(problem.boards, plan.boards, { delivered });
  findings.add(...ofBoards.map((each) => ({ ...each, path: ["boards", ...each.path] })));
  checkWays(findings, problem, plan);
  checkBoardsBought(findings, plan);
  for (const [at, receipt] of plan.receipts.entries()) {
    const terms = problem.yards.find(({ yard }) => yard === receipt.yard);
    const way = ways.get(receipt.yard);
    if (terms === undefined || way === undefined) continue;
    checkReceipt(findings, { problem, receipt, terms, way, path: ["receipts", at + 1] });
    const { yard, lines } = receipt;
    checkGoodsLines(findings, problem, { yard, lines, at: at + 1 });
  }
  checkNeeds(findings, problem, plan);
  const total = plan.receipts.reduce((sum, receipt) => sum + receipt.total.si, 0);
  findings.same(total, plan.total.si, ["total"], 1e-6);
  checkProof(findings, plan);
  checkFloors(findings, problem, plan);
  return findings.problems;
}
