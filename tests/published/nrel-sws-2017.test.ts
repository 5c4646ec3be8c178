import { describe, it } from "vitest";
import { amount, foot, inch, linerStrip, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

// NREL, Standard Work Specifications for home energy upgrades, 2.0403.1 (READ): seams of a ground
// moisture barrier lap at least 12 in.
describe("liner, laps of sheet", () => {
  it("are 12 in unless said otherwise", () => {
    const section = { thickness: times(inch, 1.5), width: times(inch, 11.25) };
    const { lap } = linerStrip({
      length: times(foot, 8),
      width: times(foot, 4),
      courses: 1,
      section,
    });
    published(amount(lap, inch), "12");
  });
});
