import { describe, expect, it } from "vitest";
import {
  type BoardPlan,
  type CutBoard,
  money,
  planBoards,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { bedPieces, board, inches, kept, piece, section } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

const problem = boardProblem(
  [...bedPieces({ cap: section("2x6") }), piece(50, 2, { name: "shelf" })],
  [
    board(96, 20),
    board(144, 31, { limit: 4 }),
    kept(60),
    board(144, 12, { section: section("2x6") }),
  ],
);
const solve = await solver();
const plan = await planBoards(problem, { solve });

const found = (changed: Partial<BoardPlan>) =>
  validateBoardPlan(problem, { ...plan, ...changed }).map((each) =>
    each.path.slice(0, 3).join("."),
  );

const [first] = plan.cuts as [CutBoard, ...CutBoard[]];
const withFirst = (over: Partial<CutBoard>) => ({
  cuts: [{ ...first, ...over }, ...plan.cuts.slice(1)],
});

describe("validateBoardPlan", () => {
  it("finds nothing wrong with a sound plan", () => {
    expect(validateBoardPlan(problem, plan)).toEqual([]);
  });

  it.each<[string, Partial<BoardPlan>, string]>([
    ["a board left out", { cuts: plan.cuts.slice(1) }, "count"],
    ["a piece made twice", withFirst({ pieces: [...first.pieces, ...first.pieces] }), "count"],
    [
      "a piece nobody asked for",
      withFirst({ pieces: [...first.pieces, { ...(first.pieces[0] ?? never()), name: "odd" }] }),
      "cuts",
    ],
    [
      "a piece too short",
      withFirst({ pieces: first.pieces.map((p) => ({ ...p, length: inches(12) })) }),
      "cuts",
    ],
    [
      "a piece too long",
      withFirst({ pieces: first.pieces.map((p) => ({ ...p, length: inches(200) })) }),
      "cuts.1",
    ],
    ["a board with no piece", withFirst({ pieces: [] }), "cuts.1"],
    ["an offcut that is not there", withFirst({ offcut: inches(50) }), "cuts.1.offcut"],
    ["a negative offcut", withFirst({ offcut: inches(-1) }), "cuts.1.offcut"],
    ["a wrong number of cuts", withFirst({ cutCount: 9 }), "cuts.1.cutCount"],
    ["a label twice", withFirst({ board: plan.cuts[1]?.board ?? "" }), "cuts.board"],
    ["a board the yard has not", withFirst({ length: inches(300) }), "cuts"],
    [
      "another timber's board",
      { cuts: plan.cuts.map((cut) => ({ ...cut, yard: "South" })) },
      "cuts",
    ],
    ["a lower cost", { cost: money(1) }, "cost"],
    ["a bill that forgets a line", { buy: plan.buy.slice(1) }, "buy"],
    [
      "a line with a wrong sum",
      { buy: plan.buy.map((line) => ({ ...line, sum: money(1) })) },
      "buy.1.sum",
    ],
    [
      "a price nobody asks",
      { buy: plan.buy.map((line) => ({ ...line, price: money(1) })) },
      "buy.1",
    ],
    ["a count of boards", { boughtCount: 99 }, "boughtCount"],
    ["a count of kept boards", { keptCount: 99 }, "keptCount"],
    ["a length bought", { boughtLength: inches(1) }, "boughtLength"],
    ["a length kept", { keptLength: inches(1) }, "keptLength"],
    ["a length of pieces", { piecesLength: inches(1) }, "piecesLength"],
    ["a yield", { yield: 0.5 }, "yield"],
    ["a waste", { waste: 0.9 }, "waste"],
    ["a number of cuts in all", { cutCount: 1 }, "cutCount"],
    [
      "a piece said to be short that is not",
      {
        shortened: [
          {
            name: "shelf",
            bed: "list",
            count: 2,
            asked: inches(50),
            cut: inches(49.9375),
            short: inches(0.0625),
          },
        ],
      },
      "shortened",
    ],
  ])("finds %s", (_, changed, place) => {
    expect(found(changed).some((path) => path.includes(place))).toBe(true);
  });

  it("finds more boards than there are", () => {
    const [short] = [
      boardProblem(
        problem.pieces,
        problem.stock.map((each) => ({ ...each, limit: 1 })),
      ),
    ];
    expect(validateBoardPlan(short, plan).length).toBeGreaterThan(0);
  });

  it("finds kerf that was not counted", () => {
    const free = boardProblem([piece(48, 2)], [board(96, 20)], {
      kerf: inches(0),
      shortfall: inches(0),
    });
    return planBoards(free, { solve }).then((halves) => {
      expect(validateBoardPlan(free, halves)).toEqual([]);
      const sawn = { ...free, kerf: inches(1 / 8) };
      expect(validateBoardPlan(sawn, halves).map((each) => each.path[0])).toContain("cuts");
    });
  });

  it("finds shortening that was not allowed", async () => {
    const ends = boardProblem(bedPieces({ lap: "ends" }), [board(96, 20)]);
    const short = await planBoards(ends, { solve });
    const strict = { ...ends, shortfall: inches(0) };
    expect(validateBoardPlan(strict, short).length).toBeGreaterThan(0);
  });

  it("finds like pieces of a bed cut to different lengths", () => {
    const cuts = plan.cuts.map((cut) => ({ ...cut, pieces: [...cut.pieces] }));
    const at = cuts.find((cut) => cut.pieces.some((p) => p.name === "shelf"));
    const i = at?.pieces.findIndex((p) => p.name === "shelf") ?? 0;
    const old = at?.pieces[i];
    if (at && old) at.pieces[i] = { ...old, length: inches(49.9375) };
    expect(found({ cuts }).join()).toContain("alike");
  });
});

function never(): never {
  throw new Error("the plan has no piece on its first board");
}
