import { describe, expect, it } from "vitest";
import { rothcAtRest, rothcRun } from "../../../lib/index.ts";

const year = Array.from({ length: 12 }, (_, at) => ({
  temperatureC: 10 - 8 * Math.cos((at * Math.PI) / 6),
  rainMm: 55,
  panMm: 20 + 10 * at,
  carbon: at === 8 ? 2 : 0,
}));

describe("pools at rest", () => {
  it("are the same a year later", () => {
    const { total, years, ...rest } = rothcAtRest(year, { clayPercent: 20, iom: 2 });
    const later = rothcRun(rest, year, { clayPercent: 20 }).at(-1);
    expect(later?.total).toBeCloseTo(total, 4);
    expect(years).toBeGreaterThan(100);
  });

  it("are twice as large for twice as much added", () => {
    const twice = year.map((month) => ({ ...month, carbon: 2 * month.carbon }));
    const [one, two] = [year, twice].map(
      (months) => rothcAtRest(months, { clayPercent: 20 }).total,
    );
    expect((two ?? 0) / (one ?? 1)).toBeCloseTo(2, 4);
  });

  it("are never said where the soil is too cold to come to rest", () => {
    const frozen = year.map((month) => ({ ...month, temperatureC: -10 }));
    expect(() => rothcAtRest(frozen, { clayPercent: 20 })).toThrow(/too cold/);
  });

  it("need twelve months", () => {
    expect(() => rothcAtRest([...year, ...year], { clayPercent: 20 })).toThrow(/twelve months/);
  });
});
