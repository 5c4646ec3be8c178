import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  cubicYard,
  money,
  type Offer,
  purchasesByYear,
  times,
} from "../../../lib/index.ts";

const offers: readonly Offer[] = [
  { form: "bag", size: cubicFoot, price: money(4, "USD") },
  { form: "bulk", size: cubicYard, price: money(30, "USD"), delivery: money(50, "USD") },
];
const feet = (n: number) => times(n, cubicFoot);

describe("purchases by year", () => {
  it("takes the heap first, then bags for little and bulk for much", () => {
    const [small, large, none] = purchasesByYear(
      [
        { year: "1", volume: feet(10) },
        { year: "2", volume: feet(60) },
        { year: "3", volume: feet(3) },
      ],
      offers,
      { heap: feet(4) },
    );
    expect(small?.bought?.offer.form).toBe("bag");
    expect(amount(small?.toBuy ?? cubicFoot, cubicFoot)).toBeCloseTo(6, 9);
    expect(small?.cost?.si).toBe(24);
    expect(large?.bought?.offer.form).toBe("bulk");
    expect(none).toMatchObject({ bought: null, cost: null });
    expect(amount(none?.fromHeap ?? cubicFoot, cubicFoot)).toBeCloseTo(3, 9);
  });

  it("buys all that the heap does not give, and never less for more need", () => {
    const volume = fc.double({ min: 0, max: 200, noNaN: true });
    fc.assert(
      fc.property(volume, volume, volume, (a, b, heap) => {
        const needs = [Math.min(a, b), Math.max(a, b)].map((n) => ({ year: "y", volume: feet(n) }));
        const [less, more] = purchasesByYear(needs, offers, { heap: feet(heap) });
        for (const [at, one] of [less, more].entries())
          expect((one?.fromHeap.si ?? 0) + (one?.toBuy.si ?? 0)).toBeCloseTo(
            needs[at]?.volume.si ?? -1,
            9,
          );
        expect(more?.cost?.si ?? 0).toBeGreaterThanOrEqual(less?.cost?.si ?? 0);
      }),
    );
  });

  it("says only how much where nothing has a price", () => {
    const [year] = purchasesByYear([{ year: "1", volume: feet(5) }], []);
    expect(year).toMatchObject({ bought: null, cost: null });
    expect(year?.toBuy.si).toBe(feet(5).si);
  });
});
