import { describe, expect, it } from "vitest";
import { buyingList, money, planBuying, printQuantity, sumOf } from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { twoYards } from "./two-yards.ts";

describe("buyingList", () => {
  it("adds up to the plan's total, yard by yard, the longest boards first (common practice)", async () => {
    const plan = await planBuying(twoYards(), { solve: await solver() });
    const rows = buyingList(plan);
    const sums = rows.flatMap(({ sum }) => (sum === "no price" ? [] : [sum]));
    expect(sumOf(sums, money(0, "USD")).si).toBeCloseTo(plan.total.si, 6);
    const yards = [...new Set(rows.map(({ yard }) => yard))];
    expect(yards).toEqual(plan.receipts.map(({ yard }) => yard));
    for (const yard of yards) {
      const lengths = rows.flatMap((row) =>
        row.yard === yard && row.what.startsWith("2x12") ? [printQuantity(row.size as never)] : [],
      );
      expect(lengths).toEqual(
        [...lengths].sort((a, b) => Number.parseInt(b, 10) - Number.parseInt(a, 10)),
      );
    }
  });

  it("says what the yard cuts, and what no yard sells", async () => {
    const problem = twoYards({ loadLengthIn: 100 });
    const plan = await planBuying(
      {
        ...problem,
        needs: [
          ...problem.needs,
          { kind: "count", item: "gate", use: "gate", count: 1, shares: [] },
        ],
      },
      { solve: await solver() },
    );
    const rows = buyingList(plan);
    const cut = plan.boards.cuts.filter(({ atYard }) => atYard !== null).length;
    expect(cut).toBeGreaterThan(0);
    const told = rows.flatMap(({ what }) =>
      [...what.matchAll(/(\d+) cut in two at/g)].map(([, n]) => Number(n)),
    );
    expect(told.reduce((sum, n) => sum + n, 0)).toBe(cut);
    expect(rows.at(-1)).toMatchObject({ what: "gate", yard: "", sum: "no price", count: 1 });
  });
});
