import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { checkCells } from "../../../build/cells/check-cells.ts";
import { handedNames } from "../../../build/cells/handed-names.ts";
import { loadPublished } from "../../../build/published.ts";
import { out, root } from "../../../build/root.ts";
import { dataFiles } from "../../../build/steps/made.ts";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";

let names: ReadonlySet<string> = new Set();

beforeAll(async () => {
  names = await handedNames();
});

function check(texts: Readonly<Record<string, string>>): readonly string[] {
  return checkCells(documentsOf(texts), {
    folder: join(out, "cells-test"),
    names,
    types: join(root, "build/cells/cell-names.d.ts"),
    library: join(root, "lib/index.ts"),
    published: loadPublished(dataFiles()),
  });
}

// Line 3 is the first cell's formula; each cell has four lines of its own after that.
function cells(...formulas: readonly string[]): string {
  return `# Planted\n${formulas.map((text) => `\`\`\`js cell ${text}\n\`\`\`\n`).join("\n")}`;
}

type Fault = readonly [fault: string, formulas: readonly string[], problem: string];

const faults: readonly Fault[] = [
  [
    "an area and a length added",
    ["side\n2 * foot", "it\n  side * side +\n  3 * side"],
    "n.md:8:3 Argument of type 'Length' is not assignable to parameter of type 'Area'.",
  ],
  [
    "money and a number added",
    ["it\nmoney(3) + 1"],
    "n.md:3:12 Argument of type 'number' is not assignable to parameter of type 'Money'.",
  ],
  [
    "a volume compared with an area",
    ["it\nless(inch * inch * inch, foot * foot)"],
    "n.md:3:26 Argument of type 'Area' is not assignable to parameter of type 'Volume'.",
  ],
  [
    "a compound assignment",
    ["it\nlet x = 1\nfor (const n of [1, 2]) x -= n * inch\nreturn x"],
    "n.md:4:29 Argument of type 'number' is not assignable to parameter of type 'Quantity'.",
  ],
  [
    "a misspelt member of another cell",
    ["b\n({ length: 3 * foot })", "it\n1 +\n  amount(b.lenght, foot)"],
    "n.md:8:12 Property 'lenght' does not exist on type '{ length: Length; }'. Did you mean 'length'?",
  ],
  [
    "an entry's value is what was entered, not the entry",
    ['depth\nlengthEntry("1 in")', "it\ndepth.read"],
    "n.md:7:7 Property 'read' does not exist on type 'Length'.",
  ],
  [
    "an entry that may be none",
    ['depth\nlengthEntry("none", { orNone: true })', "it\ndepth * 2"],
    "n.md:7:1 Argument of type 'Length | null' is not assignable to parameter of type 'Length'.",
  ],
  [
    "a cell that is a function, with types in its comment",
    ["f\n/** @param {Length} x */\n(x) => x * x", "it\nf(f(inch))"],
    "n.md:8:3 Argument of type 'Area' is not assignable to parameter of type 'Length'.",
  ],
  [
    "an asynchronous cell gives what it promises",
    ["p\nPromise.resolve(2 * foot)", "it\np + 1"],
    "n.md:7:5 Argument of type 'number' is not assignable to parameter of type 'Length'.",
  ],
  [
    "a cell of values one after another",
    ["g\nyield 2 * foot", "it\ng + 1"],
    "n.md:7:5 Argument of type 'number' is not assignable to parameter of type 'Length'.",
  ],
  [
    "units and today",
    ["it\n[units === 'us', today.yaer]"],
    "n.md:3:24 Property 'yaer' does not exist on type 'CalendarDate'.",
  ],
  [
    "an unknown name",
    ["it\n1 + soyl"],
    "n.md:3:5 soyl is not known: no cell of this notebook and nothing in the library has that name. Make a cell soyl, or name another.",
  ],
  [
    "a function that takes long is handed its solver, not given one",
    ["it\nplanBoards({ pieces: [], stock: [], kerf: inch, shortfall: inch }, { solve: 1 })"],
    "n.md:3:70 Object literal may only specify known properties, and 'solve' does not exist in type",
  ],
  [
    "nor what it tells its better results",
    ["it\nplanBoards({ pieces: [], stock: [], kerf: inch, shortfall: inch }, { improved: null })"],
    "n.md:3:70 Object literal may only specify known properties, and 'improved' does not exist in type",
  ],
  [
    "a published table's numbers have their units",
    ["it\npublished.bagSizes.map((bag) => bag.size + 1 * foot)"],
    "n.md:3:44 Argument of type 'Length' is not assignable to parameter of type 'Volume'.",
  ],
  [
    "a published table that is not there",
    ["it\npublished.bagSize"],
    "n.md:3:11 Property 'bagSize' does not exist on type 'Published'. Did you mean 'bagSizes'?",
  ],
  ["a call with too little", ["it\namount(foot)"], "n.md:3:1 Expected 2 arguments, but got 1."],
];

describe("faults in formulas are told at the notebook's own line and column", () => {
  let found: readonly string[] = [];

  // All in one run of the type checker, each in a notebook of its own.
  beforeAll(() => {
    const texts = faults.map(([, formulas], index) => [`${index}.md`, cells(...formulas)] as const);
    found = check(Object.fromEntries(texts));
  });

  test.each(faults.map((fault, index) => [...fault, index] as const))(
    "%s",
    (_, __, problem, index) => {
      const own = found.filter((text) => text.startsWith(`${index}.md:`));
      expect(own).toEqual([expect.stringContaining(problem.replace("n.md", `${index}.md`))]);
    },
  );

  test("cells of used notebooks and tables have their types", () => {
    const found = check({
      "n.md": "```uses g.md\ndepth\nt\n```\n\n```js cell it\nt.rows.lenght * (depth + 1)\n```\n",
      "g.md": '```js cell depth\nlengthEntry("1 in")\n```\n```csv table t\nx\n1\n```\n',
    });
    expect(found).toEqual([
      expect.stringMatching(
        /^n\.md:7:8 Property 'lenght' does not exist on type 'readonly \(readonly string\[\]\)\[\]'/,
      ),
      "n.md:7:26 Argument of type 'number' is not assignable to parameter of type 'Length'.",
    ]);
  });

  test("what takes a faulty cell is not blamed for it", () => {
    expect(
      check({ "n.md": cells("a\n1 +", "b\na * 2", "c\nd", "d\nc") }).map((text) =>
        text.slice(0, 9),
      ),
    ).toEqual(["n.md:3:4 ", "n.md:11:1", "n.md:15:1"]);
  });
});

test("right formulas have no problems", () => {
  const found = check({
    "n.md": cells(
      "depth\nlengthEntry('2 in')",
      "which\nchoiceEntry('a', { choices: ['a', 'b'] })",
      "bed\n({ length: 8 * foot, width: 4 * foot })",
      "volume\nbed.length * bed.width * depth",
      "price\nmoney(30) / cubicYard",
      "cost\nconst whole = volume * price\nreturn which === 'a' ? whole : -whole",
      "lengths\n[1, 2, 3].map((n) => n * inch - depth / 2)",
      "total\nlet sum = 0 * inch\nfor (const each of lengths) sum += each\nreturn sum",
      "long\nlengths.filter((each) => each > inch && each !== foot).length / 2",
      "text\nprintQuantity(total, { system: units }) + 1",
      "ratio\ntotal / foot + 1 / 8",
      "square\n(2 * foot) ** 2 + foot * foot",
      "today2\ntoday.year + 1",
    ),
  });
  expect(found).toEqual([]);
});
