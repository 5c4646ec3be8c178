import { describe, expect, test } from "vitest";
import { cellNamed, cellsText, compileFormula, compileTexts } from "./compiled.ts";

// The formula of `it` begins at line 18, after four cells of four lines each and its own fence.
const cases: readonly (readonly [formula: string, code: string, place: string, words: RegExp])[] = [
  [
    "soyl * 2",
    "not-defined",
    "18:1",
    /^soyl is not known: .* Make a cell soyl, or name another\.$/,
  ],
  ["2 *\n  bedVolum(1)", "not-defined", "19:3", /Is bedVolume meant\?$/],
  ["Fill(1)", "not-defined", "18:1", /Is fill meant\?$/],
  ["ofot", "not-defined", "18:1", /Is foot meant\?$/],
  ["toady", "not-defined", "18:1", /Is today meant\?$/],
  ["typeof soyl", "not-defined", "18:8", /^soyl is not known/],
  [
    "soyl + xyz +\nzyx",
    "not-defined",
    "18:1",
    /soyl is not.*Line 18, column 8: xyz is not.*Line 19, column 1: zyx is/,
  ],
  ["constructor", "not-defined", "18:1", /^constructor is not known/],
  ["__proto__", "not-defined", "18:1", /^__proto__ is not known/],
  ["", "syntax", "18:1", /^it is empty: write a formula/],
  ["// only a remark", "syntax", "18:17", /ends too soon/],
  ["1 +", "syntax", "18:4", /ends too soon/],
  ["f(1", "syntax", "18:4", /ends too soon/],
  ["a b", "syntax", "18:3", /b does not belong there/],
  ["[1, 2\n) + 3", "syntax", "19:1", /\) does not belong there/],
  ["const x = 1\nreturn x +* 2", "syntax", "19:11", /\* does not belong there/],
  ["const x = a", "syntax", "18:12", /no `return`, so it gives no value/],
  ["if (a) { b }", "syntax", "18:13", /no `return`/],
  ["const f = () => { return 1 }", "syntax", "18:29", /no `return`/],
  ["'unfinished", "syntax", "18:1", /unterminated string/],
  ["`unfinished", "syntax", "18:2", /unterminated template/],
  ["/(/", "syntax", "18:2", /regular expression/],
  ["let a = 1\nlet a = 2\nreturn a", "syntax", "19:5", /'a' has already been declared/],
  ["with (a) b\nreturn 1", "syntax", "18:1", /'with' in strict mode/],
  ["010", "syntax", "18:1", /invalid number/],
  ["delete a", "syntax", "18:1", /deleting local variable in strict mode/],
  [
    "a = 2",
    "assignment",
    "18:1",
    /^This formula changes a, which is a cell\. Keep the new value in a name of its own/,
  ],
  ["(b)++", "assignment", "18:2", /changes b/],
  ["((b)) = ((a))", "assignment", "18:3", /changes b/],
  ["[a, c.x] = b", "assignment", "18:2", /changes a/],
  ["for (a of b) {}\nreturn 1", "assignment", "18:6", /changes a/],
  ["({ a = 1 } = b)", "assignment", "18:4", /changes a/],
  ["let x = 1\na += x\nreturn x", "assignment", "19:1", /changes a/],
  ["fill = 3", "assignment", "18:1", /which is the library's/],
  ["a.total = 3\nreturn 1", "assignment", "18:1", /changes a, which is a cell/],
  ["a.b[0].c += 1", "assignment", "18:1", /changes a/],
  ["a[0]++", "assignment", "18:1", /changes a/],
  ["delete a.b.c", "assignment", "18:8", /changes a/],
  ["[c.x, ...d[0]] = [1]", "assignment", "18:2", /changes c.*changes d/],
  ["({ x: c.x = 2 } = { x: 1 })", "assignment", "18:7", /changes c/],
  ["for (c.x of [1]) {}\nreturn 1", "assignment", "18:6", /changes c/],
  ["Array.prototype.last = 3", "assignment", "18:1", /which is not the formula's own/],
  ["Math = 3", "assignment", "18:1", /which is not the formula's own/],
  ["import('x')", "not-allowed", "18:1", /`import` is not there/],
  ["Math.random()", "not-allowed", "18:1", /chance numbers/],
  ["Math['random']()", "not-allowed", "18:1", /chance numbers/],
  ["new Date()", "not-allowed", "18:5", /clock.*use `today`/],
  ["Date.now()", "not-allowed", "18:1", /clock/],
  ["performance.now()", "not-allowed", "18:1", /clock/],
  ["fetch('x')", "not-allowed", "18:1", /nothing outside the notebook/],
  ["document.title", "not-allowed", "18:1", /sees nothing of the page/],
  ["globalThis.fetch", "not-allowed", "18:1", /sees nothing/],
  ["eval('1')", "not-allowed", "18:1", /not made from text/],
  ["Function('1')", "not-allowed", "18:1", /not made from text/],
  ["arguments", "not-allowed", "18:1", /by name/],
  ["console.log(a)", "not-allowed", "18:1", /it gives a value/],
  ["new.target", "syntax", "18:11", /gives no value/],
];

describe("what is wrong with a formula is told at its place in the document", () => {
  test.each(cases)("%s", (formula, code, place, words) => {
    const { problem } = compileFormula(formula);
    expect(problem).toMatchObject({ code, file: "n.md" });
    expect(`${problem?.line}:${problem?.column}`).toBe(place);
    expect(problem?.message).toMatch(words);
  });
});

describe("no formula gets out of its brackets", () => {
  test.each([
    "1) + (2",
    "1); alert(1); (2",
    "1}\nalert(1)\n{",
    "return 1 } ) ; (async () => { return 2",
    "1\n))();(()=>((2",
    "*/ 1 /*",
    "<!-- 1\n",
    "1 //\n) + (2",
    "}})())//",
    `\`\${\`}\`)}`,
    "import x from 'y'",
    "export default 1",
    "super()",
    "return super.x",
    "await: 1",
    "yield: 1",
    "#x in a",
    "\\u{110000}",
  ])("%s", (formula) => {
    expect(compileFormula(formula).problem?.code).toBe("syntax");
  });

  test.each([1000, 6000, 100_000])("%i brackets or terms are read or refused", (n) => {
    const deep = [
      "(".repeat(n),
      `${"(".repeat(n)}1${")".repeat(n)}`,
      `1${"+a".repeat(n)}`,
      "[".repeat(n) + "]".repeat(n),
    ];
    for (const formula of deep) {
      const { problem } = compileFormula(formula);
      if (problem) expect(problem).toMatchObject({ code: "syntax", line: 18 });
      if (n === 100_000) expect(problem?.message).toContain("nested too deeply");
    }
  });
});

test("columns count the indentation that an indented fence takes off", () => {
  const text = "   ```js cell a\n   1 +\n   soyl\n  x1\n   ```\n";
  const { problem } = cellNamed(compileTexts({ "n.md": text.replace("  x1\n", "") }), "a");
  expect(problem).toMatchObject({ line: 3, column: 4 });
});

describe("names", () => {
  test("defined twice: every one has both lines, and they keep ids of their own", () => {
    const text = "```js cell a\n1\n```\n\n```csv table a\nx\n```\n\n```js cell b\na + 1\n```\n";
    const program = compileTexts({ "n.md": text });
    const twins = program.cells.filter((cell) => cell.name === "a");
    expect(twins.map(({ id, line }) => [id, line]).sort()).toEqual([
      ["n.md#a", 1],
      ["n.md#a/2", 5],
    ]);
    for (const { problem } of twins) {
      expect(problem).toMatchObject({ code: "defined-twice", names: ["a"] });
      expect(problem?.message).toMatch(
        /^a is defined twice, at lines 1 and 5: give all but one another name/,
      );
    }
    expect(cellNamed(program, "b")).toMatchObject({ takes: ["n.md#a"] });
    expect(cellNamed(program, "b").problem).toBeUndefined();
  });

  test("defined three times", () => {
    const program = compileTexts({ "n.md": cellsText({ a: "1" }).repeat(3) });
    expect(program.cells.map(({ problem }) => problem?.message)).toEqual(
      Array(3).fill(expect.stringContaining("defined 3 times, at lines 1, 4 and 7")),
    );
  });

  test("a cell's own name wins over the library's, with a remark", () => {
    const program = compileTexts({
      "n.md": cellsText({ fill: "2", it: "fill + inch", Map: "1", map: "Map" }),
    });
    expect(cellNamed(program, "it").inputs.slice(0, 2)).toEqual([
      { name: "fill", from: { cell: "n.md#fill" } },
      { name: "inch", from: { library: "inch" } },
    ]);
    expect(cellNamed(program, "map").takes).toEqual(["n.md#Map"]);
    expect(program.problems).toEqual([]);
    expect(program.remarks.map(({ code, line, names }) => [code, line, names])).toEqual([
      ["name-shadows", 1, ["fill"]],
      ["name-shadows", 9, ["Map"]],
    ]);
  });

  test("a cell that means the library's name but has it itself is told so", () => {
    const program = compileTexts({ "n.md": cellsText({ fill: "fill(1)" }) });
    expect(cellNamed(program, "fill").problem).toMatchObject({
      code: "cycle",
      line: 2,
      column: 1,
      message: expect.stringContaining("hides the library's fill. Give the cell another name."),
    });
  });

  test("units, today and names of the language need no cell", () => {
    const program = compileTexts({
      "n.md": cellsText({ it: "[units, today, Math.PI, NaN, undefined]" }),
    });
    const it = cellNamed(program, "it");
    expect(it.problem).toBeUndefined();
    expect(it.inputs).toEqual([
      { name: "units", from: { given: "units" } },
      { name: "today", from: { given: "today" } },
    ]);
    expect(it.namesUsed.map(({ name, kind }) => `${name} ${kind}`)).toEqual([
      "units given",
      "today given",
      "Math language",
      "NaN language",
      "undefined language",
    ]);
  });

  test("a badly named cell keeps its problem, a table too", () => {
    const program = compileTexts({
      "n.md":
        "```js cell 2x\n1\n```\n```csv table class\nx\n```\n```js cell\n1\n```\n```js cell\n2\n```\n",
    });
    expect(program.cells.map(({ id, problem }) => [id, problem?.code])).toEqual([
      ["n.md#2x", "bad-name"],
      ["n.md#class", "bad-name"],
      ["n.md#", "bad-name"],
      ["n.md#/2", "bad-name"],
    ]);
  });

  test("a figure of no cell is a problem at its line", () => {
    const program = compileTexts({
      "n.md": "# T\n\n`fig a` `fig units`\n`fig b`\n\n```js cell a\n1\n```\n",
    });
    expect(program.problems).toEqual([
      expect.objectContaining({ code: "not-defined", line: 4, names: ["b"] }),
    ]);
  });
});
