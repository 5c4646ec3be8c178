import { describe, expect, it } from "vitest";
import { foot, inch, isQuantity, lengthDimension, money, quantity } from "../../../lib/index.ts";

describe("a quantity", () => {
  it("is refused as a bare number or text", () => {
    const misuses = [
      () => Number(foot),
      () => `${foot}`,
      () => (foot as never as number) * 2,
      () => (foot as never) < (inch as never),
      () => Math.max(foot as never, 3),
    ];
    for (const misuse of misuses) expect(misuse).toThrow("amount(q, foot)");
  });

  it("is a plain record that cannot be changed, and survives a clone", () => {
    expect(Object.isFrozen(foot)).toBe(true);
    expect(Object.keys(foot)).toEqual(["si", "dim"]);
    expect(structuredClone(money(5, "EUR"))).toEqual({
      si: 5,
      dim: [0, 0, 0, 1, 0],
      currency: "EUR",
    });
    expect(JSON.stringify(quantity(2, lengthDimension))).toBe('{"si":2,"dim":[1,0,0,0,0]}');
  });

  it("is known from its shape", () => {
    expect(isQuantity(structuredClone({ ...foot }))).toBe(true);
    const others = [null, 3, "8 ft", {}, [], { si: 1 }, { si: 1, dim: [1, 0] }];
    for (const other of others) expect(isQuantity(other)).toBe(false);
    expect(isQuantity({ si: "1", dim: [1, 0, 0, 0, 0] })).toBe(false);
    expect(isQuantity({ si: 1, dim: [1, 0, 0, 0, "0"] })).toBe(false);
    expect(isQuantity({ si: 1, dim: [1, 0, 0, 0, 0], currency: 5 })).toBe(false);
  });
});
