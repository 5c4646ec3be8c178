import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  type CalendarDate,
  daysBetween,
  isoDate,
  printDate,
  readDate,
  same,
  yearsBetween,
} from "../../../lib/index.ts";
import { codesOf } from "./generators.ts";

const dayMs = 86_400_000;

/** JavaScript's own calendar, the outside reference for day arithmetic. */
function utc({ year, month = 1, day = 1 }: CalendarDate): number {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  return date.getTime() / dayMs;
}

const days = fc
  .date({ min: new Date("0001-01-02"), max: new Date("9999-12-30"), noInvalidDate: true })
  .map((date) => ({
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
  }));

describe("readDate", () => {
  it("reads year, month and day in that order", () => {
    expect(readDate("2026")).toEqual({ ok: true, value: { year: 2026 } });
    expect(readDate("2026-04")).toEqual({ ok: true, value: { year: 2026, month: 4 } });
    expect(readDate(" 2026-04-25 ")).toEqual({
      ok: true,
      value: { year: 2026, month: 4, day: 25 },
    });
    expect(readDate("2024-02-29").ok).toBe(true);
    expect(readDate("2000-02-29").ok).toBe(true);
  });

  it("reads back what isoDate writes", () => {
    fc.assert(
      fc.property(days, (date) => {
        const reading = readDate(isoDate(date));
        expect(reading.ok && same(reading.value, date)).toBe(true);
      }),
    );
  });

  const refused: readonly [string, string][] = [
    ["4/5/2026", "taken for each other"],
    ["25.4.2026", "taken for each other"],
    ["2026-4-25", "year-month-day"],
    ["26", "year-month-day"],
    ["April 2026", "year-month-day"],
    ["2026-02-29", "February 2026 has days 01 to 28"],
    ["1900-02-29", "February 1900 has days 01 to 28"],
    ["2026-04-31", "April 2026 has days 01 to 30"],
    ["2026-00-01", "Months count from 01 to 12"],
    ["2026-13", "Months count from 01 to 12"],
    ["2026-04-00", "April 2026 has days 01 to 30"],
    ["0000", "Years count from 0001"],
  ];
  it.each(refused)("refuses “%s” and says why", (text, why) => {
    const reading = readDate(text, { path: ["beds", 2, "built"] });
    expect(reading.ok || reading.problem).toMatchObject({
      code: "unreadable",
      path: ["beds", 2, "built"],
      received: text,
    });
    expect(reading.ok || reading.problem.remedy).toContain(why);
  });

  it("refuses nothing, no text, and dates outside the bounds", () => {
    const code = (text: unknown, options = {}) => {
      const reading = readDate(text as string, options);
      return reading.ok ? "" : reading.problem.code;
    };
    expect(code("")).toBe("missing");
    expect(code(undefined)).toBe("missing");
    expect(code(2026)).toBe("unreadable");
    expect(code("1899", { min: { year: 1900 } })).toBe("too-small");
    expect(code("1900", { min: { year: 1900, month: 6 } })).toBe("");
    expect(code("2027-01", { max: { year: 2026 } })).toBe("too-large");
    expect(code("2026", { precision: "day" })).toBe("unreadable");
    expect(code("2026-04", { precision: "month" })).toBe("");
  });

  it("says its bounds with the month's name", () => {
    const reading = readDate("1800", { min: { year: 1900, month: 6 }, max: { year: 2100 } });
    expect(reading.ok || reading.problem.allowed).toContain("from June 1900 to 2100");
  });
});

describe("printDate and isoDate", () => {
  it("name the month, or write it in two digits", () => {
    expect(printDate({ year: 2026, month: 4, day: 25 })).toBe("25 April 2026");
    expect(printDate({ year: 2026, month: 12 })).toBe("December 2026");
    expect(printDate({ year: 2026 })).toBe("2026");
    expect(isoDate({ year: 26, month: 4, day: 5 })).toBe("0026-04-05");
  });

  it("refuse a date that does not exist", () => {
    expect(codesOf(() => printDate({ year: 2026, month: 2, day: 30 }))).toEqual([
      "unreadable at date",
    ]);
    expect(codesOf(() => isoDate(undefined as never))).toEqual(["missing at date"]);
    expect(codesOf(() => isoDate({ year: 2026.5 }))).toEqual(["unreadable at date"]);
  });
});

describe("day arithmetic", () => {
  it("agrees with JavaScript's calendar over all years", () => {
    fc.assert(
      fc.property(days, days, (a, b) => {
        expect(daysBetween(a, b)).toBe(Math.round(utc(b) - utc(a)));
      }),
      { numRuns: 1000 },
    );
  });

  it("adds the days that lie between, at the ends of years and centuries too", () => {
    const ends = fc.constantFrom<CalendarDate[]>(
      { year: 2000, month: 2, day: 29 },
      { year: 1900, month: 2, day: 28 },
      { year: 2026, month: 12, day: 31 },
      { year: 400, month: 1, day: 1 },
      { year: 9999, month: 12, day: 31 },
      { year: 1, month: 1, day: 1 },
    );
    fc.assert(
      fc.property(fc.oneof(days, ends), fc.oneof(days, ends), (a, b) => {
        expect(addDays(a, daysBetween(a, b))).toEqual(b);
      }),
      { numRuns: 1000 },
    );
  });

  it("takes the first day of a month or year", () => {
    expect(daysBetween({ year: 2026 }, { year: 2026, month: 4, day: 25 })).toBe(114);
    expect(addDays({ year: 2026, month: 4 }, -1)).toEqual({ year: 2026, month: 3, day: 31 });
  });

  it("refuses days that are not whole or lead out of the calendar", () => {
    const date = { year: 2026, month: 4, day: 25 };
    expect(codesOf(() => addDays(date, 1.5))).toEqual(["unreadable at days"]);
    expect(codesOf(() => addDays(date, Number.NaN))).toEqual(["unreadable at days"]);
    expect(codesOf(() => addDays(date, 1e9))).toEqual(["too-large at days"]);
    expect(codesOf(() => addDays(date, -1e9))).toEqual(["too-small at days"]);
    expect(codesOf(() => daysBetween(date, { year: 0 }))).toEqual(["unreadable at to"]);
    expect(codesOf(() => daysBetween(undefined as never, date))).toEqual(["missing at from"]);
  });
});

describe("yearsBetween", () => {
  it("counts as ages are counted", () => {
    const born = { year: 2004, month: 6, day: 15 };
    expect(yearsBetween(born, { year: 2026, month: 6, day: 14 })).toBe(21);
    expect(yearsBetween(born, { year: 2026, month: 6, day: 15 })).toBe(22);
    expect(yearsBetween({ year: 2004 }, { year: 2026, month: 4 })).toBe(22);
    expect(yearsBetween({ year: 2026 }, { year: 2004 })).toBe(-22);
    expect(yearsBetween({ year: 2026, month: 6 }, { year: 2026, month: 4 })).toBe(0);
  });

  it("refuses a date that does not exist", () => {
    expect(codesOf(() => yearsBetween({ year: 2026, month: 13 }, born))).toEqual([
      "unreadable at from",
    ]);
    expect(codesOf(() => yearsBetween(born, null as never))).toEqual(["missing at to"]);
  });
  const born = { year: 2004 };
});
