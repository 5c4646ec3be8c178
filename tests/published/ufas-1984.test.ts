// "Uniform Federal Accessibility Standards", 1984, 4.3.3. Its millimetres are whole fives.
import { describe, it } from "vitest";
import { amount, inch, millimetre, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("measure, UFAS", () => {
  it("4.3.3: a route is 36 in wide, 915 mm (READ)", () => {
    published(amount(times(36, inch), millimetre), "915", 2.5);
  });
});
