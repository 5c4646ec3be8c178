import { describe, expect, it } from "vitest";
import { kilogramPerCubicMetre, metre, swellByWeight, times } from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

const d = (n: number) => times(n, kilogramPerCubicMetre);

describe("swellByWeight", () => {
  it("has no swell where loose and in place weigh the same", () => {
    expect(swellByWeight({ bank: d(1500), loose: d(1500), compacted: d(1500) })).toEqual({
      swell: 0,
      loadFactor: 1,
      shrinkage: 0,
    });
  });

  it("keeps swell and load factor together: load factor x (1 + swell) = 1", () => {
    for (const loose of [900, 1200, 1777]) {
      const found = swellByWeight({ bank: d(2017), loose: d(loose) });
      expect(found.loadFactor * (1 + found.swell)).toBeCloseTo(1, 12);
      expect(found.shrinkage).toBeNull();
    }
  });

  it("refuses densities that cannot be", () => {
    expect(refusals(() => swellByWeight(wrong(null)))).toContain("missing soil");
    expect(refusals(() => swellByWeight(wrong({ bank: d(1500) })))).toEqual(["missing soil.loose"]);
    expect(refusals(() => swellByWeight({ bank: d(0), loose: d(9000) }))).toEqual([
      "too-small soil.bank",
      "too-large soil.loose",
    ]);
    const mixed = { bank: d(1500), loose: wrong(metre), compacted: wrong(1700) };
    expect(refusals(() => swellByWeight(mixed))).toEqual([
      "wrong-unit soil.loose",
      "wrong-unit soil.compacted",
    ]);
  });
});
