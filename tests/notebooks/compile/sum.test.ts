import { describe, expect, test } from "vitest";
import { sumPaths, sumText } from "../../../notebooks/engine/compile/index.ts";
import { compileFormula } from "./compiled.ts";

const printed = new Map([
  ["a", "4 ft"],
  ["b", "8 ft"],
  ["c.depth", "10 in"],
  ["inch", "1 in"],
]);

describe("the sum of a short formula", () => {
  test.each([
    ["a * b * c.depth", "4 ft × 8 ft × 10 in"],
    ["(a + b) / 2 - c.depth", "(4 ft + 8 ft) ÷ 2 − 10 in"],
    ["-a + 3 * inch", "−4 ft + 3 × 1 in"],
    ["a <= b", "4 ft ≤ 8 ft"],
    ["a * d", "4 ft × d"],
    ["  a + b\n", "4 ft + 8 ft"],
  ])("%s", (formula, text) => {
    expect(sumText(compileFormula(formula), printed)).toBe(text);
  });

  test.each([
    "a",
    "1 + 2",
    "fill(a) + b",
    "const x = a\nreturn x * b",
    "a +\n  b // why",
    "a ? b : c",
    "await a + b",
    "a['x'] + b",
    "Math.PI * a",
    "[a + b]",
    `\`\${'x'}\` + a`,
    "a + soyl",
    `a${" + a".repeat(40)}`,
  ])("%s has none", (formula) => {
    expect(sumPaths(compileFormula(formula))).toBeUndefined();
    expect(sumText(compileFormula(formula), printed)).toBeUndefined();
  });
});

test("the paths that have to be printed, each once", () => {
  expect(sumPaths(compileFormula("a * c.depth.x + a * inch"))).toEqual(["a", "c.depth.x", "inch"]);
});
