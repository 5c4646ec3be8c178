import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cautionsForLift,
  centimetre,
  foot,
  kilogram,
  type Lift,
  lifting,
  liftingIndex,
  pound,
  recommendedWeightLimit,
  times,
} from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

const cm = (n: number) => times(centimetre, n);
const best: Lift = { reach: cm(25), from: cm(75), to: cm(100), grip: "good", liftsPerMinute: 0.2 };
const limitKg = (lift: Lift) => amount(recommendedWeightLimit(lift).limit, kilogram);

describe("recommendedWeightLimit", () => {
  it("is the whole 23 kg in the best posture only", () => {
    expect(limitKg(best)).toBeCloseTo(23, 9);
  });

  it("never grows when a lift gets harder", () => {
    const reach = fc.double({ min: 0, max: 90, noNaN: true });
    const more = fc.double({ min: 0, max: 20, noNaN: true });
    const pace = fc.double({ min: 0, max: 18, noNaN: true });
    fc.assert(
      fc.property(reach, more, pace, pace, (near, farther, slow, faster) => {
        const far = Math.min(near + farther, 91);
        const quick = Math.min(slow + faster, 60);
        const base = { ...best, from: cm(30), reach: cm(near), liftsPerMinute: slow };
        expect(limitKg({ ...base, reach: cm(far) })).toBeLessThanOrEqual(limitKg(base) + 1e-9);
        expect(limitKg({ ...base, liftsPerMinute: quick })).toBeLessThanOrEqual(
          limitKg(base) + 1e-9,
        );
        expect(limitKg({ ...base, turn: 45 })).toBeLessThanOrEqual(limitKg(base) + 1e-9);
      }),
    );
  });

  it("is zero where nobody should lift so", () => {
    expect(limitKg({ ...best, reach: cm(64) })).toBe(0);
    expect(limitKg({ ...best, to: cm(176), at: "end" })).toBe(0);
    expect(limitKg({ ...best, turn: 136 })).toBe(0);
    expect(limitKg({ ...best, liftsPerMinute: 16 })).toBe(0);
  });

  it("judges the start or the end", () => {
    const lift: Lift = { reach: cm(30), from: cm(60), to: cm(150) };
    expect(limitKg({ ...lift, at: "end" })).toBeLessThan(limitKg({ ...lift, at: "start" }));
  });

  it("refuses what is no lift, all at once", () => {
    expect(refusals(() => recommendedWeightLimit(wrong(undefined)))).toEqual(["missing lift"]);
    expect(
      refusals(() =>
        recommendedWeightLimit({
          reach: wrong(25),
          from: wrong(pound),
          to: times(foot, 10),
          at: wrong("middle"),
          turn: Number.NaN,
          liftsPerMinute: -1,
          duration: wrong("all day"),
          grip: wrong("firm"),
        }),
      ),
    ).toEqual([
      "wrong-unit reach",
      "wrong-unit from",
      "too-large to",
      "unknown at",
      "unreadable turn",
      "too-small liftsPerMinute",
      "unknown duration",
      "unknown grip",
    ]);
  });
});

describe("liftingIndex", () => {
  it("is load over limit", () => {
    expect(liftingIndex(times(kilogram, 12), times(kilogram, 16))).toBeCloseTo(0.75, 12);
  });

  it("refuses a limit of nothing and loads that are none", () => {
    expect(refusals(() => liftingIndex(times(kilogram, -1), times(kilogram, 0)))).toEqual([
      "too-small mass",
      "too-small limit",
    ]);
    expect(refusals(() => liftingIndex(wrong(12), wrong(undefined)))).toEqual([
      "wrong-unit mass",
      "missing limit",
    ]);
  });
});

describe("lifting", () => {
  it("says how many people, or not to lift at all", () => {
    expectWhole(lifting(), "lifting");
    expect(lifting({ mass: times(kilogram, 26) }).advice).toMatch(/2 people/);
    expect(lifting({ mass: times(kilogram, 60) }).advice).toMatch(/3 people/);
    expect(lifting({ mass: times(kilogram, 200) }).advice).toMatch(/^Don't lift it whole/);
    expectBecause(lifting);
  });

  it("refuses what is no mass", () => {
    expect(refusals(() => lifting({ mass: wrong(26) }))).toEqual(["wrong-unit mass"]);
    expect(refusals(() => lifting({ mass: times(kilogram, 1e6) }))).toEqual(["too-large mass"]);
  });
});

describe("cautionsForLift", () => {
  it("keeps silent up to 23 kg", () => {
    expect(cautionsForLift(times(kilogram, 23))).toEqual([]);
    expect(cautionsForLift(times(kilogram, 23.1), { because: "a wet board" })).toMatchObject([
      { id: "lifting", because: "a wet board" },
    ]);
  });

  it("refuses what is no mass", () => {
    expect(refusals(() => cautionsForLift(wrong(undefined)))).toEqual(["missing mass"]);
    expect(refusals(() => cautionsForLift(times(pound, -40)))).toEqual(["too-small mass"]);
    expect(refusals(() => cautionsForLift(wrong(foot)))).toEqual(["wrong-unit mass"]);
  });
});
