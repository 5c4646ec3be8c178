import { describe, expect, it } from "vitest";
import {
  amount,
  inch,
  type RottingMaterial,
  soilYears,
  times,
  upkeepDressing,
} from "../../../lib/index.ts";
import { dataRow } from "../../published/soil-rows.ts";

const row = (name: string) => dataRow<RottingMaterial>("materials", "material", name);
const compost = row("compost");
const bed = [
  { material: row("topsoil"), depth: times(5, inch) },
  { material: compost, depth: times(5, inch) },
];
const nine = times(9, inch);

describe("upkeep", () => {
  it("the dressing that holds a depth ends at that depth", () => {
    const { each, holds } = upkeepDressing(bed, { material: compost, depth: nine });
    expect(holds).toBe(true);
    const { months } = soilYears(bed, { springs: [{ material: compost, depth: each.likely }] });
    expect(amount(months.at(-1)?.depth.likely ?? inch, inch)).toBeCloseTo(9, 4);
  });

  it("the dressing that holds an organic share ends at that share", () => {
    const { each } = upkeepDressing(bed, { material: compost, organic: 0.1 });
    const { months } = soilYears(bed, { springs: [{ material: compost, depth: each.likely }] });
    expect(months.at(-1)?.organic.likely).toBeCloseTo(0.1, 4);
  });

  it("is nothing where the bed stays high enough by itself, more for more", () => {
    const each = (inches: number) =>
      amount(
        upkeepDressing(bed, { material: compost, depth: times(inches, inch) }).each.likely,
        inch,
      );
    expect(each(2)).toBe(0);
    expect(each(10)).toBeGreaterThan(each(9));
  });

  it("says where no dressing holds it", () => {
    const found = upkeepDressing(bed, { material: row("sand"), organic: 0.3 });
    expect(found.holds).toBe(false);
  });

  it("has its range about what is likely", () => {
    const { each } = upkeepDressing(bed, { material: compost, depth: nine, draws: 40 });
    expect(each.low.si).toBeLessThanOrEqual(each.likely.si);
    expect(each.high.si).toBeGreaterThan(each.low.si);
  });

  it("takes a depth or a share, not both and not neither", () => {
    expect(() => upkeepDressing(bed, { material: compost })).toThrow(/either a depth/);
    expect(() => upkeepDressing(bed, { material: compost, depth: nine, organic: 0.1 })).toThrow(
      /either a depth/,
    );
  });
});
