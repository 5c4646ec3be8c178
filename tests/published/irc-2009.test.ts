// International Code Council, International Residential Code, 2009: metric values beside the feet
// and inches of R105.2 item 3 and R404.4, as quoted by building departments.
import { describe, it } from "vitest";
import { amount, foot, inch, millimetre, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, IRC 2009", () => {
  it("R105.2: a wall of 4 ft is 1,219 mm (READ-2nd)", () => {
    published(amount(times(4, foot), millimetre), "1,219");
  });

  it("R404.4: fill of 24 in is 610 mm (READ-2nd)", () => {
    published(amount(times(24, inch), millimetre), "610");
  });
});
