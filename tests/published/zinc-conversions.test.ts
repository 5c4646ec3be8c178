// Galvanizers' association notes on ASTM A653 and A123: conversions of coating weight and thickness.
import { describe, it } from "vitest";
import {
  amount,
  gram,
  inch,
  millimetre,
  ounce,
  over,
  squareFoot,
  squareMetre,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

const ouncePerSquareFoot = over(ounce, squareFoot);
const gramPerSquareMetre = over(gram, squareMetre);

describe("measure, zinc coatings", () => {
  it("1 oz/ft² is 305.15 g/m² (READ)", () => {
    published(amount(ouncePerSquareFoot, gramPerSquareMetre), "305.15");
  });

  it("a micrometre is 0.03937 mil (READ)", () => {
    published(amount(times(0.001, millimetre), times(0.001, inch)), "0.03937");
  });

  it("75 micrometres are 2.95 mil (READ)", () => {
    published(amount(times(0.075, millimetre), times(0.001, inch)), "2.95");
  });
});
