import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, cubicFoot, gardenFill, inch, soilBlend, times } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";
import { bed, feet, material } from "./garden.ts";

const mix = [
  { material: material("topsoil"), share: 3 },
  { material: material("compost"), share: 1 },
];

describe("gardenFill(beds, parts)", () => {
  // A check value repeated by practitioners: twenty 4 ft x 8 ft beds of 2-by boards, 11 in deep, hold
  // 533 cu ft unsettled, over 500 bags of one cubic foot (common practice).
  it("twenty 4 x 8 beds, 11 in deep, take 533 cu ft", () => {
    const beds = Array.from({ length: 20 }, (_, index) =>
      bed({ bed: `B${index}`, soilDepth: times(11, inch) }),
    );
    const settled = amount(gardenFill(beds, mix).total.settled, cubicFoot);
    expect(Math.round(settled)).toBe(533);
  });

  it("orders more than settles, by the blend's share", () => {
    const fill = gardenFill([bed()], mix);
    const { settleLikely } = soilBlend(mix);
    expect(fill.total.order.likely.si).toBeCloseTo(fill.total.settled.si / (1 - settleLikely), 12);
    expect(fill.total.order.low.si).toBeLessThan(fill.total.order.high.si);
  });

  it("needs each part by its share, for each bed by what it takes", () => {
    const fill = gardenFill([bed(), bed({ bed: "B", length: feet(16) })], mix);
    const [soil, compost] = fill.needs;
    expect(soil && compost && soil.volume.si / compost.volume.si).toBeCloseTo(3, 12);
    expect(soil?.item).toBe("topsoil");
    expect(soil?.shares.map(({ bed: name }) => name)).toEqual(["A", "B"]);
  });

  it("takes off what is there", () => {
    const full = bed({ depthNow: times(9.25, inch) });
    expect(gardenFill([full], mix).total.order.likely.si).toBeCloseTo(0, 12);
  });

  it("does not depend on the order of beds, and adds them up", () => {
    const depth = fc.integer({ min: 0, max: 40 });
    fc.assert(
      fc.property(fc.array(depth, { minLength: 1, maxLength: 8 }), (depths) => {
        const beds = depths.map((quarter, index) =>
          bed({ bed: `B${index}`, soilDepth: times(quarter / 4, inch) }),
        );
        const all = gardenFill(beds, mix).total.settled.si;
        const turned = gardenFill([...beds].reverse(), mix).total.settled.si;
        const single = beds.reduce((sum, one) => sum + gardenFill([one], mix).total.settled.si, 0);
        expect(turned).toBeCloseTo(all, 12);
        expect(single).toBeCloseTo(all, 12);
      }),
    );
  });

  it("is nothing for no beds, and refuses a mix of nothing", () => {
    expect(gardenFill([], mix).total.settled.si).toBe(0);
    expect(problemsOf(() => gardenFill([bed()], [])).map(([code]) => code)).toEqual(["missing"]);
  });
});
