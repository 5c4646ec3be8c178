// A compost handout with a worked recipe: 50 lb of hay, 10 lb of kitchen scraps, 2 lb of coffee
// grounds, by weight as they come.
import { describe, it } from "vitest";
import { amount, carbonNitrogen, pound, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

describe("compost, worked recipe", () => {
  const found = carbonNitrogen([
    { mass: times(50, pound), carbon: 0.4, nitrogen: 0.01 },
    { mass: times(10, pound), carbon: 0.1, nitrogen: 0.01 },
    { mass: times(2, pound), carbon: 0.25, nitrogen: 0.01 },
  ]);

  it("holds 21.5 lb of carbon (READ)", () => {
    published(amount(found.carbon, pound), "21.5");
  });
  it("and 0.62 lb of nitrogen (READ)", () => {
    published(amount(found.nitrogen, pound), "0.62");
  });
  it("which is 34.7 to 1 (READ)", () => {
    published(found.ratio ?? 0, "34.7");
  });
});
