import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNotebook, writeNotebook } from "../../../../notebooks/engine/document/index.ts";
import {
  idAt,
  placeBeside,
  placeOf,
  withFormulaAt,
} from "../../../../notebooks/engine/page/edit/block-place.ts";
import { changeTo } from "../../../../notebooks/engine/page/edit/change-to.ts";
import { bodyOf, StretchPlace } from "../../../../notebooks/engine/page/edit/stretch-place.ts";
import { wrongIn } from "../../../../notebooks/engine/page/edit/wrong-pieces.ts";

const cell = (name: string, formula: string) => `\`\`\`js cell ${name}\n${formula}\n\`\`\`\n`;
const read = (text: string) => readNotebook(text, "own.md");

describe("a change that makes one text of another", () => {
  it("gives the wanted text, whatever the two are", () => {
    const words = fc.string({ unit: fc.constantFrom("a", "b", "\n"), maxLength: 12 });
    fc.assert(
      fc.property(words, words, (now, wanted) => {
        const change = changeTo(now, wanted);
        const made = change
          ? now.slice(0, change.from) + change.insert + now.slice(change.to)
          : now;
        expect(made.trimEnd()).toBe(wanted.trimEnd());
      }),
    );
  });

  it("touches only what differs, so that a caret elsewhere stays", () => {
    expect(changeTo("length * 2", "length * 12")).toEqual({ from: 9, to: 9, insert: "1" });
  });

  it("leaves alone what is blank at the end, where somebody may be about to write", () => {
    expect(changeTo("a\n\n  ", "a")).toBeUndefined();
  });
});

describe("where a cell stands in its document", () => {
  const twice = read(`# T\n\n${cell("a", "1")}\n${cell("b", "2")}\n${cell("a", "3")}`);
  const documents = new Map([["own.md", twice]]);

  it("a name given twice has two places", () => {
    expect(placeOf("own.md#a", documents)?.index).toBe(1);
    expect(placeOf("own.md#a/2", documents)?.index).toBe(5);
    expect(placeOf("own.md#a/3", documents)).toBeUndefined();
    expect([0, 1, 5].map((index) => idAt(twice, index))).toEqual([
      undefined,
      "own.md#a",
      "own.md#a/2",
    ]);
  });

  it("the second of them gets another formula without the first", () => {
    const now = read(withFormulaAt(twice, 5, "4"));
    expect(now.blocks.map((block) => block.kind === "cell" && block.formula)).toEqual([
      false,
      "1",
      false,
      "2",
      false,
      "4",
    ]);
  });

  it("moving passes what says something, not blank lines", () => {
    expect(placeBeside(twice, 5, -1)).toBe(3);
    expect(placeBeside(twice, 1, 1)).toBe(3);
    expect(placeBeside(twice, 5, 1)).toBeUndefined();
    expect(placeBeside(twice, 0, -1)).toBeUndefined();
  });
});

describe("words that are being written", () => {
  const text = `# T\n\nOne.\n\n${cell("a", "1")}\nTwo.\n`;

  it("are what stands between the blank lines", () => {
    expect(bodyOf("\n\nOne.\n\nMore.\n\n")).toEqual(["\n\n", "One.\n\nMore.", "\n\n"]);
    expect(bodyOf("One.").join("|")).toBe("|One.|");
  });

  it("may become several blocks, and one again", () => {
    const before = read(text);
    const place = new StretchPlace(before, 2);
    const more = read(place.replaced(before, `\nTwo.\n\n${cell("b", "2")}\nThree.\n`));
    place.written(more);
    expect([place.index, place.span]).toEqual([2, 3]);
    expect(place.textIn(more)).toContain("Three.");
    expect(place.follow(before)).toBe(true);
    expect([place.index, place.span, place.textIn(before)]).toEqual([2, 1, "\nTwo.\n"]);
  });

  it("are found again where something was added before them", () => {
    const before = read(text);
    const place = new StretchPlace(before, 2);
    const now = read(`${cell("z", "0")}${writeNotebook(before)}`);
    expect(place.follow(now)).toBe(true);
    expect(place.textIn(now)).toBe("\nTwo.\n");
  });

  it("are known to be gone", () => {
    const before = read(text);
    const place = new StretchPlace(before, 2);
    expect(place.follow(read(`# T\n\nOne.\n\n${cell("a", "1")}`))).toBe(false);
  });
});

describe("the piece of a formula that is wrong", () => {
  const formula = "const a = lenght * 2;\nreturn  a +;";
  const error = {
    kind: "document",
    message: "",
    file: "own.md",
    line: 11,
    names: [],
    problems: [],
  } as const;
  const marked = (changes: object) =>
    wrongIn(formula, 10, { ...error, ...changes }, "own.md").map(({ from, to }) =>
      formula.slice(from, to),
    );

  it("is the names concerned, on their line", () => {
    expect(marked({ line: 10, names: ["lenght"] })).toEqual(["lenght"]);
  });

  it("is what stands at the column", () => {
    expect(marked({ column: 12 })).toEqual([";"]);
    expect(marked({ line: 10, column: 13 })).toEqual(["lenght"]);
  });

  it("is the line, where nothing more is known", () => {
    expect(marked({})).toEqual(["return  a +;"]);
  });

  it("is nowhere, where the error stands in another document or line", () => {
    expect(marked({ file: "garden.md" })).toEqual([]);
    expect(marked({ line: 3 })).toEqual([]);
    expect(marked({ kind: "waits" })).toEqual([]);
  });
});
