import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { money, shareOut } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";

const cents = (shares: readonly { readonly si: number }[]) =>
  shares.map((share) => Math.round(share.si * 100));

describe("shareOut(sum, weights)", () => {
  // Hamilton's method of largest remainders, as worked by hand: quotas 4.43, 4.43 and 1.14 cents.
  it("gives the cents left over to the largest remainders", () => {
    expect(cents(shareOut(money(0.1, "USD"), [31, 31, 8]))).toEqual([5, 4, 1]);
  });

  it("gives equal weights equal shares, the first the odd cent", () => {
    expect(cents(shareOut(money(1, "USD"), [1, 1, 1]))).toEqual([34, 33, 33]);
  });

  it("takes all weights for equal where all are zero", () => {
    expect(cents(shareOut(money(0.03, "USD"), [0, 0]))).toEqual([2, 1]);
  });

  it("gives nothing to a weight of nothing", () => {
    expect(cents(shareOut(money(5, "USD"), [0, 1]))).toEqual([0, 500]);
  });

  it("adds up to the cent, and is off by less than a cent, whatever the weights", () => {
    const weight = fc.oneof(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.constant(0));
    fc.assert(
      fc.property(
        fc.nat(1e8),
        fc.array(weight, { minLength: 1, maxLength: 30 }),
        (sum, weights) => {
          const shares = cents(shareOut(money(sum / 100, "USD"), weights));
          expect(shares.reduce((all, share) => all + share, 0)).toBe(sum);
          const total = weights.reduce((all, each) => all + each, 0);
          if (total < 1e-9) return;
          weights.forEach((each, place) => {
            expect(Math.abs((shares[place] ?? 0) - (sum * each) / total)).toBeLessThan(1 + 1e-6);
          });
        },
      ),
    );
  });

  it("gives no share for no weights", () => {
    expect(shareOut(money(1, "USD"), [])).toEqual([]);
  });

  it.each([
    [undefined, [1], "missing", ["sum"]],
    [5, [1], "wrong-unit", ["sum"]],
    [money(-5), [1], "too-small", ["sum"]],
    [money(1), [-1], "too-small", ["weights", 1]],
    [money(1), [1, Number.NaN], "unreadable", ["weights", 2]],
    [money(1), [1e30], "too-large", ["weights", 1]],
    [money(1), ["1"], "unreadable", ["weights", 1]],
  ])("refuses %o by %o", (sum, weights, code, path) => {
    expect(problemsOf(() => shareOut(sum as never, weights as never))).toEqual([[code, path]]);
  });
});
