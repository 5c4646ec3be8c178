import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  enteredFor,
  entryDifferences,
  nextName,
  rowDifferences,
  rowWords,
  stepsBetween,
  tableDifferences,
} from "../../../notebooks/engine/plans/index.ts";
import type { CellId, Entered, TableText } from "../../../notebooks/engine/types/index.ts";

const table = (...rows: readonly (readonly string[])[]): TableText => ({
  kind: "table",
  name: "beds",
  columns: ["bed", "length"],
  rows,
  decimal: ".",
});

describe("names offered", () => {
  it("are the next letter that is free", () => {
    expect(nextName([])).toBe("Plan A");
    expect(nextName(["Plan A", "cedar", "plan b "])).toBe("Plan C");
    expect(nextName(["Plan B"])).toBe("Plan A");
    const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].map((letter) => `Plan ${letter}`);
    expect(nextName(letters)).toBe("Plan AA");
  });
});

describe("entries that differ", () => {
  const initial = (id: CellId) => (id === "a.md#length" ? "8 ft" : "1");
  it("are listed with the text of each, the default where nothing was typed", () => {
    const found = entryDifferences(
      [{}, { "a.md#length": "12 ft", "a.md#courses": "1" }, { "a.md#courses": "2" }],
      initial,
    );
    expect(found).toEqual([
      { id: "a.md#length", texts: ["8 ft", "12 ft", "8 ft"] },
      { id: "a.md#courses", texts: ["1", "1", "2"] },
    ]);
  });

  it("are none where one was typed as it was, or with a space more", () => {
    expect(entryDifferences([{}, { "a.md#length": "8 ft " }], initial)).toEqual([]);
  });
});

describe("tables that differ", () => {
  const before = table(["A", "8 ft"], ["B", "8 ft"], ["C", "6 ft"]);
  it("say which rows, by what they are called", () => {
    const after = table(["C", "6 ft"], ["B", "10 ft"], ["D", "4 ft"]);
    const rows = rowDifferences(before, after);
    expect(rows).toEqual({ changed: ["B"], added: ["D"], gone: ["A"], columns: false });
    expect(rowWords(rows)).toBe("1 row differs: B; 1 more: D; 1 fewer: A");
  });

  it("say rows by their place where names do not tell them apart", () => {
    const from = table(["A", "8 ft"], ["A", "6 ft"]);
    const to = table(["A", "8 ft"], ["A", "7 ft"], ["A", "7 ft"]);
    expect(rowWords(rowDifferences(from, to))).toBe("1 row differs: row 2; 1 more: row 3");
  });

  it("are told beside the first column's", () => {
    const held: Entered = { "garden.md#beds": table(["A", "8 ft"]) };
    const [found] = tableDifferences([{}, held, {}], () => before);
    expect(found?.rows.map(rowWords)).toEqual(["the same", "2 fewer: B, C", "the same"]);
    expect(tableDifferences([{}, { "garden.md#beds": before }], () => before)).toEqual([]);
  });

  it("name six rows at most and count the rest", () => {
    const many = Array.from({ length: 9 }, (_, at) => [`bed ${at}`, "8 ft"]);
    const rows = rowDifferences(table(), table(...many));
    expect(rowWords(rows)).toMatch(/^9 more: bed 0, .*bed 5 and 3 more$/);
  });
});

describe("what is entered for a plan", () => {
  it("is what it holds, but for the tables that all share", () => {
    const own = table(["A", "8 ft"]);
    const now = table(["B", "8 ft"]);
    const plan: Entered = { "a.md#length": "12 ft", "g.md#beds": own, "g.md#prices": own };
    const present: Entered = { "a.md#length": "9 ft", "g.md#beds": now };
    const shared = new Set<CellId>(["g.md#beds", "g.md#prices"]);
    expect(enteredFor(plan, present, shared)).toEqual({ "a.md#length": "12 ft", "g.md#beds": now });
    expect(enteredFor(plan, present, new Set())).toEqual(plan);
  });

  it("is reached from any other by the steps between", () => {
    const entered = fc.dictionary(
      fc.constantFrom("a.md#a", "a.md#b", "a.md#c", "g.md#d"),
      fc.constantFrom("1", "2", "3"),
      { noNullPrototype: true },
    ) as fc.Arbitrary<Entered>;
    fc.assert(
      fc.property(entered, entered, (from, to) => {
        const { changes, reset } = stepsBetween(from, to);
        const reached: Record<string, unknown> = { ...from, ...changes };
        for (const id of reset) delete reached[id];
        expect(reached).toEqual(to);
        // Nothing is entered that stands already.
        for (const [id, value] of Object.entries(changes))
          expect(from[id as CellId]).not.toBe(value);
      }),
    );
  });
});
