// A tutoring page's worked answer on swell: 3400 lb/yd3 in place, 2700 lb/yd3 loose, one short ton.
import { describe, it } from "vitest";
import {
  amount,
  cubicYard,
  over,
  poundPerCubicYard,
  shortTon,
  swell,
  swellByWeight,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

const bank = times(3400, poundPerCubicYard);
const loose = times(2700, poundPerCubicYard);

describe("soil, worked answer on swell", () => {
  const found = swellByWeight({ bank, loose });
  const inGround = over(shortTon, bank);

  it("swells by 26 % (READ)", () => {
    published(found.swell * 100, "26");
  });

  it("a ton takes up 0.59 yd3 in the ground (READ)", () => {
    published(amount(inGround, cubicYard), "0.59");
  });

  it("and 0.74 yd3 in the truck (READ)", () => {
    const soil = { soil: "its soil", bankToLoose: 1 + found.swell, bankToCompacted: 0.9 };
    published(amount(swell(inGround, soil), cubicYard), "0.74");
  });
});
