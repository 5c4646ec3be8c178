import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blendVolumes, cubicMetre, soilBlend, soilMass, times } from "../../../lib/index.ts";
import { material, refusals, wrong } from "./at-hand.ts";

const soil = { ...material("soil", 1200, 1300, 1800), source: "calrecycle-calculations" };
const compost = material("compost", 400, 700, 960);

describe("soilBlend", () => {
  it("of one material is that material", () => {
    const blend = soilBlend([{ material: soil, share: 7 }]);
    for (const [key, value] of Object.entries(soil)) {
      const got = blend[key as keyof typeof blend];
      if (typeof value === "object")
        expect((got as { si: number }).si, key).toBeCloseTo(value.si, 9);
      else if (typeof value === "number") expect(got, key).toBeCloseTo(value, 12);
      else expect(got).toBe(value);
    }
  });

  it("weighs what its parts weigh together", () => {
    const share = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0, max: 100, noNaN: true }), (a, b, m3) => {
        const parts = [
          { material: soil, share: a },
          { material: compost, share: b },
        ];
        const volume = times(m3, cubicMetre);
        const [first, second] = blendVolumes(volume, parts);
        if (!first || !second) return expect.fail("two parts give two volumes");
        for (const state of ["dry", "moist", "wet"] as const)
          expect(soilMass(volume, soilBlend(parts))[state].likely.si).toBeCloseTo(
            soilMass(first.volume, soil)[state].likely.si +
              soilMass(second.volume, compost)[state].likely.si,
            6,
          );
      }),
    );
  });

  it("names its parts and what their figures rest on", () => {
    const blend = soilBlend([
      { material: soil, share: 2 },
      { material: compost, share: 1 },
    ]);
    expect(blend.material).toBe("soil and compost");
    expect(soilMass(cubicMetre, blend).dry.basis).toEqual([
      "calrecycle-calculations",
      "common practice",
    ]);
  });

  it("refuses parts that cannot be", () => {
    expect(refusals(() => soilBlend([]))).toEqual(["missing parts"]);
    expect(refusals(() => soilBlend(wrong(undefined)))).toEqual(["missing parts"]);
    expect(refusals(() => soilBlend(wrong("soil")))).toEqual(["unreadable parts"]);
    expect(refusals(() => soilBlend([{ material: soil, share: 0 }]))).toEqual([
      "too-small parts.1.share",
    ]);
    expect(refusals(() => soilBlend([{ material: soil, share: wrong("half") }]))).toEqual([
      "unreadable parts.1.share",
    ]);
    const light = { ...compost, densityMoist: wrong(700) };
    expect(
      refusals(() =>
        soilBlend([
          { material: soil, share: 1e9 },
          { material: light, share: 1 },
        ]),
      ),
    ).toEqual(["too-large parts.1.share", "wrong-unit parts.2.material.densityMoist"]);
  });
});
