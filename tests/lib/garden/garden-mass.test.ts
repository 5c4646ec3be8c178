import { describe, expect, it } from "vitest";
import { amount, cubicMetre, cubicYard, gardenMass, pound } from "../../../lib/index.ts";
import { material } from "./garden.ts";

describe("gardenMass(input)", () => {
  it("adds up rows, low to low and high to high", () => {
    const volumes = [
      { what: "fill", volume: cubicYard, material: material("topsoil") },
      { what: "mulch", volume: cubicYard, material: material("pine bark") },
    ];
    const { rows, total } = gardenMass({ boards: null, volumes });
    for (const key of ["low", "likely", "high"] as const) {
      expect(rows.reduce((sum, { mass }) => sum + mass[key].si, 0)).toBeCloseTo(total[key].si, 9);
    }
    expect(total.low.si).toBeLessThan(total.high.si);
  });

  it("is heavier wet than as sold", () => {
    const [row] = gardenMass({
      boards: null,
      volumes: [{ what: "fill", volume: cubicMetre, material: material("topsoil") }],
    }).rows;
    expect(row?.wet?.likely.si).toBeGreaterThan(row?.mass.likely.si ?? Number.NaN);
  });

  it("leaves boards out where nobody says what they weigh", () => {
    expect(gardenMass({ boards: null, volumes: [] }).rows).toEqual([]);
    expect(amount(gardenMass({ boards: null, volumes: [] }).total.likely, pound)).toBe(0);
  });
});
