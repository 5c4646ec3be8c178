import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  barrowLoads,
  cubicFoot,
  cubicYard,
  kilogram,
  type SoilMaterial,
  times,
} from "../../../lib/index.ts";
import { materialRow } from "../../published/soil-rows.ts";

const compost = materialRow("compost");
const topsoil = materialRow("topsoil");
const loads = (feet: number, material: SoilMaterial) =>
  barrowLoads(times(feet, cubicFoot), material).loads;

describe("barrow loads", () => {
  it("a cubic yard is nine loads of 3 cu ft where it is light (common practice)", () => {
    expect(barrowLoads(cubicYard, compost)).toMatchObject({ loads: 9, heavy: false });
  });

  it("are more where the soil is too heavy to fill the barrow", () => {
    const found = barrowLoads(cubicYard, topsoil);
    expect(found.heavy).toBe(true);
    expect(found.loads).toBeGreaterThan(9);
    expect(found.load.si * topsoil.densityMoist.si).toBeCloseTo(80, 9);
    expect(barrowLoads(cubicYard, topsoil, { most: times(500, kilogram) }).loads).toBe(9);
  });

  it("carry everything, and none too many", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), (feet) => {
        const { loads: found, load } = barrowLoads(times(feet, cubicFoot), topsoil);
        expect(found * load.si).toBeGreaterThanOrEqual(times(feet, cubicFoot).si * (1 - 1e-9));
        expect((found - 1) * load.si).toBeLessThan(times(feet, cubicFoot).si + 1e-9);
      }),
    );
    expect(loads(0, compost)).toBe(0);
  });
});
