import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BoardProblem,
  type BuyingProblem,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  money,
  over,
  type StockBoard,
  times,
  type YardTerms,
} from "../../../lib/index.ts";
import { leastCost } from "../lumber/brute-force.ts";
import { board, inches, kept, piece } from "../lumber/make.ts";
import { leastBuying } from "./whole-formulation.ts";

// The formulation that the planner is compared with is itself compared: with trying everything, and
// with sums done by hand beside each case.

const north: YardTerms = { yard: "North", tax: 0, taxOn: "goods" };

function buying(boards: Partial<BoardProblem>, over: Partial<BuyingProblem> = {}): BuyingProblem {
  return {
    boards: { pieces: [], stock: [], kerf: inches(0), shortfall: inches(0), ...boards },
    ...{ needs: [], prices: [], yards: [north], currency: "USD" },
    ...{ taxIncluded: false, carriesBulk: false },
    ...over,
  };
}

async function dollars(problem: BuyingProblem): Promise<number | undefined> {
  const least = await leastBuying(problem);
  return least && least.hundredThousandths / 1e7;
}

const tinyBoards = fc.array(
  fc.record({
    length: fc.integer({ min: 24, max: 60 }),
    price: fc.integer({ min: 0, max: 30 }),
    limit: fc.constantFrom(1, 2, Number.POSITIVE_INFINITY),
  }),
  { minLength: 1, maxLength: 3 },
);

describe("the whole formulation", () => {
  it("gives what trying everything gives", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 3, max: 24 }), { minLength: 1, maxLength: 6 }),
        tinyBoards,
        fc.constantFrom(0, 0.5),
        async (lengths, boards, kerf) => {
          const stock = boards.map(
            ({ length, price, limit }): StockBoard =>
              board(length, price, Number.isFinite(limit) ? { limit } : {}),
          );
          const pieces = lengths.map((length) => piece(length, 1));
          const found = await dollars(buying({ pieces, stock, kerf: inches(kerf) }));
          expect(found).toBe(leastCost(lengths, boards, kerf));
        },
      ),
      { numRuns: 150 },
    );
  });

  const two = [piece(40, 2)];
  it.each<[string, BuyingProblem, number | undefined]>([
    // Two boards of 10 with 10 % tax, and a trip of 3.
    [
      "tax and a trip",
      buying(
        { pieces: two, stock: [board(40, 10)] },
        { yards: [{ ...north, tax: 0.1, tripCost: money(3) }] },
      ),
      25,
    ],
    [
      "tax that is in the prices",
      buying(
        { pieces: two, stock: [board(40, 10)] },
        { taxIncluded: true, yards: [{ ...north, tax: 0.1 }] },
      ),
      20,
    ],
    // 1.5 x 11.25 x 40 in at 500 kg/m3 weighs 5.53 kg: three boards are more than 12 kg, so two trips.
    [
      "as many trips as the load makes",
      buying(
        { pieces: [piece(40, 3)], stock: [board(40, 10)] },
        {
          yards: [{ ...north, tripCost: money(3) }],
          carPayload: times(12, kilogram),
          woodDensity: times(500, kilogramPerCubicMetre),
        },
      ),
      36,
    ],
    // Fetched 20 + 9; brought 20 + 4 and 10 % of 24.
    [
      "delivery, taxed, where it is cheaper",
      buying(
        { pieces: two, stock: [board(40, 10)] },
        {
          yards: [
            {
              ...{ yard: "North", tax: 0.1, taxOn: "goods and delivery" },
              ...{ tripCost: money(9), delivery: money(4) },
            },
          ],
        },
      ),
      26.4,
    ],
    // 20 of goods are less than 25: no delivery for 1, but a trip for 9.
    [
      "the least order of a delivery",
      buying(
        { pieces: two, stock: [board(40, 10)] },
        {
          yards: [{ ...north, tripCost: money(9), delivery: money(1), deliveryFrom: money(25) }],
        },
      ),
      29,
    ],
    // Three at 6 are less than two at 10: one is not needed.
    [
      "a price break",
      buying({ pieces: two, stock: [board(40, 10), board(40, 6, { from: 3 })] }),
      18,
    ],
    // Three pieces: two bundles of two at 4, not one bundle and a board at 9.
    [
      "bundles",
      buying({ pieces: [piece(40, 3)], stock: [board(40, 9), board(40, 4, { step: 2 })] }),
      16,
    ],
    // Only one bundle of two is left of three: the third piece comes from the dear board.
    [
      "bundles within a limit",
      buying({
        pieces: [piece(40, 3)],
        stock: [board(40, 9), board(40, 4, { step: 2, limit: 3 })],
      }),
      17,
    ],
    // 96 in less 1/2 in don't give two of 48.
    [
      "squaring",
      buying({ pieces: [piece(48, 2)], stock: [board(96, 10)], squaring: inches(0.5) }),
      20,
    ],
    [
      "pieces cut a little short",
      buying({
        pieces: [piece(48, 2)],
        stock: [board(96, 10)],
        kerf: inches(0.25),
        shortfall: inches(0.125),
      }),
      10,
    ],
    // Mitred, 1/8 in cuts 3/16 in: 47.9375 x 2 + 3/16 is over 96; 47.875 x 2 + 3/16 is under.
    [
      "mitres that fit",
      buying({
        pieces: [piece(47.875, 2, { mitred: true })],
        stock: [board(96, 10)],
        kerf: inches(0.125),
      }),
      10,
    ],
    [
      "mitres that don't",
      buying({
        pieces: [piece(47.9375, 2, { mitred: true })],
        stock: [board(96, 10)],
        kerf: inches(0.125),
      }),
      20,
    ],
    // 120 in cut into 60 and 60 gives one piece of 50 each; whole it gives 50 and 70.
    [
      "a board cut at the yard",
      buying({
        ...{ pieces: [piece(50, 2), piece(70, 1)], stock: [board(120, 10)] },
        ...{ loadLength: inches(80), cutAtYard: true },
      }),
      20,
    ],
    // Three of 40 fit on 120 in, but not on parts of 100 and 20.
    [
      "a board cut at the yard, no piece on both parts",
      buying({
        ...{ pieces: [piece(55, 2)], stock: [board(120, 10)] },
        ...{ loadLength: inches(65), cutAtYard: true, kerf: inches(1) },
      }),
      10,
    ],
    [
      "a board too long for the car",
      buying({ pieces: two, stock: [board(120, 10)], loadLength: inches(80) }),
      undefined,
    ],
    // From 100 in: 40 and 40 leave 20, worth 1 an inch less kerf; from 96 in 16, which is not kept.
    [
      "offcuts worth something",
      buying({
        ...{ pieces: two, stock: [board(100, 40), board(96, 38)] },
        offcuts: { from: inches(18), worth: over(money(0.2), inch) },
      }),
      36,
    ],
    // One of 40 on each of two boards kept; that there is one more is no use.
    [
      "boards kept",
      buying({ pieces: two, stock: [board(40, 10), kept(45), kept(50, { limit: 2 })] }),
      0,
    ],
    ["a piece longer than all", buying({ pieces: two, stock: [board(39, 10)] }), undefined],
    ["too few boards", buying({ pieces: two, stock: [board(40, 10, { limit: 1 })] }), undefined],
  ])("counts %s", async (_, problem, expected) => {
    expect(await dollars(problem)).toBe(expected);
  });

  it("buys each need whole where all together costs least, and as few unsold as possible", async () => {
    const plates = { kind: "count", use: "", shares: [] } as const;
    const line = {
      row: 1,
      limit: undefined,
      from: 1,
      step: 1,
      kind: "goods",
      form: "pack",
    } as const;
    const size = { kind: "count", count: 1 } as const;
    const problem = buying(
      { pieces: two, stock: [board(40, 10)] },
      {
        needs: [
          { ...plates, item: "plate", count: 10 },
          { ...plates, item: "peg", count: 1 },
        ],
        prices: [
          { ...line, item: "plate", yard: "North", price: money(2), size },
          { ...line, item: "plate", yard: "South", price: money(1), size },
        ],
        yards: [
          { ...north, tripCost: money(5) },
          { ...north, yard: "South", tripCost: money(9) },
        ],
      },
    );
    const least = await leastBuying(problem);
    // North alone 20 + 20 + 5; both 20 + 10 + 5 + 9. Nobody has pegs.
    expect(least?.hundredThousandths).toBe(44e7);
    expect(least?.notSold).toBe(1);
    expect([...(least?.ways ?? [])]).toEqual([
      ["North", "fetched"],
      ["South", "fetched"],
    ]);
  });
});
