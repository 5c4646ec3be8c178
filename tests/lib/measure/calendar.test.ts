import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dateBefore, isCalendarDate } from "../../../lib/index.ts";

describe("isCalendarDate", () => {
  it("knows the days that exist", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: 0, max: 13 }),
        fc.integer({ min: 0, max: 32 }),
        (year, month, day) => {
          // JavaScript's calendar carries a day that does not exist over into another month.
          const date = new Date(0);
          date.setUTCFullYear(year, month - 1, day);
          const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
          expect(isCalendarDate({ year, month, day })).toBe(exists);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("takes a year or month alone, and nothing that only looks like a date", () => {
    expect(isCalendarDate({ year: 2026 })).toBe(true);
    expect(isCalendarDate({ year: 2026, month: 4 })).toBe(true);
    expect(isCalendarDate({ year: 2026, day: 4 })).toBe(false);
    expect(isCalendarDate({ year: 2026, bed: "A" })).toBe(false);
    expect(isCalendarDate({ year: "2026" })).toBe(false);
    expect(isCalendarDate({ year: 2026.5 })).toBe(false);
    expect(isCalendarDate({ year: 0 })).toBe(false);
    expect(isCalendarDate(null)).toBe(false);
    expect(isCalendarDate("2026")).toBe(false);
    expect(isCalendarDate(2026)).toBe(false);
  });
});

describe("dateBefore", () => {
  it("is true only where the first is over before the second begins", () => {
    expect(dateBefore({ year: 2003 }, { year: 2004 })).toBe(true);
    expect(dateBefore({ year: 2004 }, { year: 2004, month: 12 })).toBe(false);
    expect(dateBefore({ year: 2004, month: 2, day: 29 }, { year: 2004, month: 3 })).toBe(true);
    expect(dateBefore({ year: 2004, month: 3 }, { year: 2004, month: 2, day: 29 })).toBe(false);
    expect(dateBefore({ year: 2004 }, { year: 2004 })).toBe(false);
    const day = { year: 2004, month: 2, day: 29 };
    expect(dateBefore(day, day)).toBe(false);
  });
});
