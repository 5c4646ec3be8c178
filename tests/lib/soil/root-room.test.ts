import { describe, expect, it } from "vitest";
import { centimetre, inch, rootRoom, times } from "../../../lib/index.ts";
import { dataRows } from "../../published/soil-rows.ts";

const crops = dataRows("rootDepths").map((row) => ({
  crop: String(row.crop),
  depth: times(Number(row.depth), centimetre),
  source: "fao-56",
}));
const roomIn = (inches: number, crop: string) =>
  rootRoom(times(inches, inch), crops).find((one) => one.crop === crop)?.room;

describe("room for roots", () => {
  it("a bed of 9 in holds most of what strawberries use, part of what tomatoes do", () => {
    expect(roomIn(9, "strawberry")).toBe("most");
    expect(roomIn(10, "strawberry")).toBe("all");
    expect(roomIn(9, "tomato")).toBe("part");
  });

  it("is most from two thirds on, all at the full depth", () => {
    const beet = { crop: "beet", depth: times(60, centimetre), source: "fao-56" };
    const room = (cm: number) => rootRoom(times(cm, centimetre), [beet])[0]?.room;
    expect([39, 40, 59, 60].map(room)).toEqual(["part", "most", "most", "all"]);
  });

  it("begins with the shallowest, and never has less room in deeper soil", () => {
    const found = rootRoom(times(12, inch), crops);
    const depths = found.map(({ depth }) => depth.si);
    expect([...depths].sort((a, b) => a - b)).toEqual(depths);
    const deeper = rootRoom(times(20, inch), crops);
    found.forEach(({ share }, at) => {
      expect(deeper[at]?.share).toBeGreaterThanOrEqual(share);
    });
  });
});
