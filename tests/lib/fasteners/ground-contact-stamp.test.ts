import { describe, expect, it } from "vitest";
import { groundContactStamp, poundPerCubicFoot, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const pcf = (n: number) => times(poundPerCubicFoot, n);
const row = {
  preservative: "invented",
  aboveGround: pcf(0.1),
  groundContact: pcf(0.2),
  heavyDuty: null,
};

describe("groundContactStamp", () => {
  it("asks for ground contact, never for above ground", () => {
    expect(groundContactStamp()).toMatchObject({ category: "UC4A", retention: null });
    expect(groundContactStamp().look).toMatch(/GROUND CONTACT or UC4A.*ABOVE GROUND/);
  });

  it("takes the retention of the preservative's row", () => {
    expect(groundContactStamp({ preservative: row }).retention).toEqual(pcf(0.2));
    expect(groundContactStamp({ preservative: row, heavy: true })).toMatchObject({
      category: "UC4B",
      retention: null,
    });
  });

  it("refuses what is no row", () => {
    expect(refusals(() => groundContactStamp(wrong(null)))).toEqual(["missing options"]);
    expect(refusals(() => groundContactStamp({ heavy: wrong("yes") }))).toEqual(["unknown heavy"]);
    expect(refusals(() => groundContactStamp({ preservative: wrong("MCA") }))).toEqual([
      "unreadable preservative",
    ]);
    expect(
      refusals(() => groundContactStamp({ preservative: { ...row, groundContact: wrong(0.15) } })),
    ).toEqual(["wrong-unit preservative.groundContact"]);
  });
});
