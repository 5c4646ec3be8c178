import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { highsSolver } from "../../build/highs-solver.ts";
import type { IntegerProgram } from "../../lib/index.ts";

const endless = Number.POSITIVE_INFINITY;

// Three pieces of one length and two of another from two patterns: worked by hand.
const program = (whole: boolean): IntegerProgram => ({
  whole,
  rows: [
    { least: 3, most: endless },
    { least: 2, most: endless },
  ],
  columns: [
    { cost: 5, most: endless, rows: [0, 1], amounts: [1, 1] },
    { cost: 4, most: endless, rows: [0], amounts: [2] },
  ],
});

describe("highsSolver", () => {
  it("solves whole programmes to the least", async () => {
    const solve = await highsSolver();
    const solution = await solve(program(true), { gap: 1 - 1e-6 });
    expect(solution).toMatchObject({ state: "optimal", values: [2, 1], rowWorth: [] });
    expect(solution.bound).toBeCloseTo(14, 6);
  });

  it("gives the worth of rows where parts are allowed", async () => {
    const solve = await highsSolver();
    const solution = await solve(program(false), {});
    expect(solution.state).toBe("optimal");
    expect(solution.bound).toBeCloseTo(12, 6);
    expect(solution.rowWorth[0]).toBeCloseTo(2, 6);
    expect(solution.rowWorth[1]).toBeCloseTo(3, 6);
  });

  it("says where there is no solution", async () => {
    const solve = await highsSolver();
    const impossible = {
      ...program(true),
      rows: [{ least: 3, most: 2 }, ...program(true).rows.slice(1)],
    };
    expect(await solve(impossible, {})).toMatchObject({ state: "infeasible", values: [] });
  });

  it("starts from bytes handed in, as in a worker", async () => {
    const file = createRequire(import.meta.url).resolve("highs/runtime");
    const solve = await highsSolver({ wasm: new Uint8Array(readFileSync(file)) });
    expect((await solve(program(true), {})).values).toEqual([2, 1]);
  });
});
