import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, foot, type LinedBed, linerForBeds } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { feet, frame, inches, roll } from "./frames.ts";

const beds = (count: number, made = frame(8, 4)): readonly LinedBed[] => [{ ...made, count }];

describe("linerForBeds", () => {
  it("cuts along the roll where that needs fewer rolls", () => {
    // Strips of 24 ft x 14-1/4 in. Along a roll 2 ft x 50 ft: two a roll. Across: 23 pieces a bed
    // that each cover 12 in, 42 pieces a roll: three rolls for four beds.
    const plan = linerForBeds(beds(4), { roll: roll(2, 50) });
    expect(plan).toMatchObject({ way: "along", rolls: 2, joins: 4, staples: 92 });
    expect(amount(plan.sheetLength, foot)).toBeCloseTo(96, 9);
    expect(plan.beds[0]).toMatchObject({ name: "bed 1", count: 4, joins: 1, staples: 23 });
  });

  it("uses the lanes beside a strip", () => {
    // A roll 10 ft wide holds eight strips side by side.
    expect(linerForBeds(beds(8), { roll: roll(10, 25) })).toMatchObject({ way: "along", rolls: 1 });
    expect(linerForBeds(beds(9), { roll: roll(10, 25) }).rolls).toBe(2);
  });

  it("cuts along all the same where short pieces would save a roll and are not wanted", () => {
    // Two courses and two turns: strips 25-1/2 in high and 24 ft long. A roll 4 ft x 30 ft holds one
    // of them along it, or 14 pieces across it that cover 3 ft each: eight a bed, 32 for four beds.
    const thrifty = { roll: roll(4, 30) };
    const high = beds(4, frame(8, 4, 2, 11.25));
    expect(linerForBeds(high, thrifty)).toMatchObject({ way: "across", rolls: 3, joins: 32 });
    expect(linerForBeds(high, { ...thrifty, cutAlong: true })).toMatchObject({
      way: "along",
      rolls: 4,
      joins: 4,
    });
    // A roll of 2 ft is too narrow for them along.
    expect(linerForBeds(high, { roll: roll(2, 50), cutAlong: true }).way).toBe("across");
  });

  it("cuts across where a strip is higher than the roll is wide", () => {
    // Three courses of 9-1/4 in and two turns: 30-3/4 in, more than 2 ft.
    const plan = linerForBeds(beds(1, frame(8, 3, 3, 9.25)), { roll: roll(2, 50) });
    expect(plan.way).toBe("across");
    // Inside 93 in x 33 in: 252 in round, 21 pieces that cover 12 in each.
    expect(plan.joins).toBe(21);
    expect(plan.rolls).toBe(2);
  });

  it("pieces a strip that is longer than the roll, a lap for each join", () => {
    // Inside 237 in x 45 in: 564 in = 47 ft; a 25 ft roll covers 24 ft a piece.
    const plan = linerForBeds(beds(1, frame(20, 4)), { roll: roll(1.5, 25) });
    expect(plan).toMatchObject({ way: "along", joins: 2, rolls: 2 });
    expect(amount(plan.sheetLength, foot)).toBeCloseTo(49, 9);
  });

  it("says how to hang it, and carries the caution about drainage", () => {
    const plan = linerForBeds(beds(1), { roll: roll(2, 50) });
    expect(plan.advice.join(" ")).toMatch(/never inward.*above the soil line/);
    expect(plan.cautions.map(({ id }) => id)).toEqual(["plastic-and-drainage"]);
  });

  it("takes nothing to line as nothing", () => {
    for (const none of [[], beds(0)]) {
      expect(linerForBeds(none, { roll: roll(2, 50) })).toMatchObject({
        way: "none",
        rolls: 0,
        joins: 0,
        staples: 0,
        sheetArea: { si: 0 },
        cautions: [],
      });
    }
  });

  it("never needs less sheet than it cuts, and does not mind the order of beds", () => {
    const side = fc.double({ min: 2, max: 16, noNaN: true });
    const bed = fc.tuple(
      side,
      side,
      fc.integer({ min: 1, max: 2 }),
      fc.integer({ min: 1, max: 5 }),
    );
    const some = fc.array(bed, { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(some, fc.constantFrom(2, 3, 6, 10), (sizes, widthFt) => {
        const given = sizes.map(([a, b, courses, count]) => ({ ...frame(a, b, courses), count }));
        const plan = linerForBeds(given, { roll: roll(widthFt, 50) });
        const bought = plan.rolls * feet(widthFt).si * feet(50).si;
        expect(bought).toBeGreaterThanOrEqual(plan.sheetArea.si - 1e-6);
        const turned = linerForBeds(given.toReversed(), { roll: roll(widthFt, 50) });
        expect(turned.rolls).toBe(plan.rolls);
        const apart = given.flatMap(({ count, ...one }) =>
          Array.from({ length: count }, () => one),
        );
        expect(linerForBeds(apart, { roll: roll(widthFt, 50) }).rolls).toBe(plan.rolls);
      }),
    );
  });

  it("says so where no strip can be cut either way", () => {
    const narrow = { width: inches(10), length: feet(50) };
    expect(refusals(() => linerForBeds(beds(1), { roll: narrow }))).toEqual(["no-fit roll.width"]);
  });

  it("refuses beds and rolls that are none", () => {
    expect(refusals(() => linerForBeds(wrong(undefined), { roll: roll(2, 50) }))).toEqual([
      "missing beds",
    ]);
    expect(refusals(() => linerForBeds([wrong(null)], { roll: roll(2, 50) }))).toEqual([
      "missing beds.1",
    ]);
    expect(refusals(() => linerForBeds([], wrong(null)))).toEqual(["missing options"]);
    expect(refusals(() => linerForBeds([], wrong({})))).toEqual(["missing roll"]);
    expect(
      refusals(() => linerForBeds([], { roll: { width: wrong(2), length: feet(1e6) } })),
    ).toEqual(["wrong-unit roll.width", "too-large roll.length"]);
    expect(refusals(() => linerForBeds(beds(-1), { roll: roll(2, 50) }))).toEqual([
      "too-small beds.1.count",
    ]);
    expect(
      refusals(() => linerForBeds(beds(1), { roll: roll(2, 50), stapleSpacing: inches(0) })),
    ).toEqual(["too-small stapleSpacing"]);
    const bad = { ...frame(8, 4), length: wrong(8) };
    expect(refusals(() => linerForBeds([bad], { roll: roll(2, 50) }))).toEqual([
      "wrong-unit beds.1.length",
    ]);
  });
});
