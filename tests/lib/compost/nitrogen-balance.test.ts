import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, nitrogenBalance, pound, squareFoot, times } from "../../../lib/index.ts";

const need = { crops: "vegetables", nitrogen: 2, source: "umd-fertilizer" };
const balance = (area: number, supply: number) =>
  nitrogenBalance(times(area, squareFoot), need, times(supply, pound));

describe("nitrogen needed and supplied", () => {
  it("an inch of compost meets 77 to 116 per cent of the need (DERIVED)", () => {
    expect(balance(1000, 1.54).fit).toBe("short");
    expect(amount(balance(1000, 1.54).short, pound)).toBeCloseTo(0.46, 9);
    expect(balance(1000, 2.31).fit).toBe("enough");
    // A quarter over is our own limit (common practice).
    expect(balance(1000, 2.49).fit).toBe("enough");
    expect(balance(1000, 2.51).fit).toBe("over");
  });

  it("is short or over, never both, and the two differ from the need by the supply", () => {
    const some = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(some, some, (area, supply) => {
        const found = balance(area * 100, supply);
        expect(Math.min(found.short.si, found.over.si)).toBe(0);
        expect(found.need.si - found.short.si + found.over.si).toBeCloseTo(found.supply.si, 9);
      }),
    );
  });

  it("needs nothing where there is no area", () => {
    expect(balance(0, 0).fit).toBe("enough");
  });
});
