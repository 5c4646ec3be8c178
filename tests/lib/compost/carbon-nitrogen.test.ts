import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carbonNitrogen, foot, kilogram, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const kg = (n: number) => times(n, kilogram);
const hay = { mass: kg(10), carbon: 0.4, nitrogen: 0.01, moisture: 0.2 };

describe("carbonNitrogen", () => {
  it("of one material is that material's", () => {
    const found = carbonNitrogen([hay]);
    expect(found.ratio).toBeCloseTo(40, 9);
    expect(found.moisture).toBeCloseTo(0.2, 12);
    expect(found.carbon.si).toBeCloseTo(10 * 0.8 * 0.4, 12);
  });

  it("lies between the ratios of its inputs, whatever their masses", () => {
    const mass = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(mass, mass, (a, b) => {
        const grass = { mass: kg(b), carbon: 0.45, nitrogen: 0.024, moisture: 0.8 };
        const { ratio } = carbonNitrogen([{ ...hay, mass: kg(a) }, grass]);
        expect(ratio).toBeGreaterThanOrEqual(18.75 - 1e-9);
        expect(ratio).toBeLessThanOrEqual(40 + 1e-9);
      }),
    );
  });

  it("has no ratio where there is no nitrogen", () => {
    expect(carbonNitrogen([{ ...hay, nitrogen: 0 }]).ratio).toBeNull();
  });

  it("refuses inputs that cannot be", () => {
    expect(refusals(() => carbonNitrogen([]))).toEqual(["missing inputs"]);
    expect(refusals(() => carbonNitrogen(wrong(hay)))).toEqual(["unreadable inputs"]);
    expect(refusals(() => carbonNitrogen(wrong([{}])))).toEqual([
      "missing inputs.1.mass",
      "missing inputs.1.carbon",
      "missing inputs.1.nitrogen",
    ]);
    expect(refusals(() => carbonNitrogen([{ ...hay, mass: kg(0) }]))).toEqual(["too-small inputs"]);
    expect(
      refusals(() => carbonNitrogen([hay, { mass: wrong(foot), carbon: 40, nitrogen: -1 }])),
    ).toEqual([
      "wrong-unit inputs.2.mass",
      "too-large inputs.2.carbon",
      "too-small inputs.2.nitrogen",
    ]);
  });
});
