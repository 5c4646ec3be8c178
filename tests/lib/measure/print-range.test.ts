import { describe, expect, it } from "vitest";
import {
  cubicYard,
  hour,
  inch,
  isRange,
  money,
  over,
  printRange,
  type Quantity,
  times,
} from "../../../lib/index.ts";
import { codesOf } from "./generators.ts";

function range<Q extends Quantity | number>(low: Q, likely: Q, high: Q) {
  return { low, likely, high, basis: ["common practice"] };
}

describe("printRange", () => {
  it("gives both ends in the unit of the high one", () => {
    const hours = range(times(32, hour), times(36, hour), times(43, hour));
    expect(printRange(hours)).toBe("32–43 h");
    const soil = range(times(0.9, cubicYard), cubicYard, times(1.4, cubicYard));
    expect(printRange(soil)).toBe("0.9–1.4 cu yd");
    expect(printRange(soil, { system: "metric" })).toBe("0.688–1.07 m³");
    expect(printRange(range(0.1, 0.2, 0.35))).toBe("0.1–0.35");
  });

  it("sets the dash apart where an end has words or a sign", () => {
    const lengths = range(times(5, inch), times(8, inch), times(14, inch));
    expect(printRange(lengths)).toBe("5 in – 1 ft 2 in");
    expect(printRange(range(-1, 0, 2))).toBe("-1 – 2");
    const prices = range(money(5, "USD"), money(6, "USD"), money(7, "USD"));
    expect(printRange(prices)).toBe("$5.00–$7.00");
    const perYard = range(...([30, 35, 40].map(perCubicYard) as [Price, Price, Price]));
    expect(printRange(perYard)).toBe("$30.00–$40.00 / cu yd");
  });

  it("gives one figure where both ends print alike", () => {
    expect(printRange(range(times(3, inch), times(3, inch), times(3, inch)))).toBe("3 in");
    expect(printRange(range(times(3, hour), times(3, hour), times(3.001, hour)))).toBe("3 h");
  });

  it("refuses ends that are no finite quantity", () => {
    const broken = range({ ...hour, si: Number.NaN }, hour, hour);
    expect(codesOf(() => printRange(broken))).toEqual(["unreadable at low"]);
  });
});

type Price = ReturnType<typeof perCubicYard>;
function perCubicYard(dollars: number) {
  return over(money(dollars, "USD"), cubicYard);
}

describe("isRange", () => {
  it("knows a range from its shape", () => {
    expect(isRange(range(1, 2, 3))).toBe(true);
    expect(isRange({ low: 1, likely: 2, high: 3 })).toBe(false);
    expect(isRange({ low: "1", likely: 2, high: 3, basis: [] })).toBe(false);
    expect(isRange(null)).toBe(false);
  });
});
