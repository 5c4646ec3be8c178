import { describe, expect, it } from "vitest";
import {
  amount,
  type BoardPlan,
  type BoardProblem,
  inch,
  money,
  planBoards,
  planBoardsAtYard,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { bedPieces, board, feet, inches, kept, piece, rejection, section } from "./make.ts";
import { boardProblem, notingSolver, solver } from "./solver.ts";

async function planned(problem: BoardProblem): Promise<BoardPlan> {
  const plan = await planBoards(problem, { solve: await solver() });
  expect(validateBoardPlan(problem, plan)).toEqual([]);
  return plan;
}

const layouts = (plan: BoardPlan) =>
  plan.cuts.map((cut) => cut.pieces.map((each) => Number(amount(each.length, inch).toFixed(6))));

describe("the pieces of a 4 ft by 8 ft frame of 2-by boards (common practice)", () => {
  const eight = [board(96, 20)];

  it.each([0, 1 / 16, 1 / 8, 1 / 4])(
    "lap sides: three 8 ft boards at a shortfall of %d in",
    async (s) => {
      const plan = await planned(boardProblem(bedPieces(), eight, { shortfall: inches(s) }));
      expect(plan.cuts).toHaveLength(3);
      expect(plan.shortened).toEqual([]);
      expect(plan.cost.si).toBe(60);
      expect(plan.proof).toEqual({ kind: "optimal" });
    },
  );

  it("lap ends: four boards where no piece may be short", async () => {
    const plan = await planned(
      boardProblem(bedPieces({ lap: "ends" }), eight, { shortfall: inches(0) }),
    );
    expect(plan.cuts).toHaveLength(4);
    expect(plan.shortened).toEqual([]);
  });

  it("lap ends: three boards with the shipped allowance, naming the 48 in pieces", async () => {
    const plan = await planned(boardProblem(bedPieces({ lap: "ends" }), eight));
    expect(plan.cuts).toHaveLength(3);
    expect(plan.shortened).toMatchObject([{ name: "A-1 end", bed: "A-1", count: 2 }]);
    // One cut of 1/8 in in 96 in leaves two pieces of 47 15/16 in.
    expect(amount(plan.shortened[0]?.cut ?? feet(0), inch)).toBeCloseTo(47.9375, 9);
    expect(amount(plan.shortened[0]?.short ?? feet(0), inch)).toBeCloseTo(1 / 16, 9);
  });

  it("is cut with one stroke where two pieces use a board up", async () => {
    const plan = await planned(boardProblem(bedPieces({ lap: "ends" }), eight));
    expect(plan.cuts.map((cut) => cut.cutCount).sort()).toEqual([1, 1, 1]);
    expect(plan.cuts.filter((cut) => cut.offcut.si === 0)).toHaveLength(1);
  });
});

describe("kept boards", () => {
  it("are used where that lowers the bill, and only there", async () => {
    const plan = await planned(
      boardProblem([piece(90, 2)], [board(96, 20), kept(92), kept(40), kept(30)]),
    );
    expect(plan.cost.si).toBe(20);
    expect(plan.keptCount).toBe(1);
    expect(plan.cuts.map((cut) => [cut.board, cut.source])).toEqual([
      ["K1", "kept"],
      ["B1", "North"],
    ]);
    expect(plan.cautions.map((caution) => caution.id)).toContain("nails-in-old-boards");
  });

  it("may do without any price", async () => {
    const plan = await planned(boardProblem([piece(90, 1)], [kept(96)]));
    expect(plan.cost.si).toBe(0);
    expect(plan.buy).toEqual([]);
  });

  it("are as many as the limit says", async () => {
    const plan = await planned(
      boardProblem([piece(90, 3)], [board(96, 20), kept(92, { limit: 2 })]),
    );
    expect(plan.cost.si).toBe(20);
    expect(plan.keptCount).toBe(2);
  });

  it("that fit to the hair need no cut", async () => {
    const plan = await planned(boardProblem([piece(96, 1)], [kept(96)]));
    expect(plan.cuts[0]).toMatchObject({ cutCount: 0, offcut: { si: 0 } });
  });
});

describe("timber", () => {
  const both = [board(96, 20, { timber: "treated" }), board(96, 30, { timber: "cedar" })];

  it("is the only one priced, and the plan says so", async () => {
    const plan = await planned(
      boardProblem([piece(40, 1)], [board(96, 20, { timber: "treated" })]),
    );
    expect(plan.cuts[0]?.timber).toBe("treated");
    expect(plan.remarks.map((remark) => remark.text).join()).toContain(
      "treated, the only timber priced",
    );
    expect(plan.cautions.map((caution) => caution.id)).toContain("sawing-treated-wood");
  });

  it("is the one chosen where there are several", async () => {
    const problem = boardProblem([piece(40, 1)], both);
    const plan = await planBoards(problem, { solve: await solver(), timber: "cedar" });
    expect(plan.cost.si).toBe(30);
    expect(plan.remarks.map((remark) => remark.text).join()).toContain("cedar, as chosen");
    expect(await rejection(planBoards(problem, { solve: await solver() }))).toEqual([
      "missing pieces.1.timber",
    ]);
  });

  it("is what the piece says", async () => {
    const pieces = [
      piece(40, 1, { timber: "Cedar" }),
      piece(50, 1, { timber: "treated", name: "x" }),
    ];
    const plan = await planned(boardProblem(pieces, both));
    expect(plan.buy.map((line) => line.timber).sort()).toEqual(["cedar", "treated"]);
    expect(plan.remarks).toEqual([]);
  });
});

describe("what can't be planned", () => {
  it.each<[string, () => BoardProblem, string[]]>([
    [
      "a piece longer than every board",
      () => boardProblem([piece(97, 1), piece(40, 1)], [board(96, 20)]),
      ["no-fit pieces.1.length"],
    ],
    [
      "a section without a price",
      () => boardProblem([piece(40, 1, { section: section("2x6") })], [board(96, 20)]),
      ["unpriced pieces.1.section"],
    ],
    [
      "another timber only",
      () =>
        boardProblem([piece(40, 1, { timber: "cedar" })], [board(96, 20, { timber: "treated" })]),
      ["unpriced pieces.1.section"],
    ],
    [
      "kept boards that do not suffice",
      () => boardProblem([piece(90, 2)], [kept(96)]),
      ["unpriced pieces.1.section"],
    ],
    [
      "limits too small",
      () => boardProblem([piece(90, 3)], [board(96, 20, { limit: 2 })]),
      ["contradiction pieces.1.section"],
    ],
    ["no board at all", () => boardProblem([piece(90, 3)], []), ["unpriced pieces.1.section"]],
    [
      "two currencies",
      () =>
        boardProblem(
          [piece(40, 1)],
          [board(96, 1, { price: money(20, "USD") }), board(120, 1, { price: money(20, "EUR") })],
        ),
      ["mixed-currency stock.2.price"],
    ],
    [
      "a negative price",
      () => boardProblem([piece(40, 1)], [board(96, -1)]),
      ["too-small stock.1.price"],
    ],
    [
      "a price in inches",
      () => boardProblem([piece(40, 1)], [board(96, 1, { price: inches(20) as never })]),
      ["wrong-unit stock.1.price"],
    ],
    [
      "no price",
      () => boardProblem([piece(40, 1)], [board(96, 1, { price: undefined as never })]),
      ["missing stock.1.price"],
    ],
    [
      "an absurd price",
      () => boardProblem([piece(40, 1)], [board(96, 1e9)]),
      ["too-large stock.1.price"],
    ],
    [
      "half a board in stock",
      () => boardProblem([piece(40, 1)], [board(96, 20, { limit: 1.5 })]),
      ["unreadable stock.1.limit"],
    ],
    [
      "a board of no length",
      () => boardProblem([piece(40, 1)], [board(0, 20)]),
      ["too-small stock.1.length"],
    ],
    [
      "a negative count",
      () => boardProblem([piece(40, -1)], [board(96, 20)]),
      ["too-small pieces.1.count"],
    ],
    [
      "a piece of no length",
      () => boardProblem([piece(0, 1)], [board(96, 20)]),
      ["too-small pieces.1.length"],
    ],
    [
      "a mile",
      () => boardProblem([piece(63360, 1)], [board(96, 20)]),
      ["too-large pieces.1.length"],
    ],
    [
      "a bare length",
      () => boardProblem([piece(40, 1, { length: 40 as never })], [board(96, 20)]),
      ["wrong-unit pieces.1.length"],
    ],
    [
      "text for a section",
      () => boardProblem([piece(40, 1, { section: "2x12" as never })], [board(96, 20)]),
      ["unreadable pieces.1.section"],
    ],
    ["a negative kerf", () => boardProblem([], [], { kerf: inches(-1) }), ["too-small kerf"]],
    ["an inch of kerf", () => boardProblem([], [], { kerf: inches(1) }), ["too-large kerf"]],
    ["no kerf given", () => boardProblem([], [], { kerf: undefined as never }), ["missing kerf"]],
    [
      "a foot of shortfall",
      () => boardProblem([], [], { shortfall: feet(1) }),
      ["too-large shortfall"],
    ],
    [
      "no lists",
      () => boardProblem(undefined as never, undefined as never),
      ["missing pieces", "missing stock"],
    ],
  ])("is named: %s", async (_, problem, problems) => {
    expect(await rejection(planBoards(problem(), { solve: await solver() }))).toEqual(problems);
  });

  it("names the beds of a piece that fits nothing", async () => {
    const pieces = ["A-1", "A-2"].map((bed) => piece(97, 2, { bed, name: `${bed} side` }));
    const promise = planBoards(boardProblem(pieces, [board(96, 20)]), { solve: await solver() });
    await expect(promise).rejects.toThrow(/A-1, A-2/);
  });

  it("is refused where the seconds make no sense", async () => {
    const solve = await solver();
    for (const seconds of [0, -1, Number.NaN, 1e9]) {
      const problems = await rejection(planBoards(boardProblem([], []), { solve, seconds }));
      expect(problems).toHaveLength(1);
    }
  });

  it("is nothing for no pieces", async () => {
    const plan = await planned(boardProblem([piece(40, 0)], [board(96, 20)]));
    expect(plan).toMatchObject({ cuts: [], cost: { si: 0 }, yield: 1, waste: 0 });
  });
});

describe("the saw", () => {
  it("finds that two halves of a board are a hair short of 4 ft", async () => {
    const at = async (length: number) =>
      (await planned(boardProblem([piece(length, 2)], [board(96, 20)], { shortfall: inches(0) })))
        .cuts.length;
    expect(await at(48)).toBe(2);
    expect(await at(47.9375)).toBe(1);
  });

  it("takes nothing at zero kerf", async () => {
    const problem = boardProblem([piece(48, 2)], [board(96, 20)], {
      kerf: inches(0),
      shortfall: inches(0),
    });
    expect((await planned(problem)).cuts).toHaveLength(1);
  });

  it("takes 1.41 kerf for a mitre", async () => {
    const mitred = (length: number) => piece(length, 2, { mitred: true });
    const at = async (length: number) =>
      (await planned(boardProblem([mitred(length)], [board(96, 20)], { shortfall: inches(0) })))
        .cuts.length;
    expect(await at(47.9375)).toBe(2);
    expect(await at(47.90625)).toBe(1);
  });

  it("cuts long before short, square before mitred", async () => {
    const pieces = [piece(20, 1, { mitred: true, name: "m" }), piece(10, 1), piece(30, 1)];
    expect(layouts(await planned(boardProblem(pieces, [board(96, 20)])))).toEqual([[30, 10, 20]]);
  });

  it("gives boards cut alike one layout number", async () => {
    const plan = await planned(boardProblem([piece(40, 6)], [board(96, 20)]));
    expect(plan.cuts.map((cut) => cut.layout)).toEqual([1, 1, 1]);
  });
});

describe("planBoardsAtYard", () => {
  const stock = [board(96, 20), board(96, 18, { yard: "South" }), kept(50)];

  it("buys at that yard only, and uses kept boards", async () => {
    const problem = boardProblem([piece(90, 1), piece(48, 1)], stock);
    const plan = await planBoardsAtYard(problem, { solve: await solver(), yard: "North" });
    expect(plan.buy).toMatchObject([{ yard: "North", count: 1, sum: { si: 20 } }]);
    expect(plan.keptCount).toBe(1);
  });

  it("names what that yard has not", async () => {
    const problem = boardProblem([piece(90, 1)], stock);
    const options = { solve: await solver(), yard: "East" };
    expect(await rejection(planBoardsAtYard(problem, options))).toEqual([
      "unpriced pieces.1.section",
    ]);
  });

  it.each([
    [board(96, -1), "too-small"],
    [board(0, 20), "too-small"],
    [board(96, 20, { price: 20 as never }), "wrong-unit"],
  ])("refuses a bad board of that yard", async (bad, code) => {
    const options = { solve: await solver(), yard: "North" };
    const problems = await rejection(planBoardsAtYard(boardProblem([], [bad]), options));
    expect(problems.join()).toContain(code);
  });
});

describe("long work", () => {
  it("tells how far it is, and stops when asked", async () => {
    const pieces = [piece(40, 1), piece(40, 1, { section: section("2x6") })];
    const problem = boardProblem(pieces, [
      board(96, 20),
      board(96, 9, { section: section("2x6") }),
    ]);
    const words: string[] = [];
    await planBoards(problem, { solve: await solver(), progress: (text) => words.push(text) });
    expect(words).toEqual(["Planning 2x6 (1 of 2)", "Planning 2x12 (2 of 2)"]);
    const signal = { aborted: false };
    const stopping = planBoards(problem, {
      solve: await solver(),
      signal,
      progress: () => (signal.aborted = true),
    });
    await expect(stopping).rejects.toMatchObject({ name: "AbortError" });
  });

  it("plans nothing twice that it remembers", async () => {
    const { solve, programs } = await notingSolver();
    const remembered = new Map();
    const problem = boardProblem(bedPieces(), [board(96, 20)]);
    const first = await planBoards(problem, { solve, remembered });
    const solved = programs.length;
    expect(await planBoards(problem, { solve, remembered })).toEqual(first);
    expect(programs).toHaveLength(solved);
  });

  it("survives being cloned on its way to a worker", async () => {
    const problem = boardProblem(bedPieces(), [board(96, 20)]);
    const plan = await planned(problem);
    expect(await planned(structuredClone(problem))).toEqual(structuredClone(plan));
  });
});
