// Chudley and Greeno, Building Construction Handbook, 8th edition: target widths of BS EN 336, sawn
// (T1) and planed (T2), and its example (READ-2nd).
import { describe, expect, it } from "vitest";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import { amount, type Length, millimetre } from "../../lib/index.ts";
import { section } from "../lib/lumber/make.ts";
import { published } from "./compare.ts";

const mm = (value: unknown) => amount(value as Length, millimetre);
const rows = loadPublished(dataFiles()).metricSections ?? [];
const planedOf = (sawn: number) =>
  rows.find((row) => row.face === "width" && Math.abs(mm(row.sawn) - sawn) < 0.01)?.planed;

describe("lumber, metric sections", () => {
  it("100 x 50 sawn is 97 x 47 planed (READ-2nd)", () => {
    published(mm(planedOf(100)), "97");
    published(mm(planedOf(50)), "47");
    const planed = section(`${mm(planedOf(100)).toFixed(0)}x${mm(planedOf(50)).toFixed(0)}`);
    expect(planed.name).toBe("47x97");
    published(amount(planed.width, millimetre), "97");
  });

  it.each([
    ["47x225", "47", "225"],
    ["50x150", "50", "150"],
    ["47x145", "47", "145"],
  ])("%s measures %s x %s mm (READ-2nd)", (name, thickness, width) => {
    published(amount(section(name).thickness, millimetre), thickness);
    published(amount(section(name).width, millimetre), width);
  });
});
