import { describe, it } from "vitest";
import { inch, over, pilotHole } from "../../lib/index.ts";
import { published } from "./compare.ts";

// Commentary on the National Design Specification, Part XI, Wood Screws, 11.1 (READ).
describe("fasteners, lead holes of wood screws in withdrawal", () => {
  it("are about 70 % of the root diameter in softwood", () => {
    published(over(pilotHole(inch, { specificGravity: 0.42 }), inch), "0.70");
  });

  it("are about 90 % of it in dense hardwood", () => {
    published(over(pilotHole(inch, { specificGravity: 0.68 }), inch), "0.90");
  });
});
