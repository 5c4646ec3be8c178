// University of California, Agriculture and Natural Resources, drip emitter evaluation example:
// gallons a day = area in ft² times depth in inches times 0.623.
import { describe, it } from "vitest";
import { amount, gallon, inch, squareFoot, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, UC emitter evaluation", () => {
  it("an inch on a square foot is 0.623 gal (READ)", () => {
    published(amount(times(squareFoot, inch), gallon), "0.623");
  });
});
