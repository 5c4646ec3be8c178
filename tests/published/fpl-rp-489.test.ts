// Green, D. W., Moisture Content and the Shrinkage of Lumber, USDA FPL-RP-489 (1989), and the
// shrinkage of PS 20-70 that it repeats (READ).
import { describe, it } from "vitest";
import { amount, inch, sizeAtMoisture } from "../../lib/index.ts";
import { inches } from "../lib/lumber/make.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

const lost = (face: "width" | "thickness") =>
  100 - 5 * amount(sizeAtMoisture(inches(20), { from: 0.28, to: 0.15, face }), inch);

describe("lumber, shrinkage from green to 15 %", () => {
  it("thickness: 2.35 % (READ)", () => {
    published(lost("thickness"), "2.35");
  });

  it("width: 2.80 % (READ)", () => {
    published(lost("width"), "2.80");
  });
});

describe("lumber, a course page's problem on the same formula (Missouri S&T, READ)", () => {
  const after = amount(sizeAtMoisture(inches(13.25), { from: 0.19, to: 0.1 }), inch);

  it("13.25 in from 19 % to 10 %: printed 13.02 in", () => {
    knownDifference(after, "13.02", "the page's own formula evaluates to 12.99 in");
  });

  it("13.25 in from 19 % to 10 % by its rule of thumb: 13.01 in", () => {
    knownDifference(
      after,
      "13.01",
      "the rule of 0.2 % for each percent is coarser than the formula",
    );
  });
});
