import { describe, expect, it } from "vitest";
import { bedFill, inch, times, totalFill } from "../../../lib/index.ts";
import { bedOf, refusals, settling, wrong } from "./at-hand.ts";

const inches = (n: number) => times(n, inch);

describe("totalFill", () => {
  const a = bedFill(bedOf(96, 48), settling(0.1, 0.2, 0.3), { depth: inches(9) });
  const b = bedFill(
    bedOf(72, 36),
    { ...settling(0, 0.1), settleSource: "from memory" },
    { depth: inches(6), depthNow: inches(7) },
  );

  it("adds low to low and high to high, and keeps what each rests on", () => {
    const total = totalFill([a, b]);
    for (const step of ["low", "likely", "high"] as const)
      expect(total.order[step].si).toBeCloseTo(a.order[step].si + b.order[step].si, 12);
    expect(total.order.basis).toEqual(["common practice", "from memory"]);
    expect(total.area.si).toBeCloseTo(a.area.si + b.area.si, 12);
  });

  it("does not fill one bed with what another has too much", () => {
    expect(totalFill([a, b]).settled.si).toBeCloseTo(a.settled.si, 12);
    expect(totalFill([a, b]).surplus.si).toBeCloseTo(b.surplus.si, 12);
  });

  it("is nothing for no beds", () => {
    expect(totalFill([]).order.likely.si).toBe(0);
  });

  it("gives for equal beds what one fill of several gives", () => {
    const three = bedFill(bedOf(96, 48), settling(0.1, 0.2, 0.3), { depth: inches(9), count: 3 });
    expect(totalFill([a, a, a]).order.high.si).toBeCloseTo(three.order.high.si, 12);
  });

  it("refuses what is no list of fills", () => {
    expect(refusals(() => totalFill(wrong(undefined)))).toEqual(["missing fills"]);
    expect(refusals(() => totalFill(wrong("none")))).toEqual(["unreadable fills"]);
    expect(refusals(() => totalFill(wrong([a, { settled: 3 }])))).toContain("missing fills.2.area");
  });
});
