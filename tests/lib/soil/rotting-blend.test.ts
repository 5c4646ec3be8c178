import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RottingMaterial, rottingBlend } from "../../../lib/index.ts";
import { dataRow } from "../../published/soil-rows.ts";

const row = (name: string) => dataRow<RottingMaterial>("materials", "material", name);
const names = ["topsoil", "compost", "peat", "pine bark", "sand", "old bed soil"] as const;
const part = fc.record({
  material: fc.constantFrom(...names).map(row),
  share: fc.double({ min: 0.1, max: 9, noNaN: true }),
});

describe("a blend that rots", () => {
  it("is the material itself where there is one part", () => {
    for (const name of names) {
      const one = row(name);
      const blend = rottingBlend([{ material: one, share: 3 }]);
      // Where nothing is organic nothing rots, whatever the row says.
      for (const key of [
        "organic",
        "organicVolume",
        "porosity",
        "decayLow",
        "decay",
        "decayHigh",
      ] as const)
        expect(blend[key]).toBeCloseTo(
          one.organic === 0 && key.startsWith("decay") ? 0 : one[key],
          12,
        );
    }
  });

  it("has half compost, half topsoil at some 13 per cent organic by mass, half by volume", () => {
    const blend = rottingBlend([
      { material: row("topsoil"), share: 1 },
      { material: row("compost"), share: 1 },
    ]);
    // (1246 x 0.04 + 392 x 0.423) / (1246 + 392)
    expect(blend.organic).toBeCloseTo((1246 * 0.04 + 392 * 0.423) / 1638, 12);
    expect(blend.organicVolume).toBe(0.5);
    // Each part rots by its own organic matter.
    const organic = [1246 * 0.04, 392 * 0.423] as const;
    expect(blend.decay).toBeCloseTo(
      (organic[0] * 0.017 + organic[1] * 0.2) / (organic[0] + organic[1]),
      12,
    );
  });

  it("of three parts topsoil to one of compost is the row of planting mix, rounded there", () => {
    const blend = rottingBlend([
      { material: row("topsoil"), share: 3 },
      { material: row("compost"), share: 1 },
    ]);
    const mix = row("planting mix");
    for (const key of [
      "organicLow",
      "organic",
      "organicHigh",
      "porosity",
      "decayLow",
      "decay",
      "decayHigh",
    ] as const)
      expect(Math.abs(mix[key] / blend[key] - 1), key).toBeLessThan(0.03);
  });

  it("lies between its parts, low below high", () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const blend = rottingBlend(parts);
        const each = parts.map(({ material }) => material.organic);
        expect(blend.organic).toBeGreaterThanOrEqual(Math.min(...each) - 1e-12);
        expect(blend.organic).toBeLessThanOrEqual(Math.max(...each) + 1e-12);
        expect(blend.organicLow).toBeLessThanOrEqual(blend.organic + 1e-12);
        expect(blend.decay).toBeLessThanOrEqual(blend.decayHigh + 1e-12);
      }),
    );
  });

  it("does not change where a part is split in two, nor with the unit of the shares", () => {
    fc.assert(
      fc.property(part, part, (a, b) => {
        const whole = rottingBlend([a, b]);
        const split = rottingBlend([
          { ...a, share: a.share / 3 },
          b,
          { ...a, share: (2 * a.share) / 3 },
        ]);
        const grown = rottingBlend([a, b].map((one) => ({ ...one, share: one.share * 7 })));
        for (const other of [split, grown]) {
          expect(other.organic).toBeCloseTo(whole.organic, 12);
          expect(other.decayHigh).toBeCloseTo(whole.decayHigh, 12);
          expect(other.porosity).toBeCloseTo(whole.porosity, 12);
        }
      }),
    );
  });
});
