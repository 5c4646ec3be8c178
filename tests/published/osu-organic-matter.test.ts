import { describe, it } from "vitest";
import {
  amount,
  fertiliserFor,
  inch,
  nitrogenForWood,
  pound,
  squareFoot,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

// Oregon State University Extension: for each inch of wood products on 1,000 sq ft at least 6 lb of
// ammonium nitrate (34 per cent nitrogen) or 10 lb of ammonium sulfate (21 per cent).
describe("compost, nitrogen for wood that is dug in", () => {
  const { low, high } = nitrogenForWood(times(1000, squareFoot), inch);

  it("6 lb of ammonium nitrate (READ)", () => {
    published(amount(fertiliserFor(low, 0.34), pound), "6");
  });

  it("10 lb of ammonium sulfate (READ)", () => {
    published(amount(fertiliserFor(high, 0.21), pound), "10");
  });
});
