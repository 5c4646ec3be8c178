// A gardening page, "What is an inch of water when watering plants".
import { describe, it } from "vitest";
import { amount, gallon, inch, squareFoot, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, water by depth", () => {
  it("an inch on 1000 ft² is 623 gal (READ)", () => {
    published(amount(times(times(1000, squareFoot), inch), gallon), "623");
  });
});
