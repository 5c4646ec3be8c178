import { describe, expect, it } from "vitest";
import {
  type BoardProblem,
  type Piece,
  planBoards,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { bedPieces, board, inches, kept } from "./make.ts";
import { boardProblem, notingSolver } from "./solver.ts";

// A generator of numbers with a seed, so that every run sees the same gardens.
function numbers(seed: number): (from: number, to: number) => number {
  let state = seed;
  return (from, to) => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return from + Math.floor((state / 0x80000000) * (to - from + 1));
  };
}

const stockOf = (next: (from: number, to: number) => number) => [
  ...[8, 10, 12, 14, 16, 20].map((ft) => board(ft * 12, ft * 2.5 + next(0, 400) / 100)),
  ...Array.from({ length: 15 }, () => kept(next(20, 110))),
];

function garden(beds: number, seed: number): BoardProblem {
  const next = numbers(seed);
  const pieces: Piece[] = [];
  for (let i = 1; i <= beds; i++) {
    const size = { length: inches(next(36, 144)), width: inches(next(24, 60)) };
    pieces.push(...bedPieces({ name: `A-${i}`, courses: 2, ...size }));
  }
  return boardProblem(pieces, stockOf(next));
}

describe("planBoards with many different lengths", () => {
  it.each([1])(
    "gives a sound plan of 25 beds, each of its own size, with a floor under it (seed %d)",
    async (seed) => {
      const { solve } = await notingSolver();
      const problem = garden(25, seed);
      const plan = await planBoards(problem, { solve, seconds: 3 });
      expect(validateBoardPlan(problem, plan)).toEqual([]);
      const above = plan.proof.kind === "optimal" ? 0 : plan.proof.above.si;
      expect(above).toBeGreaterThanOrEqual(0);
      expect(above).toBeLessThan(plan.cost.si * 0.005);
      // The floor is no higher than what any plan costs, that of the same pieces cut whole included.
      const whole = { ...problem, shortfall: inches(0) };
      const dearer = await planBoards(whole, { solve, seconds: 3 });
      expect(plan.cost.si - above).toBeLessThanOrEqual(dearer.cost.si + 1e-9);
      expect(validateBoardPlan(whole, dearer)).toEqual([]);
    },
    60_000,
  );

  it("plans 5,000 pieces of a few lengths", async () => {
    const next = numbers(7);
    const pieces = Array.from({ length: 625 }, (_, i) =>
      bedPieces({ name: `A-${i + 1}`, courses: 2, length: inches(i % 2 === 0 ? 96 : 72) }),
    ).flat();
    const problem = boardProblem(pieces, stockOf(next));
    const { solve } = await notingSolver();
    const plan = await planBoards(problem, { solve });
    expect(plan.cuts.flatMap((cut) => cut.pieces)).toHaveLength(5000);
    expect(validateBoardPlan(problem, plan)).toEqual([]);
  }, 60_000);
});
