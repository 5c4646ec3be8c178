import { describe, expect, it } from "vitest";
import { type LeadLevel, leadReading } from "../../../lib/index.ts";
import { dataRows } from "../../published/soil-rows.ts";

const levels = dataRows("soilLead").map((row) => ({
  ...row,
  since: row.since === "" ? null : row.since,
  until: row.until === "" ? null : row.until,
})) as unknown as LeadLevel[];
const screening = levels.filter(({ meaning }) => meaning.includes("screening"));
const on = (year: number, month = 1, day = 1) => ({ year, month, day });
const reached = (ppm: number, day: ReturnType<typeof on>) =>
  leadReading(ppm, screening, day).reached.map(({ level }) => level);

describe("a figure for lead", () => {
  // US EPA: 400 ppm from 1994, 200 and 100 from 17 January 2024 (READ), 200 alone since 16 October
  // 2025 (READ-2nd).
  it("is judged by the levels of its day", () => {
    expect(reached(250, on(2020))).toEqual([]);
    expect(reached(250, on(2024, 6))).toEqual([200, 100]);
    expect(reached(150, on(2024, 6))).toEqual([100]);
    expect(reached(150, on(2025, 10, 16))).toEqual([]);
    expect(reached(250, on(2026, 4))).toEqual([200]);
  });

  it("a level is reached by its own figure, and changes on its day", () => {
    expect(reached(200, on(2024, 1, 17))).toEqual([200, 100]);
    expect(reached(200, on(2024, 1, 16))).toEqual([]);
  });

  it("says what is reached and what comes next, and carries the caution", () => {
    const high = leadReading(250, levels, on(2026));
    expect(high.words).toMatch(/^250 ppm reaches 200 ppm \(residential screening level\)/);
    expect(high.next?.level).toBe(400);
    expect(high.cautions[0]?.because).toBe("250 ppm of lead");
    const low = leadReading(5, levels, on(2026));
    expect(low.words).toMatch(/below 14 ppm/);
    expect(low.cautions).toEqual([]);
    expect(leadReading(5000, levels, on(2026)).next).toBeNull();
  });

  it("refuses a date that is not written in ISO form, and takes one that is not known", () => {
    const [level] = screening;
    if (!level) throw new Error("no level");
    const later = { ...level, level: 200, until: null };
    for (const since of ["2025-4-6", "sixteenth Oct 2025", "2025-02-30", "2025-13", "2025-00"])
      expect(() => leadReading(250, [level, { ...later, since }], on(2026))).toThrow(/since/);
    expect(leadReading(250, [{ ...later, since: null }], on(1900)).reached).toHaveLength(1);
  });

  it("needs a level that was in force", () => {
    expect(() => leadReading(250, screening, on(1980))).toThrow(/in force on 1980/);
  });
});
