import { describe, expect, test } from "vitest";
import { compileFormula } from "./compiled.ts";

// Each formula stands among cells a, b, c, d; the second column is the cells it takes, worked out
// by hand from the scope rules of ECMA-262.
const cases: readonly (readonly [formula: string, takes: string])[] = [
  ["a + b", "a b"],
  ["b + a + b", "b a"],
  ["{ x: a, b }", "a b"],
  ["({ a: 1, [b]: 2 })", "b"],
  ["a.b.c", "a"],
  ["a[b]", "a b"],
  ["a?.[b]?.(c)", "a b c"],
  ["(a) => a + b", "b"],
  ["({ a, b: [c = d] }) => a + c + b", "d b"],
  ["(a, b = a, ...c) => d", "d"],
  ["(x = a) => { var a = 1; return x + a }", "a"],
  ["[a, b].map((c) => c * d)", "a b d"],
  [`\`\${a} text \${\`\${b}\`}\``, "a b"],
  [`a\`x\${b}\``, "a b"],
  ["/a/.test(b)", "b"],
  ["'a' + \"b\"", ""],
  ["// a\nb /* c */", "b"],
  ["function a() { return b }", "b"],
  ["function a() {}\nreturn a", ""],
  ["(function a() { return a(b) })", "b"],
  ["(class a extends b { c = d; static e = a })", "b d"],
  ["(class { a() { return b } get c() { return d } })", "b d"],
  ["(class { #a = 1; has(o) { return #a in o && o.#a + b } })", "b"],
  ["(class { static { var a = b; let c = a } })", "b"],
  ["(class { [a] = b; static [c]() {} })", "a b c"],
  ["new a(...b)", "a b"],
  ["typeof a", "a"],
  ["async () => await a", "a"],
  ["await a", "a"],
  ["a ? b : c", "a b c"],
  ["(a, b)", "a b"],
  ["const a = b\nreturn a", "b"],
  ["return a\nvar a", ""],
  ["return a()\nfunction a() { return b }", "b"],
  ["{ const a = 1 }\nreturn a", "a"],
  ["{ var a = 1 }\nreturn a", ""],
  ["let x = 1\n{ let x = a; x }\nreturn x", "a"],
  ["const { a, b: { c: x }, ...d } = c\nreturn a + x + d", "c"],
  ["const [a, [b = c]] = d\nreturn a + b", "c d"],
  ["for (let a = 0; a < b; a++) {}\nreturn a", "b a"],
  ["for (const a of b) { c }\nreturn 1", "b c"],
  ["for (const a in b) { c }\nreturn 1", "b c"],
  ["for await (const a of b) {}\nreturn 1", "b"],
  ["try { a } catch (b) { b } finally { c }\nreturn 1", "a c"],
  ["try { a } catch { b }\nreturn 1", "a b"],
  ["try {} catch ({ a, b = c }) { a + b }\nreturn 1", "c"],
  ["a: for (;;) { break a }\nreturn b", "b"],
  ["switch (a) { case b: let c = 1; default: c }\nreturn 1", "a b"],
  ["const f = (x) => x ? f(x - a) : b\nreturn f(1)", "a b"],
  ["const o = { a() { return b }, get c() { return 1 } }\nreturn o.a()", "b"],
  ["let x = 1\nx += a\nx++\nreturn x", "a"],
  ["const o = {}\no.a = b\no[c] ??= d\nreturn o", "b c d"],
  ["let x\n;[x] = a\n;({ b: x } = c)\nreturn x", "a c"],
  ["const o = {}\no[a.b] = c.d\nreturn o", "a c"],
  ["const o = {}\n;[o.x, o[a.b]] = [c.d]\nreturn o", "a c"],
  ["const o = {}\n;({ [a.b]: o.x = c.d } = d)\nreturn o", "a c d"],
  ["yield a\nyield* b", "a b"],
  ["for (const x of a) yield x", "a"],
  ["function f() { return arguments.length + a }\nreturn f()", "a"],
  ["() => { if (a) { function b() {} } return c }", "a c"],
  ["() => { 'use strict'; return a }", "a"],
  ["\\u0061 + b", "a b"],
];

describe("the cells a formula takes", () => {
  test.each(cases)("%s", (formula, takes) => {
    const cell = compileFormula(formula);
    expect(cell.problem?.message).toBeUndefined();
    expect(cell.takes.map((id) => id.replace("n.md#", "")).join(" ")).toBe(takes);
  });
});

test("every place of a name is told, with its line and column in the document", () => {
  const cell = compileFormula("const x = a\n  return { a, x: a + bedVolume(inch) }");
  const places = cell.namesUsed.map(({ name, kind, places }) => [
    name,
    kind,
    places.map(
      ({ line, column, shorthand }) => `${line}:${column}${shorthand ? " shorthand" : ""}`,
    ),
  ]);
  expect(places).toEqual([
    ["a", "cell", ["18:11", "19:12 shorthand", "19:18"]],
    ["bedVolume", "library", ["19:22"]],
    ["inch", "library", ["19:32"]],
  ]);
});

test.each([
  ["1 + 2", true, false, false],
  ["await a", true, true, false],
  ["async () => await a", true, false, false],
  ["return 1", false, false, false],
  ["for await (const x of a) {}\nreturn 1", false, true, false],
  ["const f = async () => await a\nreturn f", false, false, false],
  ["yield a", false, false, true],
  ["yield await a", false, true, true],
  ["const f = function* () { yield 1 }\nreturn f", false, false, false],
])("%s: expression %s, async %s, generator %s", (formula, expression, async, generator) => {
  expect(compileFormula(formula)).toMatchObject({ expression, async, generator });
});
