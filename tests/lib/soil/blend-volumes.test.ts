import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blendVolumes, cubicMetre, foot, times } from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

describe("blendVolumes", () => {
  it("shares the volume out without rest, in the order given", () => {
    const shares = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e3, noNaN: true }), shares, (m3, all) => {
        const parts = all.map((share, at) => ({ material: `part ${at}`, share }));
        const volumes = blendVolumes(times(m3, cubicMetre), parts);
        expect(volumes.map(({ material }) => material)).toEqual(parts.map((p) => p.material));
        expect(volumes.reduce((sum, { volume }) => sum + volume.si, 0)).toBeCloseTo(m3, 8);
      }),
    );
  });

  it("does not care in what unit of parts the shares are", () => {
    const half = blendVolumes(cubicMetre, [
      { material: "a", share: 0.25 },
      { material: "b", share: 0.5 },
    ]);
    expect(half[1]?.volume.si).toBeCloseTo(2 / 3, 12);
  });

  it("refuses volumes and parts that cannot be", () => {
    const parts = [{ material: "a", share: 1 }];
    expect(refusals(() => blendVolumes(wrong(undefined), parts))).toEqual(["missing volume"]);
    expect(refusals(() => blendVolumes(wrong(foot), parts))).toEqual(["wrong-unit volume"]);
    expect(refusals(() => blendVolumes(times(-1, cubicMetre), []))).toEqual([
      "too-small volume",
      "missing parts",
    ]);
    expect(refusals(() => blendVolumes(cubicMetre, [{ material: "a", share: -1 }]))).toEqual([
      "too-small parts.1.share",
    ]);
    expect(refusals(() => blendVolumes(cubicMetre, wrong([null])))).toContain("missing parts.1");
    expect(refusals(() => blendVolumes(cubicMetre, wrong([{ share: 1 }])))).toEqual([
      "missing parts.1.material",
    ]);
  });
});
