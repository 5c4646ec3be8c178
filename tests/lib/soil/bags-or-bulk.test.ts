import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  bagsOrBulk,
  cubicFoot,
  cubicMetre,
  cubicYard,
  foot,
  litre,
  money,
  type Offer,
  times,
} from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

const bag: Offer = { name: "bag", form: "bag", size: cubicFoot, price: money(4) };
const bulk: Offer = {
  name: "bulk",
  form: "bulk",
  size: cubicYard,
  price: money(40),
  delivery: money(50),
};
const feet = (n: number) => times(n, cubicFoot);

describe("bagsOrBulk", () => {
  it("takes bags for little and bulk for much, each rounded up to what is sold", () => {
    const little = bagsOrBulk(feet(10.2), [bag, bulk]).chosen;
    expect(little).toMatchObject({ offer: { name: "bag" }, count: 11, cost: { si: 44 } });
    const much = bagsOrBulk(feet(55), [bag, bulk]).chosen;
    expect(much).toMatchObject({
      offer: { name: "bulk" },
      count: 3,
      goods: { si: 120 },
      delivery: { si: 50 },
      cost: { si: 170 },
    });
    expect(much && amount(much.leftover, cubicFoot)).toBeCloseTo(26, 9);
  });

  it("buys nothing, and pays no delivery, for no need", () => {
    expect(bagsOrBulk(feet(0), [bulk]).chosen).toMatchObject({ count: 0, cost: { si: 0 } });
  });

  it("holds to least quantities and steps, as numbers or volumes", () => {
    const half: Offer = { ...bulk, from: 2, step: times(13.5, cubicFoot) };
    expect(bagsOrBulk(feet(1), [half]).chosen?.count).toBe(2);
    expect(bagsOrBulk(feet(60), [half]).chosen?.count).toBe(2.5);
    expect(bagsOrBulk(feet(60), [{ ...half, from: times(3, cubicYard) }]).chosen?.count).toBe(3);
    expect(bagsOrBulk(feet(7), [{ ...bag, step: 5 }]).chosen?.count).toBe(10);
  });

  it("buys more than is needed where a lower price from a quantity on makes that cheaper", () => {
    const many: Offer = { ...bag, name: "many", price: money(3), from: 20 };
    expect(bagsOrBulk(feet(16), [bag, many]).chosen).toMatchObject({
      offer: { name: "many" },
      count: 20,
      cost: { si: 60 },
    });
    expect(bagsOrBulk(feet(14), [bag, many]).chosen).toMatchObject({ offer: { name: "bag" } });
  });

  it("leaves out offers with less than is needed, and says so", () => {
    const few = { ...bag, limit: 5 };
    const found = bagsOrBulk(feet(6), [few]);
    expect(found.chosen).toBeNull();
    expect(found.short).toEqual([few]);
    expect(bagsOrBulk(feet(5), [few]).chosen?.count).toBe(5);
    expect(bagsOrBulk(feet(5), [{ ...bag, limit: feet(4) }]).chosen).toBeNull();
  });

  it("keeps money exact to the cent", () => {
    const offer: Offer = { ...bag, price: money(0.07) };
    expect(bagsOrBulk(feet(3), [offer]).chosen?.cost.si).toBe(0.21);
    const part: Offer = { ...bulk, price: money(32.25), step: 0.5, delivery: money(0) };
    // 1.5 x 32.25 = 48.375, to the cent 48.38
    expect(bagsOrBulk(feet(40), [part]).chosen?.cost.si).toBe(48.38);
    expect(bagsOrBulk(feet(3), [{ ...bag, price: money(2, "EUR") }]).chosen?.cost.currency).toBe(
      "EUR",
    );
  });

  it("of equal costs takes less left over, then bags, then the first given", () => {
    const dear: Offer = { name: "2 ft3", form: "bag", size: feet(2), price: money(8) };
    expect(bagsOrBulk(feet(3), [{ ...dear, price: money(6) }, bag]).chosen?.offer.name).toBe("bag");
    const loose: Offer = { ...bag, name: "loose", form: "bulk" };
    expect(bagsOrBulk(feet(3), [loose, bag]).chosen?.offer.name).toBe("bag");
    expect(bagsOrBulk(feet(4), [dear, bag]).chosen?.offer.name).toBe("2 ft3");
    expect(bagsOrBulk(feet(4), [bag, dear]).chosen?.offer.name).toBe("bag");
  });

  it("never pays more than any offer alone, and always covers the need", () => {
    const offer = fc.record({
      form: fc.constantFrom("bag" as const, "bulk" as const),
      size: fc.integer({ min: 1, max: 60 }).map(feet),
      price: fc.integer({ min: 0, max: 9999 }).map((cents) => money(cents / 100)),
      from: fc.integer({ min: 0, max: 5 }),
      delivery: fc.integer({ min: 0, max: 99 }).map((whole) => money(whole)),
    });
    const offers = fc.array(offer, { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 300, noNaN: true }), offers, (need, all) => {
        const { chosen, compared } = bagsOrBulk(feet(need), all);
        if (!chosen) return expect.fail("offers without limit have enough");
        expect(chosen.volume.si).toBeGreaterThanOrEqual(feet(need).si * (1 - 1e-8));
        for (const other of compared) expect(chosen.cost.si).toBeLessThanOrEqual(other.cost.si);
        expect(compared).toHaveLength(all.length);
      }),
    );
  });
});

describe("the need above which bulk never costs more", () => {
  const costs = (need: number, offers: readonly Offer[]) => {
    const { compared } = bagsOrBulk(feet(need), offers);
    const of = (form: string) => compared.find(({ offer }) => offer.form === form)?.cost.si ?? 0;
    return { bag: of("bag"), bulk: of("bulk") };
  };

  it("stands where trying every need puts it", () => {
    const cents = (min: number, max: number) =>
      fc.integer({ min, max }).map((whole) => money(whole / 100));
    fc.assert(
      fc.property(cents(300, 600), cents(2000, 6000), cents(0, 6000), (each, yard, carried) => {
        const offers = [
          { ...bag, price: each },
          { ...bulk, price: yard, delivery: carried },
        ];
        const { breakEven } = bagsOrBulk(feet(1), offers);
        if (!breakEven) return expect.fail("bulk is cheaper by the foot");
        const meet = Math.round(amount(breakEven, cubicFoot));
        if (meet > 0) {
          const last = costs(meet, offers);
          expect(last.bulk).toBeGreaterThan(last.bag);
        }
        for (let need = meet + 0.5; need < meet + 120; need += 0.5) {
          const { bag: inBags, bulk: inBulk } = costs(need, offers);
          expect(inBulk).toBeLessThanOrEqual(inBags);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("is none where bulk is dearer by volume, or one of the two is not offered", () => {
    expect(bagsOrBulk(feet(1), [bag, { ...bulk, price: money(108) }]).breakEven).toBeNull();
    expect(bagsOrBulk(feet(1), [bag]).breakEven).toBeNull();
    expect(bagsOrBulk(feet(1), [bulk]).breakEven).toBeNull();
  });
});

describe("bagsOrBulk refuses", () => {
  it("needs and offers that cannot be", () => {
    expect(refusals(() => bagsOrBulk(wrong(undefined), []))).toEqual([
      "missing volume",
      "missing offers",
    ]);
    expect(refusals(() => bagsOrBulk(wrong(foot), [bag]))).toEqual(["wrong-unit volume"]);
    expect(refusals(() => bagsOrBulk(times(-1, litre), wrong(bag)))).toEqual([
      "too-small volume",
      "unreadable offers",
    ]);
    expect(refusals(() => bagsOrBulk(times(1e9, cubicMetre), [bag]))).toEqual(["too-large volume"]);
    expect(refusals(() => bagsOrBulk(cubicFoot, wrong([{}])))).toEqual([
      "missing offers.1.size",
      "missing offers.1.form",
      "missing offers.1.price",
    ]);
  });

  it("fields that cannot be", () => {
    const one = (change: object) =>
      refusals(() => bagsOrBulk(cubicFoot, [wrong({ ...bag, ...change })]));
    expect(one({ form: "sack" })).toEqual(["unknown offers.1.form"]);
    expect(one({ size: 1 })).toEqual(["wrong-unit offers.1.size"]);
    expect(one({ size: feet(0) })).toEqual(["too-small offers.1.size"]);
    expect(one({ price: 4 })).toEqual(["wrong-unit offers.1.price"]);
    expect(one({ price: money(-4) })).toEqual(["too-small offers.1.price"]);
    expect(one({ price: money(1e9) })).toEqual(["too-large offers.1.price"]);
    expect(one({ from: -1 })).toEqual(["too-small offers.1.from"]);
    expect(one({ from: foot })).toEqual(["wrong-unit offers.1.from"]);
    expect(one({ from: Number.NaN })).toEqual(["unreadable offers.1.from"]);
    expect(one({ step: 0 })).toEqual(["too-small offers.1.step"]);
    expect(one({ step: 0.5 })).toEqual(["contradiction offers.1.step"]);
    expect(one({ limit: -1 })).toEqual(["too-small offers.1.limit"]);
    expect(one({ delivery: feet(1) })).toEqual(["wrong-unit offers.1.delivery"]);
  });

  it("two currencies", () => {
    const offers = [
      { ...bag, price: money(4, "USD") },
      { ...bulk, delivery: money(3, "EUR") },
    ];
    expect(refusals(() => bagsOrBulk(cubicFoot, offers))).toEqual([
      "mixed-currency offers.2.delivery",
    ]);
  });
});
