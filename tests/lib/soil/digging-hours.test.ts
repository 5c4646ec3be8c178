import { describe, expect, it } from "vitest";
import {
  amount,
  cubicMetre,
  type DiggingRate,
  diggingHours,
  hour,
  times,
} from "../../../lib/index.ts";
import { dataRow } from "../../published/soil-rows.ts";

const row = (work: string) => dataRow<DiggingRate>("diggingRates", "work", work);
const work = (name: string, m3: number) => ({ work: row(name), volume: times(m3, cubicMetre) });

describe("hours of digging", () => {
  it("add up over the kinds of work", () => {
    const both = diggingHours([work("dig, medium soil", 2), work("put back", 2)]);
    expect(amount(both.low, hour)).toBeCloseTo(2 * 2.2 + 2 * 1, 9);
    expect(amount(both.high, hour)).toBeCloseTo(2 * 6.5 + 2 * 5.5, 9);
    expect(both.likely.si).toBeGreaterThan(both.low.si);
    expect(both.likely.si).toBeLessThan(both.high.si);
    expect(both.basis).toEqual(["menlo-labour-sheet", "contractor-labour-sheet"]);
  });

  it("are none for no work", () => {
    expect(diggingHours([]).high.si).toBe(0);
  });
});
