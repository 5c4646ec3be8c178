import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaCovered, coverVolume, cubicMetre, foot, metre, times } from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

describe("areaCovered", () => {
  it("is the way back from coverVolume", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e3, noNaN: true }),
        fc.double({ min: 0.001, max: 6, noNaN: true }),
        (m3, m) => {
          const volume = times(m3, cubicMetre);
          const depth = times(m, metre);
          expect(coverVolume(areaCovered(volume, depth), depth).si).toBeCloseTo(m3, 8);
        },
      ),
    );
  });

  it("refuses volumes and depths that cannot be", () => {
    expect(refusals(() => areaCovered(wrong(undefined), wrong(2)))).toEqual([
      "missing volume",
      "wrong-unit depth",
    ]);
    expect(refusals(() => areaCovered(wrong(foot), times(0, metre)))).toEqual([
      "wrong-unit volume",
      "too-small depth",
    ]);
    expect(refusals(() => areaCovered(times(-1, cubicMetre), times(7, metre)))).toEqual([
      "too-small volume",
      "too-large depth",
    ]);
  });
});
