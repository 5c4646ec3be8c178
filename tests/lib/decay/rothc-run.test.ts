import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RothcMonthSpec, rothcRun } from "../../../lib/index.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pools = fc.record({
  dpm: number(0, 5),
  rpm: number(0, 20),
  bio: number(0, 5),
  hum: number(0, 80),
  iom: number(0, 10),
});
const month = fc.record({
  temperatureC: number(-15, 35),
  rainMm: number(0, 200),
  panMm: number(0, 200),
  covered: fc.boolean(),
  carbon: number(0, 3),
});
const months = fc.array(month, { minLength: 1, maxLength: 30 });
const soil = { clayPercent: 18 };
const sum = (all: readonly number[]) => all.reduce((total, each) => total + each, 0);

describe("five pools month by month", () => {
  it("lose what is breathed out and nothing else, to a billionth", () => {
    fc.assert(
      fc.property(pools, months, number(0, 80), (start, given, clayPercent) => {
        const states = rothcRun(start, given, { clayPercent });
        const carbonIn = sum(Object.values(start)) + sum(given.map((one) => one.carbon));
        const out = sum(states.map((state) => state.respired));
        const left = states.at(-1)?.total ?? Number.NaN;
        expect(Math.abs(left + out - carbonIn)).toBeLessThan(1e-9 * (1 + carbonIn));
      }),
    );
  });

  it("go on from where they stood: a period split at a month's end is the same", () => {
    fc.assert(
      fc.property(pools, months, months, (start, first, second) => {
        const whole = rothcRun(start, [...first, ...second], soil).at(-1);
        const half = rothcRun(start, first, soil).at(-1);
        if (half === undefined) return;
        const { dpm, rpm, bio, hum, iom, deficitMm } = half;
        const then = rothcRun({ dpm, rpm, bio, hum, iom }, second, { ...soil, deficitMm }).at(-1);
        expect(then).toEqual(whole);
      }),
    );
  });

  it("never hold less for more added", () => {
    fc.assert(
      fc.property(pools, months, (start, given) => {
        const more = given.map((one) => ({ ...one, carbon: one.carbon + 0.5 }));
        const total = (all: readonly RothcMonthSpec[]) =>
          rothcRun(start, all, soil).at(-1)?.total ?? 0;
        expect(total(more)).toBeGreaterThanOrEqual(total(given) - 1e-9);
      }),
    );
  });

  it("stay as they are in frost, however long", () => {
    const start = { dpm: 1, rpm: 2, bio: 3, hum: 4, iom: 5 };
    const frozen = Array.from({ length: 24 }, () => ({ temperatureC: -6, rainMm: 0, panMm: 0 }));
    expect(rothcRun(start, frozen, soil).at(-1)).toMatchObject({ ...start, respired: 0 });
  });

  it("rot slower under plants, in dry soil and where there is more clay to keep it", () => {
    const start = { dpm: 1, rpm: 5, bio: 1, hum: 20, iom: 0 };
    const total = (change: Partial<RothcMonthSpec>, clayPercent = 18) =>
      rothcRun(start, [{ temperatureC: 18, rainMm: 80, panMm: 20, covered: false, ...change }], {
        clayPercent,
      })[0]?.total ?? 0;
    expect(total({ covered: true })).toBeGreaterThan(total({}));
    expect(total({ rainMm: 0, panMm: 150 })).toBeGreaterThan(total({}));
    expect(total({}, 40)).toBeGreaterThan(total({}, 5));
  });

  it("refuse shares of what is added that are not together 1", () => {
    const split = { dpm: 0.5, rpm: 0.4, hum: 0 };
    const given = [{ temperatureC: 9, rainMm: 50, panMm: 20, carbon: 1, split }];
    expect(() => rothcRun({ dpm: 0, rpm: 0, bio: 0, hum: 0, iom: 0 }, given, soil)).toThrow(
      /together 1/,
    );
  });
});
