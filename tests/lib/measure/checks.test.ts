import { describe, expect, it } from "vitest";
import { Checks, foot, inch, money, ProblemError, readLength, times } from "../../../lib/index.ts";
import { codesOf } from "./generators.ts";

describe("Checks", () => {
  it("lets right input pass", () => {
    const checks = new Checks()
      .quantity(foot, "length", ["depth"], { min: inch })
      .money(money(5), ["price"])
      .number(0, ["share"], { min: 0 })
      .count(0, ["stakes"])
      .text("A-1", ["bed"])
      .choice("ends", ["sides", "ends"], ["lap"]);
    expect(checks.problems).toEqual([]);
    expect(() => checks.done()).not.toThrow();
  });

  it("throws all problems at once, in order", () => {
    const check = () =>
      new Checks()
        .quantity(12, "length", ["depth"])
        .money(undefined, ["price"])
        .number(Number.NaN, ["share"])
        .count(1.5, ["stakes"])
        .text("", ["bed"])
        .choice("corner", ["sides", "ends"], ["lap"])
        .done();
    expect(codesOf(check)).toEqual([
      "wrong-unit at depth",
      "missing at price",
      "unreadable at share",
      "unreadable at stakes",
      "missing at bed",
      "unknown at lap",
    ]);
    expect(check).toThrow(/depth: .*\nprice: .*\nshare: /);
  });

  it("takes problems of readings, of other calculations, and of its caller", () => {
    const checks = new Checks();
    expect(checks.value(readLength("8 ft"))).toEqual(times(8, foot));
    expect(checks.value(readLength("8", { path: ["length"] }))).toBeUndefined();
    expect(checks.attempt(() => 3)).toBe(3);
    const inner = () => new Checks().count(-1, ["courses"]).done();
    expect(checks.attempt(inner)).toBeUndefined();
    const contradiction = {
      code: "contradiction",
      path: ["cap"],
      allowed: "a cap no wider than the bed",
      received: "2 ft",
      remedy: "Choose a narrower cap.",
    } as const;
    checks.unless(true, contradiction).unless(false, contradiction).add(undefined);
    expect(codesOf(() => checks.done())).toEqual([
      "wrong-unit at length",
      "too-small at courses",
      "contradiction at cap",
    ]);
  });

  it("does not swallow errors that are not problems", () => {
    const bug = () => {
      throw new RangeError("a bug");
    };
    expect(() => new Checks().attempt(bug)).toThrow(RangeError);
    expect(() => new Checks().attempt(bug)).not.toThrow(ProblemError);
  });
});
