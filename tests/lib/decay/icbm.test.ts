import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { icbmAfter } from "../../../lib/decay/icbm.ts";
import { icbm, times, year } from "../../../lib/index.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const given = fc.record({
  young: number(0, 5),
  old: number(0, 50),
  input: number(0, 3),
  humified: number(0, 1),
  climate: number(0, 4),
});

describe("two pools of carbon", () => {
  it("lose what is breathed out and nothing else, to a billionth", () => {
    fc.assert(
      fc.property(given, number(0, 60), ({ young, old, ...options }, years) => {
        const after = icbm({ young, old }, times(years, year), options);
        const carbonIn = young + old + options.input * years;
        expect(Math.abs(after.total + after.respired - carbonIn)).toBeLessThan(
          1e-9 * (1 + carbonIn),
        );
        expect(after.respired).toBeGreaterThan(-1e-9 * (1 + carbonIn));
      }),
    );
  });

  it("come to the same in many small steps, by the difference equation", () => {
    const rates = { young: 0.8, old: 0.05, humified: 0.2, input: 0.4 };
    let [young, old] = [0.5, 3];
    const steps = 200_000;
    for (let step = 0; step < steps; step += 1) {
      const dt = 10 / steps;
      const rotted = rates.young * young * dt;
      old += rates.humified * rotted - rates.old * old * dt;
      young += rates.input * dt - rotted;
    }
    const after = icbmAfter({ young: 0.5, old: 3 }, 10, rates);
    expect(after.young).toBeCloseTo(young, 4);
    expect(after.old).toBeCloseTo(old, 4);
  });

  it("are the same after two times as after both together", () => {
    fc.assert(
      fc.property(given, number(0, 30), number(0, 30), ({ young, old, ...options }, a, b) => {
        const first = icbm({ young, old }, times(a, year), options);
        const then = icbm({ young: first.young, old: first.old }, times(b, year), options);
        const together = icbm({ young, old }, times(a + b, year), options);
        expect(then.young).toBeCloseTo(together.young, 8);
        expect(then.old).toBeCloseTo(together.old, 8);
      }),
    );
  });

  it("do not jump where both rates are alike", () => {
    const at = (young: number) =>
      icbmAfter({ young: 1, old: 2 }, 7, { young, old: 0.3, humified: 0.4, input: 0.2 });
    expect(at(0.3).old).toBeCloseTo(at(0.3 + 1e-7).old, 6);
    expect(at(0.3 + 1e-11).old).toBeCloseTo(at(0.3 + 1e-7).old, 6);
  });

  it("never hold less for more input, and stay as they are at rates of 0", () => {
    fc.assert(
      fc.property(given, number(0, 30), ({ young, old, ...options }, years) => {
        const span = times(years, year);
        const more = icbm({ young, old }, span, { ...options, input: options.input + 1 });
        expect(more.total).toBeGreaterThanOrEqual(icbm({ young, old }, span, options).total - 1e-9);
        const still = icbm({ young, old }, span, { humified: 0.2, climate: 0 });
        expect([still.young, still.old]).toEqual([young, old]);
      }),
    );
  });

  it("rest where their rates say (DERIVED)", () => {
    const { inTheEnd } = icbm({ young: 0.25, old: 4.16 }, year, { humified: 0.125, input: 0.2 });
    expect(inTheEnd?.young).toBeCloseTo(0.25, 6);
    expect(inTheEnd?.old).toBeCloseTo(4.132, 3);
    const rest = icbm(inTheEnd ?? { young: 0, old: 0 }, times(50, year), {
      humified: 0.125,
      input: 0.2,
    });
    expect(rest.old).toBeCloseTo(inTheEnd?.old ?? 0, 9);
  });

  it("rest where a pool that gets nothing does not rot, and nowhere where one gets something", () => {
    const kept = icbm({ young: 1, old: 4 }, year, { humified: 0.2, oldRate: 0 }).inTheEnd;
    expect(kept).toEqual({ young: 0, old: 4.2 });
    const still = icbm({ young: 1, old: 4 }, year, { humified: 0.2, youngRate: 0 }).inTheEnd;
    expect(still).toEqual({ young: 1, old: 0 });
    expect(
      icbm({ young: 1, old: 4 }, year, { humified: 0.2, oldRate: 0, input: 0.1 }).inTheEnd,
    ).toBeNull();
  });
});
