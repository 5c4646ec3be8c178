import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, kilogramPerCubicMetre, woodDensity } from "../../../lib/index.ts";
import { problemsOf } from "./make.ts";

// Above 0.87 the formula would have dry wood grow denser as it dries.
const gravity = fc.double({ min: 0.2, max: 0.8, noNaN: true });
const moist = fc.double({ min: 0, max: 2, noNaN: true });
const density = (specificGravity: number, moisture: number) =>
  amount(woodDensity({ species: "any", specificGravity }, { moisture }), kilogramPerCubicMetre);

describe("woodDensity", () => {
  it("grows with moisture and with specific gravity", () => {
    fc.assert(
      fc.property(gravity, moist, moist, (g, a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        expect(density(g, Math.max(a, b))).toBeGreaterThan(density(g, Math.min(a, b)));
        expect(density(g + 0.1, a)).toBeGreaterThan(density(g, a));
      }),
    );
  });

  it("is water's times gravity and wet mass from fibre saturation on, where wood swells no more", () => {
    expect(density(0.5, 0.3)).toBeCloseTo(650, 9);
    expect(density(0.5, 1)).toBeCloseTo(1000, 9);
  });

  it.each([
    [undefined, 0.19, ["missing species", "missing species.specificGravity"]],
    [{ species: "x", specificGravity: -0.4 }, 0.19, ["too-small species.specificGravity"]],
    [{ species: "x", specificGravity: 47 }, 0.19, ["too-large species.specificGravity"]],
    [{ species: "x", specificGravity: Number.NaN }, 0.19, ["unreadable species.specificGravity"]],
    [{ species: "x", specificGravity: 0.47 }, -0.1, ["too-small moisture"]],
    [{ species: "x", specificGravity: 0.47 }, 19, ["too-large moisture"]],
    [{ species: "x", specificGravity: 0.47 }, "19 %", ["unreadable moisture"]],
    [{ species: "x", specificGravity: 0.47 }, undefined, ["missing moisture"]],
  ])("refuses %j at %j", (species, moisture, problems) => {
    const calculation = () => woodDensity(species as never, { moisture: moisture as never });
    expect(problemsOf(calculation)).toEqual(problems);
  });
});
