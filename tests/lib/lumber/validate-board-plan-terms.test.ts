import { describe, expect, it } from "vitest";
import {
  type BoardPlan,
  type BoardProblem,
  type CutBoard,
  inch,
  money,
  over,
  planBoards,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { board, inches, piece } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

// How boards are sold, fetched, squared and joined: a sound plan each, and what is found when one
// thing of it is changed.

const solve = await solver();

async function sound(problem: BoardProblem): Promise<BoardPlan> {
  const plan = await planBoards(problem, { solve });
  expect(validateBoardPlan(problem, plan)).toEqual([]);
  return plan;
}

const places = (problem: BoardProblem, plan: BoardPlan): string =>
  validateBoardPlan(problem, plan)
    .map(({ path }) => path.join("."))
    .join(" ");

const withCuts = (plan: BoardPlan, over: Partial<CutBoard>): BoardPlan => ({
  ...plan,
  cuts: plan.cuts.map((cut) => ({ ...cut, ...over })),
});

describe("validateBoardPlan and boards cut at the yard", () => {
  const over = { loadLength: inches(100), cutAtYard: true, squaring: inches(0.5) };
  const problem = boardProblem([piece(80, 1), piece(60, 1)], [board(144, 20)], over);

  it("finds parts that are too long, pieces on no part, and cuts nobody asked for", async () => {
    const plan = await sound(problem);
    const [cut] = plan.cuts;
    const { atYard } = cut ?? {};
    expect(atYard?.pieces).toBe(1);
    if (!atYard) return;
    const changed = (of: Partial<typeof atYard>) =>
      places(problem, withCuts(plan, { atYard: { ...atYard, ...of } }));
    expect(changed({ first: inches(110) })).toContain("cuts.1.atYard");
    expect(changed({ first: inches(20) })).toContain("cuts.1.atYard");
    expect(changed({ first: inches(62) })).toContain("cuts.1");
    expect(changed({ pieces: 2 })).toContain("cuts.1");
    expect(changed({ pieces: 3 })).toContain("cuts.1.atYard.pieces");
    expect(changed({ rest: inches(9) })).toContain("cuts.1.atYard.rest");
    expect(places(problem, withCuts(plan, { atYard: null }))).toContain("cuts.1.atYard");
    const whole = { ...problem, cutAtYard: false };
    expect(places(whole, plan)).toContain("cuts.1.atYard");
    const short = { ...problem, loadLength: inches(70) };
    expect(places(short, plan)).toContain("cuts.1.atYard");
  });

  it("asks for no cut of a board that is brought", async () => {
    const plan = await sound({ ...problem, loadLength: inches(144) });
    expect(plan.cuts[0]?.atYard).toBeNull();
    expect(validateBoardPlan(problem, plan).length).toBeGreaterThan(0);
    expect(validateBoardPlan(problem, plan, { delivered: ["North"] })).toEqual([]);
  });

  it("finds an end that was not squared", async () => {
    const plan = await sound(problem);
    expect(places(problem, withCuts(plan, { squared: inches(0) }))).toContain("cuts.1.squared");
    const wider = { ...problem, squaring: inches(6) };
    expect(places(wider, plan)).toContain("cuts.1.squared");
  });
});

describe("validateBoardPlan and how boards are sold", () => {
  const stock = [board(96, 20, { step: 2 })];
  const problem = boardProblem([piece(90, 3)], stock);

  it("finds bundles that are broken, and boards too few or too many", async () => {
    const plan = await sound(problem);
    expect(plan.buy).toMatchObject([{ count: 4, unused: 1 }]);
    const changed = (count: number, unused: number) => {
      const buy = plan.buy.map((line) => {
        return { ...line, count, unused, sum: money(line.price.si * count) };
      });
      return places(problem, { ...plan, buy });
    };
    expect(changed(3, 0)).toContain("buy.1");
    expect(changed(4, 0)).toContain("buy.");
    expect(changed(6, 3)).toContain("buy.1");
    const limited = { ...problem, stock: stock.map((each) => ({ ...each, limit: 3 })) };
    expect(places(limited, plan)).toContain("buy.1");
    const fromFive = { ...problem, stock: stock.map((each) => ({ ...each, from: 5 })) };
    expect(places(fromFive, plan)).toContain("buy.1");
  });

  it("finds a price that holds from more boards on", async () => {
    const breaks = boardProblem([piece(90, 3)], [board(96, 20), board(96, 18, { from: 3 })]);
    const plan = await sound(breaks);
    expect(plan.cost.si).toBe(54);
    const later = { ...breaks, stock: [board(96, 20), board(96, 18, { from: 4 })] };
    expect(places(later, plan)).toContain("buy.1");
  });
});

describe("validateBoardPlan and offcuts", () => {
  it("finds a worth that is another", async () => {
    const offcuts = { from: inches(24), worth: over(money(0.05), inch) };
    const problem = boardProblem([piece(60, 1), piece(80, 1)], [board(96, 20)], { offcuts });
    const plan = await sound(problem);
    // Of 96 in, 60 in and a cut leave 35 7/8 in; 80 in leave less than 24.
    expect(plan.offcutWorth.si).toBeCloseTo(35.875 * 0.05, 9);
    expect(places(problem, { ...plan, offcutWorth: money(2) })).toBe("offcutWorth");
    const none = boardProblem(problem.pieces, problem.stock);
    expect(places(none, plan)).toBe("offcutWorth");
  });
});

describe("validateBoardPlan and joints", () => {
  const long = piece(150, 1, { stakesAt: [inches(50), inches(75), inches(100)] });
  const problem = boardProblem([long], [board(96, 20)], { splice: true });

  it("finds joints beside the stakes, parts that don't add up, and joints nobody allows", async () => {
    const plan = await sound(problem);
    expect(plan.spliced).toMatchObject([{ onStakes: true, parts: [{}, {}] }]);
    const changed = (parts: number[], onStakes = true) =>
      places(problem, {
        ...plan,
        spliced: plan.spliced.map((each) => ({ ...each, onStakes, parts: parts.map(inches) })),
      });
    expect(changed([70, 80])).toContain("onStakes");
    expect(changed([75, 70])).toContain("parts");
    expect(changed([150])).toContain("parts");
    expect(changed([75, 75], false)).toContain("onStakes");
    expect(places({ ...problem, splice: false }, plan)).toContain("spliced");
    expect(places({ ...problem, pieces: [piece(150, 2)] }, plan)).toContain("spliced");
  });
});
