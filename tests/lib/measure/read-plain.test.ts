import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Reading,
  readChoice,
  readCount,
  readNumber,
  readPercent,
  readYesNo,
} from "../../../lib/index.ts";

function outcome<T>(reading: Reading<T>): T | string {
  return reading.ok ? reading.value : reading.problem.code;
}

describe("readNumber", () => {
  it("reads what people write", () => {
    const written: [string, number][] = [
      ["12", 12],
      ["0", 0],
      ["1,250", 1250],
      ["1,250,000.5", 1250000.5],
      ["3 1/2", 3.5],
      ["½", 0.5],
      ["-0.5", -0.5],
      ["−7", -7],
      ["1e3", 1000],
      [" 4 ", 4],
    ];
    for (const [text, value] of written) expect(outcome(readNumber(text)), text).toBe(value);
  });

  it("gives no zero with a sign", () => {
    expect(Object.is(outcome(readNumber("-0")), 0)).toBe(true);
  });

  it("reads back any number JavaScript writes", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        expect(outcome(readNumber(String(number)))).toBe(number + 0);
      }),
    );
  });

  it("refuses the rest", () => {
    const refused: [string, string][] = [
      ["", "missing"],
      ["abc", "unreadable"],
      ["12 ft", "unreadable"],
      ["1,25", "unreadable"],
      ["1/0", "unreadable"],
      ["1e999", "unreadable"],
      ["Infinity", "unreadable"],
      ["0x10", "unreadable"],
      ["1 2", "unreadable"],
      ["--1", "unreadable"],
    ];
    for (const [text, code] of refused) expect(outcome(readNumber(text)), text).toBe(code);
    expect(outcome(readNumber(12 as never))).toBe("unreadable");
    expect(outcome(readNumber(undefined as never))).toBe("missing");
  });

  it("keeps bounds, zero among them", () => {
    expect(outcome(readNumber("0", { min: 0 }))).toBe(0);
    expect(outcome(readNumber("-1", { min: 0 }))).toBe("too-small");
    expect(outcome(readNumber("0", { max: 0 }))).toBe(0);
    expect(outcome(readNumber("1", { max: 0 }))).toBe("too-large");
    expect(outcome(readNumber("0", { above: 0 }))).toBe("too-small");
    expect(outcome(readNumber("1,5", { decimal: "," }))).toBe(1.5);
  });
});

describe("readCount", () => {
  it("reads whole numbers", () => {
    expect(outcome(readCount("12"))).toBe(12);
    expect(outcome(readCount("0"))).toBe(0);
    expect(outcome(readCount("1,250"))).toBe(1250);
  });

  it("refuses fractions, negative counts, words and nothing", () => {
    expect(outcome(readCount("1.5"))).toBe("unreadable");
    expect(outcome(readCount("1/2"))).toBe("unreadable");
    expect(outcome(readCount("two"))).toBe("unreadable");
    expect(outcome(readCount("-1"))).toBe("too-small");
    expect(outcome(readCount(""))).toBe("missing");
    expect(outcome(readCount("9", { max: 8 }))).toBe("too-large");
    expect(outcome(readCount("-1", { min: -5 }))).toBe(-1);
  });
});

describe("readPercent", () => {
  it("gives a share", () => {
    expect(outcome(readPercent("12 %"))).toBe(0.12);
    expect(outcome(readPercent("8.25%"))).toBe(0.0825);
    expect(outcome(readPercent("6 percent"))).toBe(0.06);
    expect(outcome(readPercent("0 %"))).toBe(0);
    expect(outcome(readPercent("12,5 %", { decimal: "," }))).toBe(0.125);
  });

  it("refuses a bare number, which could be a share or a percentage", () => {
    expect(outcome(readPercent("12"))).toBe("wrong-unit");
    expect(outcome(readPercent("0.12"))).toBe("wrong-unit");
    expect(outcome(readPercent("12", { unit: "%" }))).toBe(0.12);
  });

  it("refuses the rest, with bounds in per cent", () => {
    expect(outcome(readPercent(""))).toBe("missing");
    expect(outcome(readPercent("%"))).toBe("unreadable");
    expect(outcome(readPercent("x %"))).toBe("unreadable");
    const over = readPercent("112 %", { min: 0, max: 1 });
    expect(over.ok || over.problem).toMatchObject({
      code: "too-large",
      allowed: "a percentage from 0 % to 100 %",
      received: "112 %",
    });
    expect(outcome(readPercent("-1 %", { min: 0 }))).toBe("too-small");
  });
});

describe("readYesNo and readChoice", () => {
  it("read words in capitals or not", () => {
    expect(["yes", "Y", "TRUE"].map((text) => outcome(readYesNo(text)))).toEqual([
      true,
      true,
      true,
    ]);
    expect(["no", "n", "false"].map((text) => outcome(readYesNo(text)))).toEqual([
      false,
      false,
      false,
    ]);
    expect(outcome(readChoice(" Ends", { choices: ["sides", "ends"] }))).toBe("ends");
  });

  it("refuse the rest, naming what is allowed", () => {
    expect(outcome(readYesNo("maybe"))).toBe("unreadable");
    expect(outcome(readYesNo("constructor"))).toBe("unreadable");
    expect(outcome(readYesNo(""))).toBe("missing");
    const reading = readChoice("corner", { choices: ["sides", "ends"], path: ["lap"] });
    expect(reading.ok || reading.problem).toEqual({
      code: "unknown",
      path: ["lap"],
      allowed: "one of sides, ends",
      received: "corner",
      remedy: "Choose one of sides, ends.",
    });
    expect(outcome(readChoice("", { choices: ["sides"] }))).toBe("missing");
  });
});
