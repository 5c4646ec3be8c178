import { describe, expect, it } from "vitest";
import {
  type BuyingPlan,
  type BuyingProblem,
  checkCertificate,
  firstFitBuying,
  money,
  planBuying,
  type StockBoard,
  validateBuyingPlan,
  type YardTerms,
} from "../../../lib/index.ts";
import { board, inches, piece, section } from "../lumber/make.ts";
import { solver } from "../lumber/solver.ts";
import { dice } from "./dice.ts";
import { twoYards } from "./two-yards.ts";

const yard = (name: string, over: Partial<YardTerms> = {}): YardTerms => ({
  yard: name,
  tax: 0,
  taxOn: "goods",
  ...over,
});

const stockAt = (name: string, prices: Readonly<Record<number, number>>): StockBoard[] =>
  Object.entries(prices).map(([lengthIn, price]) =>
    board(Number(lengthIn), 0, { yard: name, price: money(price, "USD") }),
  );

function problemOf(over: Partial<BuyingProblem["boards"]>, more: Partial<BuyingProblem> = {}) {
  const boards = { pieces: [], stock: [], kerf: inches(1 / 8), shortfall: inches(0), ...over };
  const rest = { needs: [], prices: [], currency: "USD", taxIncluded: false, carriesBulk: false };
  return { boards, yards: [yard("Alder"), yard("Birch")], ...rest, ...more };
}

async function planned(
  problem: BuyingProblem,
  improved?: (plan: BuyingPlan) => void,
): Promise<BuyingPlan> {
  const solve = await solver();
  const plan = await planBuying(problem, { solve, ...(improved ? { improved } : {}) });
  expect(validateBuyingPlan(problem, plan)).toEqual([]);
  return plan;
}

describe("planBuying", () => {
  // Worked by hand: two 8 ft boards are 40 at Alder with a trip of 3; one 16 ft board at Birch is 38 with
  // a trip of 6, and two 95 in pieces fit on it.
  it("counts the trip when it chooses the yard", async () => {
    const boards = {
      pieces: [piece(95, 2)],
      stock: [...stockAt("Alder", { 96: 20 }), ...stockAt("Birch", { 192: 38 })],
    };
    const trips = (alder: number, birch: number) => ({
      yards: [
        yard("Alder", { tripCost: money(alder, "USD") }),
        yard("Birch", { tripCost: money(birch, "USD") }),
      ],
    });
    const far = await planned(problemOf(boards, trips(3, 6)));
    expect(far.receipts.map((receipt) => receipt.yard)).toEqual(["Alder"]);
    expect(far.total.si).toBe(43);
    const near = await planned(problemOf(boards, trips(3, 4)));
    expect(near.receipts.map((receipt) => receipt.yard)).toEqual(["Birch"]);
    expect(near.total.si).toBe(42);
  });

  // By hand: at 20 each, or 17 from ten on. Nine needed are 180, ten at 17 are 170; eight needed are 160.
  it("takes a price break where the boards beyond the need are paid for by it", async () => {
    const stock = [
      ...stockAt("Alder", { 96: 20 }),
      { ...board(96, 0), yard: "Alder", price: money(17, "USD"), from: 10 },
    ];
    const nine = await planned(problemOf({ pieces: [piece(90, 9)], stock }));
    expect(nine.total.si).toBe(170);
    expect(nine.boards.buy).toMatchObject([{ count: 10, unused: 1 }]);
    const eight = await planned(problemOf({ pieces: [piece(90, 8)], stock }));
    expect(eight.total.si).toBe(160);
  });

  // By hand: three boards are 60, a trip 5, a delivery 9; boards too long for the car are brought.
  it("has an order brought where the car is too short", async () => {
    const stock = stockAt("Alder", { 96: 20 });
    const boards = { pieces: [piece(90, 3)], stock };
    const terms = { tripCost: money(5, "USD"), delivery: money(9, "USD") };
    const cheap = await planned(problemOf(boards, { yards: [yard("Alder", terms)] }));
    expect(cheap.ways).toEqual([{ yard: "Alder", way: "fetched" }]);
    expect(cheap.total.si).toBe(65);
    const long = problemOf(
      { ...boards, loadLength: inches(60) },
      { yards: [yard("Alder", terms)] },
    );
    const brought = await planned(long);
    expect(brought.ways).toEqual([{ yard: "Alder", way: "delivered" }]);
    expect(brought.total.si).toBe(69);
  });

  it("leaves out what is too long for the car, and says why", async () => {
    const stock = stockAt("Alder", { 96: 20, 192: 30 });
    const boards = { pieces: [piece(90, 2)], stock, loadLength: inches(100) };
    const plan = await planned(problemOf(boards));
    expect(plan.total.si).toBe(40);
    expect(plan.boards.remarks.map(({ text }) => text)).toEqual([
      "2x12 of 16 ft (4877 mm) at Alder is left out: it is longer than the car carries, 8 ft 4 in (2540 mm), and it is not to be cut there.",
    ]);
    const cut = await planned(problemOf({ ...boards, cutAtYard: true }));
    expect(cut.total.si).toBe(30);
    expect(cut.boards.remarks).toEqual([]);
    expect(cut.boards.cuts[0]?.atYard).toMatchObject({ pieces: 1 });
  });

  it("joins a piece longer than every board over its stakes, where that is allowed", async () => {
    const long = piece(180, 2, { part: "side", stakesAt: [inches(60), inches(90), inches(120)] });
    const problem = problemOf({
      pieces: [long],
      stock: stockAt("Alder", { 96: 20 }),
      splice: true,
    });
    const plan = await planned(problem);
    expect(plan.boards.spliced).toMatchObject([{ onStakes: true, count: 2 }]);
    expect(plan.boards.spliced[0]?.parts.map((part) => part.si / 0.0254)).toEqual([90, 90]);
    expect(plan.boards.boughtCount).toBe(4);
  });

  it("gives a plan at once, then better ones, and says how far each may be from the cheapest", async () => {
    const problem = twoYards();
    const steps: BuyingPlan[] = [];
    const plan = await planned(problem, (step) => steps.push(step));
    expect(steps.length).toBeGreaterThan(0);
    const totals = [...steps, plan].map((step) => step.total.si);
    expect(totals).toEqual([...totals].sort((a, b) => b - a));
    for (const step of steps) {
      expect(validateBuyingPlan(problem, step)).toEqual([]);
      if (step.proof.kind !== "within") continue;
      expect(step.total.si - step.proof.above.si).toBeLessThanOrEqual(plan.total.si + 0.02);
      expect(step.proof.words).toMatch(
        /^At most \$[\d,.]+ \([\d.]+ %\) above the cheapest possible$/,
      );
    }
    expect(plan.proof.words).toBe("No cheaper plan exists");
  });

  it("stops when asked", async () => {
    const solve = await solver();
    const signal = { aborted: false };
    const stopped = planBuying(twoYards(), {
      solve,
      signal,
      improved: () => {
        signal.aborted = true;
      },
    });
    await expect(stopped).rejects.toMatchObject({ name: "AbortError" });
  });

  it("remembers: what was planned once is not given to the solver again", async () => {
    const solve = await solver();
    let programs = 0;
    const counted: typeof solve = (...given) => {
      programs++;
      return solve(...given);
    };
    const remembered = new Map();
    const first = await planBuying(twoYards(), { solve: counted, remembered });
    programs = 0;
    const again = await planBuying(twoYards(), { solve: counted, remembered });
    expect(again).toEqual(first);
    expect(programs).toBe(0);
  });

  it.each([1, 2])(
    "proves a hundred beds of ninety lengths to the cent (seed %d)",
    async (seed) => {
      const at = dice(seed);
      const sizes = Array.from({ length: 90 }, () => at.whole(24, 144));
      const pieces = sizes.map((size, i) =>
        piece(size, at.whole(4, 12), {
          bed: `A-${i}`,
          name: `A-${i} side`,
          section: section("2x12"),
        }),
      );
      const curve = { 96: 8, 120: 10.3, 144: 12, 168: 15.4, 192: 17, 240: 24.4 };
      const priced = (name: string, rate: number) =>
        stockAt(
          name,
          Object.fromEntries(
            Object.entries(curve).map(([length, base]) => [
              length,
              Math.round(95 * rate * base * (0.96 + 0.0008 * at.whole(0, 100))) / 100,
            ]),
          ),
        );
      const stock = [...priced("Alder", 1), ...priced("Birch", 1.04)];
      const plan = await planned(problemOf({ pieces, stock }));
      expect(plan.proof.words).toBe("No cheaper plan exists");
      for (const { certificate } of plan.floors) {
        if (certificate) expect(checkCertificate(certificate)).toEqual([]);
      }
      const hand = firstFitBuying(problemOf({ pieces, stock }));
      expect(plan.total.si).toBeLessThan(hand?.total.si ?? 0);
    },
    120_000,
  );
});
