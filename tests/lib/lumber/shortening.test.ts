import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BoardPlan,
  type BoardProblem,
  planBoards,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { bedPieces, board, inches, kept, piece } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

async function planned(problem: BoardProblem): Promise<BoardPlan> {
  const plan = await planBoards(problem, { solve: await solver() });
  expect(validateBoardPlan(problem, plan)).toEqual([]);
  return plan;
}

describe("shortening", () => {
  it("leaves pieces whole where it saves nothing, though the allowance would let it", async () => {
    // Two boards either way: nothing else fits beside a 93 in piece.
    const pieces = [piece(48, 1), piece(93, 1)];
    const plan = await planned(boardProblem(pieces, [board(96, 20)]));
    expect(plan.shortened).toEqual([]);
  });

  it("shortens no more beds than are needed", async () => {
    // Three beds of two 48 in ends and, once, a long board that takes two of them whole.
    const beds = ["A", "B", "C"].map((bed) => piece(48, 2, { bed, name: `${bed} end` }));
    const stock = [board(96, 20), kept(100)];
    const plan = await planned(boardProblem(beds, stock));
    expect(plan.cost.si).toBe(40);
    expect(plan.shortened).toHaveLength(2);
  });

  it("does not shorten to spare a board that costs nothing", async () => {
    const plan = await planned(boardProblem([piece(48, 2)], [kept(96), kept(60), board(96, 20)]));
    expect(plan.shortened).toEqual([]);
    expect(plan.keptCount).toBe(2);
  });

  it("counts boards where all are free", async () => {
    const plan = await planned(boardProblem(bedPieces({ lap: "ends" }), [board(96, 0)]));
    expect(plan.cuts).toHaveLength(3);
  });

  it("cuts like pieces of a bed alike, never below the allowance, and none could be longer", async () => {
    const solve = await solver();
    const lengths = fc.array(fc.constantFrom(24, 32, 47, 48, 63.9375, 64, 96), {
      minLength: 1,
      maxLength: 5,
    });
    await fc.assert(
      fc.asyncProperty(lengths, fc.constantFrom(0, 1 / 16, 1 / 8), async (all, s) => {
        const pieces = all.map((length, i) =>
          piece(length, (i % 3) + 1, { bed: `B-${i}`, name: `B-${i} side` }),
        );
        const problem = boardProblem(pieces, [board(96, 20), board(192, 44)], {
          shortfall: inches(s),
        });
        const plan = await planBoards(problem, { solve });
        expect(validateBoardPlan(problem, plan)).toEqual([]);
        // Shortening is worth money: without it the same pieces cost more.
        const whole = await planBoards({ ...problem, shortfall: inches(0) }, { solve });
        expect(plan.cost.si).toBeLessThanOrEqual(whole.cost.si);
        if (plan.shortened.length > 0) expect(plan.cost.si).toBeLessThan(whole.cost.si);
        for (const each of plan.shortened) {
          const boards = plan.cuts.filter((cut) => cut.pieces.some((p) => p.name === each.name));
          const full = boards.map((cut) => {
            const own = cut.pieces.filter((p) => p.name === each.name).length;
            const used = cut.pieces.reduce(
              (sum, p) => sum + p.length.si,
              (cut.pieces.length - 1) * problem.kerf.si,
            );
            // Longer by one sixteenth, the pieces of this bed would not fit one of their boards.
            return used + (own * 0.0254) / 16 > cut.length.si + 1e-9;
          });
          expect(full).toContain(true);
        }
      }),
      { numRuns: 30 },
    );
  });
});
