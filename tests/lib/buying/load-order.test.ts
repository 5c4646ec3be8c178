import { describe, expect, it } from "vitest";
import {
  amount,
  type BuyingPlan,
  kilogram,
  loadOrder,
  type Mass,
  planBuying,
  pound,
  times,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { twoYards } from "./two-yards.ts";

const inPounds = (mass: Mass | null) => (mass === null ? 0 : amount(mass, pound));
const planned = async (problem = twoYards()): Promise<BuyingPlan> =>
  planBuying(problem, { solve: await solver() });

/** The sum of a column, by trip at its yard. */
function tripPounds(rows: ReturnType<typeof loadOrder>): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { yard, trip, mass } of rows)
    sums.set(`${yard} ${trip}`, (sums.get(`${yard} ${trip}`) ?? 0) + inPounds(mass));
  return sums;
}

describe("loadOrder (loading the longest first is common practice)", () => {
  it("loads all that is fetched, and no trip over what the car carries", async () => {
    const plan = await planned();
    for (const most of [200, 350, 900, 5000]) {
      const rows = loadOrder(plan, { carPayload: times(most, pound) });
      for (const [trip, sum] of tripPounds(rows))
        expect(sum, trip).toBeLessThanOrEqual(most + 1e-6);
      for (const { yard, lines } of plan.receipts)
        for (const line of lines) {
          const loaded = rows.filter(
            (row) => row.yard === yard && row.what === line.item && row.size === line.size,
          );
          expect(loaded.reduce((sum, { count }) => sum + count, 0)).toBeCloseTo(line.count, 6);
        }
    }
  });

  it("puts the longest on first, and what has no length last", async () => {
    const rows = loadOrder(await planned(), { carPayload: times(900, pound) });
    const order = rows.filter(({ trip, yard }) => trip === 1 && yard === rows[0]?.yard);
    const lengths = order.map(({ what, size }) =>
      what === "2x12" && typeof size === "object" ? size.si : 0,
    );
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
  });

  it("has boards that are too long cut before they are loaded, as long as their longer part", async () => {
    const plan = await planned(twoYards({ loadLengthIn: 100 }));
    const cut = plan.boards.cuts.filter(({ atYard }) => atYard !== null).length;
    expect(cut).toBeGreaterThan(0);
    const told = loadOrder(plan).filter(({ note }) => note.includes("by the yard"));
    expect(told.reduce((sum, { count }) => sum + count, 0)).toBe(cut);
  });

  it("says where one thing alone is over what the car carries, and never loops", async () => {
    const plan = await planned();
    const rows = loadOrder(plan, { carPayload: times(2, kilogram) });
    expect(rows.every(({ note }) => note.includes("have it brought"))).toBe(true);
    expect(rows.length).toBeLessThan(20);
  });

  it("says where things that can't be divided take a trip more than the sums count", async () => {
    const plan = await planned();
    const [receipt] = plan.receipts;
    const one = {
      item: "stone",
      use: "step",
      size: 1,
      count: 3,
      price: plan.total,
      total: plan.total,
    };
    // Three of 600 lb on a car for 900 lb: two trips by mass, three by piece.
    const stones = { ...one, mass: times(1800, pound) };
    const heavy = { ...plan, receipts: [{ ...receipt, lines: [stones], trips: 2 }] } as BuyingPlan;
    const rows = loadOrder(heavy, { carPayload: times(900, pound) });
    expect(rows.map(({ trip, count }) => [trip, count])).toEqual([
      [1, 1],
      [2, 1],
      [3, 1],
    ]);
    expect(rows[2]?.note).toContain("a trip more than the 2");
  });

  it("leaves out what is brought", async () => {
    const plan = await planned();
    const brought = {
      ...plan,
      receipts: plan.receipts.map((receipt) => ({
        ...receipt,
        lines: receipt.lines.map((line) => ({ ...line, delivered: true })),
      })),
    };
    expect(loadOrder(brought)).toEqual([]);
  });
});
