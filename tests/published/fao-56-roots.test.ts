import { describe, expect, it } from "vitest";
import { amount, metre, rootRoom, times } from "../../lib/index.ts";
import { published } from "./compare.ts";
import { dataRows } from "./soil-rows.ts";

// FAO Irrigation and Drainage Paper 56, 1998, Table 22: greatest rooting depth, middle of the range as
// an open data set tabulates it, in metres.
const printed: readonly (readonly [crop: string, metres: string])[] = [
  ["strawberry", "0.25"],
  ["lettuce", "0.40"],
  ["spinach", "0.40"],
  ["radish", "0.40"],
  ["celery", "0.40"],
  ["onion", "0.45"],
  ["broccoli", "0.50"],
  ["potato", "0.50"],
  ["bean, fresh", "0.60"],
  ["cabbage", "0.65"],
  ["carrot", "0.75"],
  ["pepper", "0.75"],
  ["artichoke", "0.75"],
  ["beet, table", "0.80"],
  ["squash", "0.80"],
  ["pea", "0.80"],
  ["cucumber", "0.95"],
  ["eggplant", "0.95"],
  ["corn", "1.00"],
  ["tomato", "1.10"],
  ["watermelon", "1.15"],
  ["melon", "1.20"],
  ["sweet potato", "1.25"],
  ["asparagus", "1.50"],
];
const crops = dataRows("rootDepths").map(({ crop, depth }) => ({
  crop: String(crop),
  depth: times(Number(depth) / 100, metre),
  source: "fao-56",
}));
const rooms = rootRoom(times(0.4, metre), crops);

describe("soil, how deep crops root", () => {
  it("lists the 24 crops", () => {
    expect(rooms.map(({ crop }) => crop).sort()).toEqual(printed.map(([crop]) => crop).sort());
  });

  it.each(printed)("%s to %s m (READ-2nd)", (crop, metres) => {
    const found = rooms.find((one) => one.crop === crop);
    if (!found) throw new Error(`no ${crop}`);
    published(amount(found.depth, metre), metres);
    expect(found.share).toBeCloseTo(Math.min(1, 0.4 / Number(metres)), 12);
  });
});
