import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicFoot, times } from "../../../lib/index.ts";
import { buying, cents } from "./bill.ts";

interface Offer {
  readonly size: number;
  readonly price: number;
  readonly limit: number | undefined;
  readonly from: number;
  readonly step: number;
}

const offer: fc.Arbitrary<Offer> = fc.record({
  size: fc.integer({ min: 1, max: 8 }),
  price: fc.integer({ min: 0, max: 2000 }),
  limit: fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }),
  from: fc.integer({ min: 0, max: 5 }),
  step: fc.constantFrom(0.5, 1, 2),
});

/** What is bought where a yard has these offers and so much compost is needed. */
async function bought(offers: readonly Offer[], need: number) {
  const lines = offers.map(({ size, price, limit, from, step }) =>
    ["Alder", "compost", `${size} cu ft`, price / 100, "bag", limit ?? "", from, step].join(","),
  );
  const prices = ["yard,item,size,price,form,limit,from,step", ...lines].join("\n");
  const volume = times(need, cubicFoot);
  const needs = [{ kind: "volume", item: "compost", use: "", volume, shares: [] }] as const;
  const { receipts, total, buying: plan } = await buying({ yards: "yard\nAlder", prices }, needs);
  return { receipts, total, notSold: plan.notSold };
}

/** What one offer alone costs in cents, or nothing where it has too little. */
function alone({ size, price, limit = Infinity, from, step }: Offer, need: number) {
  const count = Math.ceil(Math.max(need / size, from) / step - 1e-9) * step;
  return count > limit ? [] : [Math.round(count * price + 1e-9)];
}

describe("what is bought of loose goods", () => {
  it("covers the need, within what the yard has and as it sells it", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(offer, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 40 }),
        async (offers, need) => {
          const made = await bought(offers, need);
          const lines = made.receipts.flatMap((receipt) => receipt.lines);
          if (made.notSold.length > 0) {
            expect(lines).toEqual([]);
            expect(offers.flatMap((each) => alone(each, need))).toEqual([]);
            return;
          }
          const volume = lines.reduce((sum, line) => {
            if (typeof line.size !== "object") throw new Error("not a volume");
            return sum + line.count * (line.size.si / cubicFoot.si);
          }, 0);
          expect(volume).toBeGreaterThan(need - 1e-6);
          for (const { count, price, size } of lines) {
            const from = offers.filter(
              (each) =>
                Math.round(price.si * 100) === each.price &&
                typeof size === "object" &&
                Math.abs(size.si / cubicFoot.si - each.size) < 1e-9,
            );
            const fits = from.some(
              (each) =>
                count <= (each.limit ?? Infinity) + 1e-9 &&
                count >= each.from - 1e-9 &&
                Math.abs(count / each.step - Math.round(count / each.step)) < 1e-9,
            );
            expect(fits).toBe(true);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it("never costs more than any one offer alone", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(offer, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 40 }),
        async (offers, need) => {
          const made = await bought(offers, need);
          for (const single of offers.flatMap((each) => alone(each, need))) {
            expect(cents(made.total)).toBeLessThanOrEqual(single);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it("never costs more with one offer more", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(offer, { minLength: 2, maxLength: 4 }),
        fc.integer({ min: 1, max: 40 }),
        async (offers, need) => {
          const fewer = await bought(offers.slice(1), need);
          const more = await bought(offers, need);
          if (fewer.notSold.length > 0) return;
          expect(more.notSold).toEqual([]);
          expect(cents(more.total)).toBeLessThanOrEqual(cents(fewer.total));
        },
      ),
      { numRuns: 300 },
    );
  });
});
