import { describe, expect, it } from "vitest";
import {
  cubicFoot,
  cubicYard,
  foot,
  inch,
  money,
  over,
  plus,
  printQuantity,
  quantityJson,
  reviveQuantities,
  times,
  week,
} from "../../../lib/index.ts";
import { codesOf } from "./generators.ts";

describe("quantityJson", () => {
  it("gives value, dimension and text", () => {
    expect(quantityJson(times(4.2, cubicYard), "us")).toEqual({
      si: 4.2 * 0.764554857984,
      dimension: "volume",
      text: "4.2 cu yd",
    });
    expect(quantityJson(cubicFoot, "metric")).toMatchObject({ text: "28.3 L" });
    expect(quantityJson(over(inch, week))).toMatchObject({ dimension: "length per time" });
  });

  it("gives money as decimal text and code", () => {
    expect(quantityJson(money(1234.5, "USD"))).toEqual({ amount: "1234.50", currency: "USD" });
    expect(quantityJson(money(1250, "JPY"))).toEqual({ amount: "1250", currency: "JPY" });
    expect(quantityJson(money(-0.001))).toEqual({ amount: "0.00", currency: null });
  });

  it("refuses what is no finite quantity", () => {
    expect(codesOf(() => quantityJson(undefined as never))).toEqual(["missing at quantity"]);
    expect(codesOf(() => quantityJson({ ...foot, si: Number.NaN }))).toEqual([
      "unreadable at quantity",
    ]);
  });
});

describe("reviveQuantities", () => {
  const plan = {
    beds: [{ length: times(8, foot), name: "A" }],
    bill: { total: money(5, "EUR") },
    when: null,
    none: undefined,
  };

  it("makes quantities whole again, however deep", () => {
    const revived = reviveQuantities(structuredClone(plan));
    expect(revived).toEqual(plan);
    const [bed] = revived.beds;
    expect(() => Number(bed?.length)).toThrow("used as a bare number");
    expect(printQuantity(plus(bed?.length ?? foot, foot))).toBe("9 ft");
    expect(Object.isFrozen(bed?.length)).toBe(true);
  });

  it("works for JSON too, and leaves the rest alone", () => {
    const revived = reviveQuantities(JSON.parse(JSON.stringify(plan)) as typeof plan);
    expect(printQuantity(revived.bill.total)).toBe("€5.00");
    expect(reviveQuantities("8 ft")).toBe("8 ft");
    expect(reviveQuantities(null)).toBeNull();
    const moment = new Date(0);
    expect(reviveQuantities({ moment }).moment).toBe(moment);
  });

  it("follows records that name themselves", () => {
    const loop: { self?: unknown; depth: typeof foot } = { depth: foot };
    loop.self = loop;
    const revived = reviveQuantities(structuredClone(loop));
    expect(revived.self).toBe(revived);
    expect(printQuantity(revived.depth)).toBe("1 ft");
  });

  it("keeps a key that could change a prototype as a plain key", () => {
    const hostile = JSON.parse('{"__proto__": {"si": 1}, "a": 1}') as object;
    const revived = reviveQuantities(hostile);
    expect(Object.getPrototypeOf(revived)).toBe(Object.prototype);
    expect(Object.keys(revived)).toEqual(["__proto__", "a"]);
  });
});
