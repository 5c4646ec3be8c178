import { describe, it } from "vitest";
import {
  amount,
  fertiliserFor,
  nitrogenBalance,
  ounce,
  pound,
  squareFoot,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

// J. Traunfeld, University of Maryland Extension: need of vegetables, and fertiliser worked out.
const need = { crops: "vegetables in general", nitrogen: 2, source: "umd-fertilizer" };

describe("compost, nitrogen and fertiliser for vegetables", () => {
  it("2 lb for 1,000 sq ft are 0.2 lb, or 3.2 oz, for 100 (READ)", () => {
    const { need: found } = nitrogenBalance(times(100, squareFoot), need, times(0, pound));
    published(amount(found, pound), "0.2");
    published(amount(found, ounce), "3.2");
  });

  it("heavy feeders 4.8 oz for 100 sq ft (READ)", () => {
    const heavy = { ...need, nitrogen: 3 };
    const { need: found } = nitrogenBalance(times(100, squareFoot), heavy, times(0, pound));
    published(amount(found, ounce), "4.8");
  });

  it("3.2 oz from 15-0-0: 21.33 oz, 1.33 lb (READ)", () => {
    const found = fertiliserFor(times(3.2, ounce), 0.15);
    published(amount(found, ounce), "21.33");
    published(amount(found, pound), "1.33");
  });

  it("2 lb from urea, 46-0-0: 4.35 lb (READ)", () => {
    published(amount(fertiliserFor(times(2, pound), 0.46), pound), "4.35");
  });

  it("2 lb from a 6-2-1 meal: 33.3 lb (READ)", () => {
    published(amount(fertiliserFor(times(2, pound), 0.06), pound), "33.3");
  });

  it("half of that for 500 sq ft (DERIVED)", () => {
    const { need: half } = nitrogenBalance(times(500, squareFoot), need, times(0, pound));
    published(amount(fertiliserFor(half, 0.06), pound), "16.67");
  });
});
