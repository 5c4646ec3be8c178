// Cutting-stock exercises whose data were seen in textbooks, manuals and teaching material, without a
// printed answer. The optima are derived: found alike by listing all patterns, by flow models and by
// generated patterns, each with an integer-programme solver.
import { describe, expect, it } from "vitest";
import { type CuttingStock, cutExample } from "../../published/cutting-stock.ts";

interface Exercise {
  readonly example: CuttingStock;
  readonly least: number;
  /** The value of the relaxation, rounded to what is known of it. */
  readonly relaxation: number;
}

const single = (length: number, ...pieces: readonly (readonly [number, number])[]) => ({
  stock: [[length, 1]] as const,
  pieces,
});

const threeLengths: CuttingStock = {
  stock: [
    [100, 100],
    [120, 120],
    [150, 150],
  ],
  pieces: [
    ...[10, 14, 17, 24, 29, 32, 33, 36, 38, 40, 50, 54, 55, 63, 66, 71, 79, 83, 92, 95, 99].map(
      (length) => [length, 1] as const,
    ),
    [19, 2],
    [77, 2],
  ],
};

const limited: CuttingStock = {
  stock: [
    [10, 1.9, 360],
    [6, 1, 360],
    [4, 0.6, 360],
  ],
  pieces: [
    [2, 400],
    [3, 350],
    [5, 200],
    [8, 150],
  ],
};

const exercises: readonly (readonly [string, Exercise])[] = [
  [
    "raws of 100 in, 35 in for one width",
    {
      example: single(100, [45, 97], [35, 610], [31, 395], [14, 211]),
      least: 453,
      relaxation: 452.25,
    },
  ],
  ["three lengths priced by length", { example: threeLengths, least: 1280, relaxation: 1272.77 }],
  ["three lengths, 360 of each", { example: limited, least: 725, relaxation: 725 }],
  [
    "boards of 25 ft for 7, 9 and 11 ft",
    { example: single(25, [7, 5000], [9, 1200], [11, 300]), least: 2167, relaxation: 2166.67 },
  ],
  [
    "boards of 25 ft for 7, 9 and 10 ft",
    { example: single(25, [7, 700], [9, 1200], [10, 300]), least: 775, relaxation: 775 },
  ],
  [
    "boards of 20 ft for 3, 4, 8 and 10 ft",
    { example: single(20, [3, 50], [4, 25], [8, 15], [10, 70]), least: 54, relaxation: 53.5 },
  ],
];

describe("exercises without a printed answer", () => {
  it.each(exercises)("%s (derived)", async (_, { example, least, relaxation }) => {
    const plan = await cutExample(example);
    expect(plan.cost.si).toBeCloseTo(least, 6);
    expect(plan.proof).toEqual({ kind: "optimal" });
    expect(Math.abs(plan.certificate.floor.si - relaxation)).toBeLessThan(0.005 + 1e-9);
  });
});
