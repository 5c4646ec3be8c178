// An engineering page on earthwork volumes.
import { describe, it } from "vitest";
import {
  amount,
  cubicYard,
  kilogramPerCubicMetre,
  swell,
  swellByWeight,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("soil, earthwork volumes", () => {
  it("10 yd3 in the ground that become 13 yd3 dug have swelled by 30 % (READ)", () => {
    // The same mass in 10 and in 13 volumes.
    const { swell: share } = swellByWeight({
      bank: times(1300, kilogramPerCubicMetre),
      loose: times(1000, kilogramPerCubicMetre),
    });
    published(share * 100, "30");
    const soil = { soil: "its soil", bankToLoose: 1 + share, bankToCompacted: 0.9 };
    published(amount(swell(times(10, cubicYard), soil), cubicYard), "13");
  });
});
