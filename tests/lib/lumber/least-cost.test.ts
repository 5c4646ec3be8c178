import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BoardPlan,
  type BoardProblem,
  millimetre,
  planBoards,
  type StockBoard,
  times,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { leastCost, type TinyBoard } from "./brute-force.ts";
import { board, inches, kept, piece, rejection } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

async function planned(problem: BoardProblem): Promise<BoardPlan> {
  const plan = await planBoards(problem, { solve: await solver() });
  expect(validateBoardPlan(problem, plan)).toEqual([]);
  return plan;
}

const tinyPieces = fc.array(fc.integer({ min: 3, max: 24 }), { minLength: 1, maxLength: 6 });
const tinyBoards = fc.array(
  fc.record({
    length: fc.integer({ min: 24, max: 60 }),
    price: fc.integer({ min: 0, max: 30 }),
    limit: fc.constantFrom(1, 2, Number.POSITIVE_INFINITY),
  }),
  { minLength: 1, maxLength: 3 },
);

function tinyProblem(
  lengths: readonly number[],
  boards: readonly TinyBoard[],
  kerf: number,
): BoardProblem {
  const pieces = lengths.map((length, i) => piece(length, 1, { bed: `B-${i}`, name: `B-${i}` }));
  const stock = boards.map(
    ({ length, price, limit }): StockBoard =>
      board(length, price, Number.isFinite(limit) ? { limit } : {}),
  );
  return boardProblem(pieces, stock, { kerf: inches(kerf), shortfall: inches(0) });
}

describe("the least cost", () => {
  it("is what trying everything gives", async () => {
    const solve = await solver();
    await fc.assert(
      fc.asyncProperty(
        tinyPieces,
        tinyBoards,
        fc.constantFrom(0, 0.5),
        async (lengths, boards, kerf) => {
          const problem = tinyProblem(lengths, boards, kerf);
          const expected = leastCost(lengths, boards, kerf);
          if (expected === undefined) {
            expect(await rejection(planBoards(problem, { solve }))).not.toEqual([]);
            return;
          }
          const plan = await planBoards(problem, { solve });
          expect(plan.cost.si).toBe(expected);
          expect(plan.proof).toEqual({ kind: "optimal" });
          expect(validateBoardPlan(problem, plan)).toEqual([]);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("is no higher with one more board on hand", async () => {
    const solve = await solver();
    await fc.assert(
      fc.asyncProperty(tinyPieces, fc.integer({ min: 5, max: 60 }), async (lengths, more) => {
        const problem = tinyProblem(
          lengths,
          [{ length: 60, price: 11, limit: Number.POSITIVE_INFINITY }],
          0.5,
        );
        const plain = await planBoards(problem, { solve });
        const richer = await planBoards(
          { ...problem, stock: [...problem.stock, kept(more)] },
          { solve },
        );
        expect(richer.cost.si).toBeLessThanOrEqual(plain.cost.si);
      }),
      { numRuns: 30 },
    );
  });

  it("does not depend on the order of pieces or boards", async () => {
    const solve = await solver();
    const shuffled = fc.tuple(tinyPieces, fc.integer({ min: 0, max: 5 }));
    await fc.assert(
      fc.asyncProperty(shuffled, tinyBoards, async ([lengths, turn], boards) => {
        const problem = tinyProblem(
          lengths,
          boards.map((b) => ({ ...b, limit: Number.POSITIVE_INFINITY })),
          0.5,
        );
        const pieces = [...problem.pieces.slice(turn), ...problem.pieces.slice(0, turn)].reverse();
        const turned = { ...problem, pieces, stock: [...problem.stock].reverse() };
        const costs = await Promise.all(
          [problem, turned].map((each) => planBoards(each, { solve })),
        );
        expect(costs[0]?.cost).toEqual(costs[1]?.cost);
      }),
      { numRuns: 30 },
    );
  });

  it("does not depend on the unit of length", async () => {
    const solve = await solver();
    await fc.assert(
      fc.asyncProperty(tinyPieces, async (lengths) => {
        const boards = [{ length: 48, price: 7, limit: Number.POSITIVE_INFINITY }];
        const inInches = tinyProblem(lengths, boards, 0.5);
        const inMillimetres: BoardProblem = {
          ...inInches,
          pieces: inInches.pieces.map((each, i) => ({
            ...each,
            length: times(lengths[i] ?? 0, millimetre),
          })),
          stock: inInches.stock.map((each) => ({ ...each, length: times(48, millimetre) })),
          kerf: times(0.5, millimetre),
        };
        const [a, b] = await Promise.all(
          [inInches, inMillimetres].map((each) => planBoards(each, { solve })),
        );
        expect(a?.cost).toEqual(b?.cost);
      }),
      { numRuns: 20 },
    );
  });

  it("is never said to be the rounded-up bound alone (derived: bound 59/30, optimum 3)", async () => {
    const problem = boardProblem([piece(15, 1), piece(10, 2), piece(6, 4)], [board(30, 1)], {
      kerf: inches(0),
      shortfall: inches(0),
    });
    expect((await planned(problem)).cost.si).toBe(3);
  });

  it("is never said to be the rounded-up bound alone (derived: bound 1.962, optimum 3)", async () => {
    const problem = boardProblem([piece(44, 2), piece(33, 3), piece(12, 6)], [board(132, 1)], {
      kerf: inches(0),
      shortfall: inches(0),
    });
    expect((await planned(problem)).cost.si).toBe(3);
  });
});
