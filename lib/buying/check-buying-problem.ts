import { requireRecord } from "../check/index.ts";
import { need, priceLine, yardTerms } from "../cost/shapes.ts";
import { checkBoardProblem } from "../lumber/check-board-problem.ts";
import {
  type Checks,
  currencyCodes,
  kilogram,
  kilogramPerCubicMetre,
  times,
} from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { listed } from "../measure/shape.ts";
import type { BuyingProblem } from "./buying-problem.ts";

const payload = { min: kilogram, max: times(100_000, kilogram) };
const density = { min: kilogramPerCubicMetre, max: times(5000, kilogramPerCubicMetre) };

/** All that is wrong with a buying problem, row by row. */
export function checkBuyingProblem(problem: BuyingProblem): Checks {
  requireRecord(problem, ["problem"]);
  const checks = checkBoardProblem(problem.boards);
  listed(need)(checks, problem.needs, ["needs"]);
  listed(priceLine)(checks, problem.prices, ["prices"]);
  listed(yardTerms)(checks, problem.yards, ["yards"]);
  checks
    .choice(problem.currency, currencyCodes, ["currency"])
    .choice(problem.taxIncluded, [true, false], ["taxIncluded"])
    .choice(problem.carriesBulk, [true, false], ["carriesBulk"]);
  if (problem.carPayload !== undefined)
    checks.quantity(problem.carPayload, "mass", ["carPayload"], payload);
  if (problem.woodDensity !== undefined)
    checks.quantity(problem.woodDensity, "density", ["woodDensity"], density);
  if (checks.problems.length > 0) return checks;
  return checkYards(checks, problem);
}

export function checkSolver(
  checks: Checks,
  { solve, seconds = 10 }: { readonly solve?: unknown; readonly seconds?: number },
): void {
  checks
    .unless(typeof solve === "function", {
      code: solve === undefined || solve === null ? "missing" : "unreadable",
      path: ["solve"],
      allowed: "a solver of integer programmes, as a function",
      received: receivedText(solve ?? undefined),
      remedy: "Hand in the solver that the workbook or the command line has.",
    })
    .number(seconds, ["seconds"], { min: 0.1, max: 600 });
}

/** Every yard has one row of terms, and what is sold is sold at one of them. */
function checkYards(checks: Checks, problem: BuyingProblem): Checks {
  const names = problem.yards.map(({ yard }) => yard);
  const first = new Map<string, number>();
  for (const [i, yard] of names.entries()) {
    const before = first.get(yard);
    if (before === undefined) first.set(yard, i);
    else {
      checks.add({
        code: "duplicate",
        path: ["yards", i + 1, "yard"],
        allowed: "one row for each yard",
        received: yard,
        remedy: "Put the two rows together, or name one of the yards otherwise.",
        also: [["yards", before + 1, "yard"]],
      });
    }
  }
  const known = (yard: string | null, path: readonly (string | number)[]) => {
    if (yard === null || first.has(yard)) return;
    checks.add({
      code: "unknown",
      path,
      allowed: names.length > 0 ? names.join(" or ") : "a yard with terms; there is none",
      received: yard,
      remedy: "Add the yard with its tax and trip cost, or leave the row out.",
    });
  };
  for (const [i, { yard }] of problem.boards.stock.entries())
    known(yard, ["boards", "stock", i + 1, "yard"]);
  for (const [i, { yard }] of problem.prices.entries()) known(yard, ["prices", i + 1, "yard"]);
  return checks;
}
