// C. J. Moorberg and D. A. Crouse, "Soils Laboratory Manual", K-State edition: page of conversions.
import { describe, it } from "vitest";
import { amount, cubicFoot, cubicMetre, gallon } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, K-State soils manual", () => {
  it("a cubic foot is 7.48 gal (READ)", () => {
    published(amount(cubicFoot, gallon), "7.48");
  });

  it("a cubic foot is 0.028 m³ (READ)", () => {
    published(amount(cubicFoot, cubicMetre), "0.028");
  });
});
