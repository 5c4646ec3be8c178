import { describe, expect, it } from "vitest";
import { type LeadLevel, leadReading } from "../../lib/index.ts";
import { dataRows } from "./soil-rows.ts";

const levels = dataRows("soilLead").map((row) => ({
  ...row,
  since: row.since === "" ? null : row.since,
  until: row.until === "" ? null : row.until,
})) as unknown as LeadLevel[];
/** The levels of a source that a figure above all of them reaches on a day, the highest first. */
const levelsOf = (source: string, year: number, month = 1, day = 1) =>
  leadReading(1_000_000, levels, { year, month, day }).reached.flatMap((one) =>
    one.source === source ? [one.level] : [],
  );

describe("soil, levels of lead in mg/kg", () => {
  it("US EPA: 400 from 1994 to 16 January 2024 (READ)", () => {
    expect(levelsOf("epa-lead-2024", 1994)).toEqual([400]);
    expect(levelsOf("epa-lead-2024", 2024, 1, 16)).toEqual([400]);
    expect(levelsOf("epa-lead-2024", 1993)).toEqual([]);
  });

  it("US EPA: 200, and 100 with other sources, from 17 January 2024 (READ)", () => {
    expect(levelsOf("epa-lead-2024", 2024, 1, 17)).toEqual([200, 100]);
    expect(levelsOf("epa-lead-2024", 2025, 10, 15)).toEqual([200, 100]);
  });

  it("US EPA: 200 for screening, 600 for removal, from 16 October 2025 (READ-2nd)", () => {
    expect(levelsOf("epa-lead-2025", 2025, 10, 16)).toEqual([600, 200]);
    expect(levelsOf("epa-lead-2024", 2025, 10, 16)).toEqual([]);
  });

  it("University of Maryland: no vegetables above 400, natural below 50 (READ)", () => {
    expect(levelsOf("umd-lead", 2026)).toEqual([400, 50]);
  });

  it("a garden leaflet: 14 low, 31 moderate, 100 significant, 400 serious (READ)", () => {
    expect(levelsOf("garden-lead-leaflet", 2026)).toEqual([400, 100, 31, 14]);
  });
});
