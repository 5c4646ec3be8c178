// Trade institute's handbook of horticultural perlite, p. 3-2.
import { describe, it } from "vitest";
import { amount, cubicFoot, pound, soilMass } from "../../lib/index.ts";
import { published } from "./compare.ts";
import { materialRow } from "./soil-rows.ts";

describe("soil, perlite handbook", () => {
  const mass = soilMass(cubicFoot, materialRow("perlite"));

  it("dry perlite weighs 5.1 to 8.6 lb/ft3 (READ)", () => {
    published(amount(mass.dry.low, pound), "5.1");
    published(amount(mass.dry.high, pound), "8.6");
  });

  it("the lightest wet mix weighs 23.3 lb/ft3 (READ)", () => {
    published(amount(mass.wet.low, pound), "23.3");
  });
});
