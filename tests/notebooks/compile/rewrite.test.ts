import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compileAlone, compileFormula, rewritten, run } from "./compiled.ts";

const cases: readonly (readonly [formula: string, text: string])[] = [
  ["a * b + c", "$plus($times(a , b) , c)"],
  ["a + b * (c - d) / 2", "$plus(a , $over($times(b , ($minus(c , d))) , 2))"],
  ["-(a) * -b", "$times($negative((a)) , $negative(b))"],
  ["a - - b", "$minus(a , $negative( b))"],
  ["+a", "$times(a, 1)"],
  ["2 ** a ** b", "$power(2 , $power(a , b))"],
  ["a % b", "$remainder(a , b)"],
  ["a /* b * c */ * /* + */ d", "$times(a /* b * c */ , /* + */ d)"],
  ["a // - b\n- c", "$minus(a // - b\n, c)"],
  ["(a)\n * (b)", "$times((a)\n , (b))"],
  ["a < b", "$less(a , b)"],
  ["a <= b", "$atMost(a , b)"],
  ["a > b && c >= d", "$more(a , b) && $atLeast(c , d)"],
  ["a === b", "$same(a , b)"],
  ["a !== b", "!$same(a , b)"],
  ["a == b || a != b", "$same(a , b) || !$same(a , b)"],
  ["(a !== b) + c", "$plus((!$same(a , b)) , c)"],
  // No quantity is one of these; as they are, they also tell a type checker more.
  ["a === undefined", "a === undefined"],
  ["a == null", "a == null"],
  ["typeof a === 'string'", "typeof a === 'string'"],
  ["a !== `x`", "a !== `x`"],
  ["a === true", "a === true"],
  ["a === 0", "$same(a , 0)"],
  // Nothing but numbers written out.
  ["1 / 8", "1 / 8"],
  ["(3 + 1 / 2) * a", "$times((3 + 1 / 2) , a)"],
  ["-1", "-1"],
  ["a - -1", "$minus(a , -1)"],
  // Not arithmetic.
  ["a & b | ~c", "a & b | ~c"],
  ["'x' in a", "'x' in a"],
  ["!a ?? b", "!a ?? b"],
  [`\`\${a + b}\``, `\`\${$plus(a , b)}\``],
  ["a.map((x) => x * b)", "a.map((x) => $times(x , b))"],
  ["{ x: a + 1, [b + 'y']: c }", "{ x: $plus(a , 1), [$plus(b , 'y')]: c }"],
  ["a?.b * c", "$times(a?.b , c)"],
  ["await a * b", "$times(await a , b)"],
  ["(a, b) * c", "$times((a, b) , c)"],
  ["(a ? b : c) * d", "$times((a ? b : c) , d)"],
  ["'$plus' + a", "$$plus('$plus' , a)"],
  ["let x = 0\nx += a * b\nreturn x", "let x = 0\nx = $plus(x, $times(a , b))\nreturn x"],
  ["let x = 1\nx **= a\nreturn x", "let x = 1\nx = $power(x, a)\nreturn x"],
  ["const o = {}\no.x -= a\nreturn o", "const o = {}\no.x = $minus(o.x, a)\nreturn o"],
  [
    "const o = []\no[a.b + 1] *= c\nreturn o",
    "const o = []\no[$plus(a.b , 1)] = $times(o[$plus(a.b, 1)], c)\nreturn o",
  ],
  [
    "let x = 1, y = 2\nx += y += a\nreturn x",
    "let x = 1, y = 2\nx = $plus(x, y = $plus(y, a))\nreturn x",
  ],
  ["let x\nx ||= a\nx <<= b\nx++\nreturn x", "let x\nx ||= a\nx <<= b\nx++\nreturn x"],
  [
    "for (let i = 0; i < a; i += 1) {}\nreturn 1",
    "for (let i = 0; $less(i , a); i = $plus(i, 1)) {}\nreturn 1",
  ],
  ["if (a > 1) return b + 1\nreturn c", "if ($more(a , 1)) return $plus(b , 1)\nreturn c"],
  [
    "const f = (x = a + 1) => -x\nreturn f",
    "const f = (x = $plus(a , 1)) => $negative(x)\nreturn f",
  ],
];

describe("operators become calls", () => {
  test.each(cases)("%s", (formula, text) => {
    const cell = compileFormula(formula);
    expect(cell.problem).toBeUndefined();
    expect(rewritten(cell)).toBe(text);
  });
});

test("each line stays a line", () => {
  const formula = "const x =\n  a *\n  // then\n  b\nlet y = x\ny +=\n  c\nreturn (\n  y -\n  d\n)";
  const lines = rewritten(compileFormula(formula)).split("\n");
  expect(lines).toHaveLength(formula.split("\n").length);
  expect(lines[8]).toContain("y");
});

test("a compound assignment that would call a function twice is refused where it stands", () => {
  const { problem } = compileFormula("const o = {}\no[f()] += 1\nfunction f() {}\nreturn o");
  expect(problem).toMatchObject({ code: "syntax", line: 19, column: 1 });
  expect(problem?.message).toContain("keep it in a name first");
});

// Expressions of numbers, in the form JavaScript reads them back.
const { expression } = fc.letrec<{ expression: string; binary: string; leaf: string }>((tie) => ({
  leaf: fc.oneof(
    fc.constantFrom("a", "b", "c", "d", "0", "1", "2", "0.1", "-0", "1e300", "7", "(-3)"),
    fc.integer({ min: 0, max: 50 }).map(String),
  ),
  binary: fc
    .tuple(
      tie("expression"),
      fc.constantFrom("+", "-", "*", "/", "%", "<", "<=", ">", ">=", "===", "!==", "**"),
      tie("expression"),
      fc.constantFrom("", " ", "\n", " /* + */ ", " // -\n"),
    )
    .map(([left, operator, right, space]) =>
      operator === "**" || left.startsWith("-")
        ? `(${left})${space}${operator} (${right})`
        : `${left}${space}${operator} ${right}`,
    ),
  expression: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    tie("leaf"),
    tie("binary"),
    tie("binary"),
    tie("binary").map((inner) => `(${inner})`),
    fc
      .tuple(fc.constantFrom("-", "- ", "!", "+"), tie("expression"))
      .map(([sign, inner]) => `${sign}(${inner})`),
    fc
      .tuple(tie("expression"), tie("expression"), tie("expression"))
      .map(([x, y, z]) => `(${x} ? ${y} : ${z})`),
    tie("binary").map((inner) => `((a, b) => a - b + (${inner}))(b, ${inner})`),
    tie("binary").map((inner) => `[${inner}, a][(${inner}) > 1 ? 0 : 1]`),
  ),
}));

test("20,000 expressions of numbers give what JavaScript gives", () => {
  const values = { a: 3, b: -2.5, c: 0, d: 1e10 };
  const names = new Set(Object.keys(values));
  const five = fc.array(expression, { minLength: 5, maxLength: 5 });
  fc.assert(
    fc.property(five, (expressions) => {
      const formula = `[\n${expressions.join("\n,")}\n]`;
      const own = new Function(...names, `"use strict";return (${formula}\n)`);
      const cell = compileAlone(formula, names);
      expect(run(cell, values), cell.body).toEqual(own(...Object.values(values)));
    }),
    { numRuns: 4000, seed: 20260425 },
  );
}, 60_000);
