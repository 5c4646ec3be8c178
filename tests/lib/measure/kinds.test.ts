import { describe, expect, it } from "vitest";
import {
  cubicYard,
  dimensionName,
  foot,
  hour,
  inch,
  kilogram,
  money,
  over,
  pound,
  poundPerCubicFoot,
  squareFoot,
  times,
  week,
} from "../../../lib/index.ts";

describe("dimensionName", () => {
  it("names the kinds of the trade", () => {
    expect(dimensionName(foot)).toBe("length");
    expect(dimensionName(squareFoot)).toBe("area");
    expect(dimensionName(cubicYard)).toBe("volume");
    expect(dimensionName(pound)).toBe("mass");
    expect(dimensionName(hour)).toBe("duration");
    expect(dimensionName(money(1))).toBe("money");
    expect(dimensionName(poundPerCubicFoot)).toBe("density");
    expect(dimensionName(over(money(1), cubicYard))).toBe("price per volume");
    expect(dimensionName(over(money(1), pound))).toBe("price per mass");
  });

  it("composes the others", () => {
    expect(dimensionName(over(inch, week))).toBe("length per time");
    expect(dimensionName(over(1, hour))).toBe("one per time");
    expect(dimensionName(over(times(kilogram, foot), times(hour, hour)))).toBe(
      "length times mass per time^2",
    );
  });
});
