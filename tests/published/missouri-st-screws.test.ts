import { describe, it } from "vitest";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import { amount, inch, type Length } from "../../lib/index.ts";
import { published } from "./compare.ts";

// Missouri University of Science and Technology, course notes on wood fasteners (READ).
describe("fasteners, diameters of screw numbers, in inches", () => {
  const { screwNumbers = [], screws = [] } = loadPublished(dataFiles());

  it.each([
    ["8", "0.164"],
    ["10", "0.190"],
    ["12", "0.216"],
  ] as const)("number %s", (gauge, printed) => {
    for (const row of [...screwNumbers, ...screws].filter((each) => each.gauge === gauge)) {
      published(amount(row.diameter as Length, inch), printed);
    }
  });
});
