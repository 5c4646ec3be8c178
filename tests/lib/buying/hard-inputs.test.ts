import { describe, expect, it } from "vitest";
import {
  type BoardProblem,
  type BuyingPlan,
  type BuyingProblem,
  money,
  type ProblemCode,
  ProblemError,
  planBuying,
  type StockBoard,
  validateBuyingPlan,
  type YardTerms,
} from "../../../lib/index.ts";
import { board, inches, piece, section } from "../lumber/make.ts";
import { solver } from "../lumber/solver.ts";

const yard = (name: string, over: Partial<YardTerms> = {}): YardTerms => ({
  yard: name,
  tax: 0.06,
  taxOn: "goods",
  tripCost: money(4, "USD"),
  ...over,
});

function problemOf(
  boards: Partial<BoardProblem>,
  over: Partial<BuyingProblem> = {},
): BuyingProblem {
  return {
    boards: {
      pieces: [piece(48, 8)],
      stock: [board(96, 20)],
      kerf: inches(1 / 8),
      shortfall: inches(0),
      ...boards,
    },
    needs: [],
    prices: [],
    yards: [yard("North")],
    currency: "USD",
    taxIncluded: false,
    carriesBulk: false,
    ...over,
  };
}

async function planned(problem: BuyingProblem, seconds = 3): Promise<BuyingPlan> {
  const plan = await planBuying(problem, { solve: await solver(), seconds });
  expect(validateBuyingPlan(problem, plan)).toEqual([]);
  return plan;
}

async function codesOf(problem: BuyingProblem): Promise<ProblemCode[]> {
  const solve = await solver();
  const error: unknown = await planBuying(problem, { solve }).catch((caught: unknown) => caught);
  if (!(error instanceof ProblemError)) throw error;
  return error.problems.map(({ code }) => code);
}

/** What no plan can cost less than: all length at the cheapest price by length, tax included. */
function lengthFloor(problem: BuyingProblem, tax: number): number {
  const { pieces, stock } = problem.boards;
  const lengthM = pieces.reduce((sum, each) => sum + each.count * each.length.si, 0);
  return lengthM * Math.min(...stock.map((each) => each.price.si / each.length.si)) * (1 + tax);
}

function floorOf(plan: BuyingPlan): number {
  return plan.total.si - (plan.proof.kind === "within" ? plan.proof.above.si : 0.01);
}

const stock: readonly StockBoard[] = [board(96, 20), board(144, 31), board(192, 43)];

describe("planBuying with hard input", () => {
  it("names a piece longer than every board, and its bed", async () => {
    const problem = problemOf({ pieces: [piece(97, 1, { bed: "A-7" })] });
    expect(await codesOf(problem)).toEqual(["no-fit"]);
  });

  it("names a section without a price", async () => {
    const problem = problemOf({ pieces: [piece(48, 2, { section: section("2x6") })] });
    expect(await codesOf(problem)).toEqual(["unpriced"]);
  });

  it("says that limits are too small", async () => {
    expect(await codesOf(problemOf({ stock: [board(96, 20, { limit: 3 })] }))).toEqual([
      "contradiction",
    ]);
  });

  it("says in words that boards can neither be fetched nor brought", async () => {
    const problem = problemOf(
      { loadLength: inches(60), pieces: [piece(90, 1)] },
      { yards: [yard("North", { delivery: money(9, "USD"), deliveryFrom: money(90_000, "USD") })] },
    );
    const solve = await solver();
    const error: unknown = await planBuying(problem, { solve }).catch((caught: unknown) => caught);
    if (!(error instanceof ProblemError)) throw error;
    expect(error.problems.map(({ code }) => code)).toEqual(["no-fit"]);
    expect(JSON.stringify(error.problems)).not.toContain("Infinity");
  });

  it("halves boards with a saw that takes nothing", async () => {
    const plan = await planned(problemOf({ kerf: inches(0) }));
    expect(plan.boards.boughtCount).toBe(4);
    expect(plan.proof.words).toBe("No cheaper plan exists");
  });

  it("takes boards that cost nothing", async () => {
    const plan = await planned(problemOf({ stock: [board(96, 0), board(192, 5)] }));
    expect(plan.total.si).toBe(4);
    expect(plan.proof.kind).toBe("cheapest");
  });

  it("goes to one of two equal yards", async () => {
    const both = ["North", "South"].flatMap((name) =>
      stock.map((each) => ({ ...each, yard: name })),
    );
    const one = await planned(problemOf({ stock }));
    const plan = await planned(
      problemOf({ stock: both }, { yards: [yard("North"), yard("South")] }),
    );
    expect(plan.total).toEqual(one.total);
    expect(plan.receipts).toHaveLength(1);
  });

  it("plans nothing for nothing", async () => {
    const plan = await planned(problemOf({ pieces: [] }));
    expect(plan.total.si).toBe(0);
    expect(plan.boards.cuts).toEqual([]);
  });

  it("plans 5,000 pieces of a few lengths", async () => {
    const pieces = [93, 45, 71, 30, 22].map((length) => piece(length, 1000));
    const problem = problemOf({ pieces, stock });
    const plan = await planned(problem);
    expect(floorOf(plan)).toBeGreaterThanOrEqual(lengthFloor(problem, 0.06) - 0.01);
    expect(plan.proof.kind === "within" ? plan.proof.share : 0).toBeLessThan(0.001);
  }, 60_000);

  it("plans 5,000 pieces, each of its own length, with a floor under the plan", async () => {
    const pieces = Array.from({ length: 5000 }, (_, i) => piece(12 + (i * 7919) / 500 / 1000, 1));
    const problem = problemOf({ pieces, stock });
    const plan = await planned(problem);
    expect(floorOf(plan)).toBeGreaterThanOrEqual(lengthFloor(problem, 0.06) - 0.01);
    expect(plan.proof.kind === "within" ? plan.proof.share : 0).toBeLessThan(0.05);
  }, 120_000);
});
