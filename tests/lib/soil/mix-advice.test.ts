import { describe, expect, it } from "vitest";
import { type MixRule, mixAdvice, type RottingMaterial, rottingBlend } from "../../../lib/index.ts";
import { dataRow, dataRows } from "../../published/soil-rows.ts";

const row = (name: string) => dataRow<RottingMaterial>("materials", "material", name);
const rules = dataRows("mixAdvice").map((rule) =>
  Object.fromEntries(
    Object.entries(rule).map(([key, value]) => [key, value === "" ? null : value]),
  ),
) as unknown as MixRule[];
const blend = (compost: number) =>
  rottingBlend([
    { material: row("topsoil"), share: 1 - compost },
    { material: row("compost"), share: compost },
  ]);
const judged = (compost: number, mix: string) =>
  mixAdvice(blend(compost), rules).find((one) => one.mix === mix);

describe("advice on a mix", () => {
  // University of Maryland Extension: compost to topsoil 1 to 2 or 1 to 1; 25 to 50 per cent organic
  // matter by volume or 5 to 15 per cent by weight.
  it("one part compost to one or two of topsoil is within what Maryland advises (READ)", () => {
    for (const share of [1 / 2, 1 / 3])
      expect(judged(share, "a raised bed")).toMatchObject({ byMass: "within", byVolume: "within" });
  });

  it("compost alone is more, a twentieth of it less", () => {
    expect(judged(0.999, "a raised bed")).toMatchObject({ byMass: "more", byVolume: "more" });
    expect(judged(0.05, "a raised bed")).toMatchObject({ byVolume: "less" });
  });

  it("takes both bounds in, and nothing past them", () => {
    for (const [share, byVolume] of [
      [0.249, "less"],
      [0.25, "within"],
      [0.5, "within"],
      [0.501, "more"],
    ] as const)
      expect(judged(share, "a raised bed")).toMatchObject({ byVolume });
  });

  it("says nothing of what an advice leaves out", () => {
    expect(judged(0.3, "planting beds that take in rain")?.byVolume).toBeNull();
    expect(judged(0.05, "compost mixed into native soil, low beds")).toMatchObject({
      byMass: null,
      byVolume: "within",
    });
  });
});
