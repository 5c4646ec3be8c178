import { describe, expect, it } from "vitest";
import type { BuyingProblem } from "../../../lib/index.ts";
import { disagreements, floorsAboveTheirLeast } from "./exactly.ts";
import { randomProblem } from "./random-problem.ts";

const seedsFrom = (first: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => first + i);

async function disagreeing(
  seeds: readonly number[],
  judge: (problem: BuyingProblem) => Promise<string[]>,
): Promise<string[]> {
  const said: string[] = [];
  for (const seed of seeds) {
    const own = await judge(randomProblem(seed));
    said.push(...own.map((words) => `seed ${seed}: ${words}`));
  }
  return said;
}

describe("planBuying against the whole formulation", { timeout: 240_000 }, () => {
  it.each(seedsFrom(0, 10).map((chunk) => [1 + 50 * chunk, 50 * (chunk + 1)] as const))(
    "finds the least cost, proves it, and keeps to every rule (seeds %d to %d)",
    async (first) => {
      expect(await disagreeing(seedsFrom(first, 50), disagreements)).toEqual([]);
    },
  );

  it("gives each choice of yards and ways a floor that is under what it costs at least", async () => {
    expect(await disagreeing(seedsFrom(600, 25), floorsAboveTheirLeast)).toEqual([]);
  });
});
