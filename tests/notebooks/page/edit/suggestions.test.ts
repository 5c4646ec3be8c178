import { describe, expect, it } from "vitest";
import {
  nameOfTitle,
  ownNames,
  suggestions,
  type Vocabulary,
} from "../../../../notebooks/engine/page/edit/suggestions.ts";
import { writingPlace } from "../../../../notebooks/engine/page/edit/writing-place.ts";

const figure = (text: string) => {
  const [number = "", unit = ""] = text.split(" ");
  return { kind: "figure", figure: { text, number, unit } } as const;
};

const vocabulary: Vocabulary = {
  cells: [
    { name: "total", title: "To pay", printed: "$12.00", shown: figure("$12.00") },
    {
      name: "plan",
      title: "Plan",
      printed: "2 fields",
      shown: {
        kind: "record",
        fields: [
          { title: "Wall height", shown: figure("11 in") },
          {
            title: "Boards",
            shown: { kind: "record", fields: [{ title: "Count", shown: figure("3") }] },
          },
        ],
      },
    },
    {
      name: "rows",
      title: "Rows",
      printed: "1 row",
      shown: {
        kind: "table",
        columns: [{ key: "sawCut", title: "Saw cut", unit: "in", align: "right" }],
        rows: [[]],
        more: 0,
      },
    },
  ],
  handed: [
    {
      name: "lengthEntry",
      what: "maker of an entry",
      call: 'lengthEntry("8 ft", { min, max })',
      options: [
        [],
        [
          { name: "min", what: "length" },
          { name: "max", what: "length" },
        ],
      ],
      fields: [{ name: "initial" }],
    },
    { name: "total", what: "function", options: [], fields: [] },
    { name: "published", what: "tables", options: [], fields: [{ name: "species" }] },
  ],
};

/** The names offered where `|` stands. */
function offered(formula: string): readonly string[] {
  const text = formula.replace("|", "");
  const place = writingPlace(text, formula.indexOf("|"));
  return suggestions(place, vocabulary, ownNames(text)).map(({ name }) => name);
}

describe("what may be written", () => {
  it("names of the formula, of cells with their values, and what is handed to all", () => {
    expect(offered("const half = 2; return |")).toEqual([
      "half",
      "total",
      "plan",
      "rows",
      "lengthEntry",
      "published",
    ]);
    const [first] = suggestions(writingPlace("to", 2), vocabulary);
    expect(first).toMatchObject({ name: "total", detail: "$12.00", help: "To pay" });
  });

  it("a cell wins over a name of the library that is the same", () => {
    const found = suggestions(writingPlace("", 0), vocabulary).filter(
      ({ name }) => name === "total",
    );
    expect(found).toHaveLength(1);
    expect(found[0]?.detail).toBe("$12.00");
  });

  it("the options of the function that is called, those given already left out", () => {
    expect(offered('lengthEntry("8 ft", { | })')).toEqual(["min", "max"]);
    expect(offered('lengthEntry("8 ft", { min: "1 ft", | })')).toEqual(["max"]);
    const [option] = suggestions(writingPlace('lengthEntry("8 ft", { ', 22), vocabulary);
    expect(option).toMatchObject({ name: "min", text: "min: ", detail: "length" });
  });

  it("the fields of a live record, and of a record in it", () => {
    expect(offered("plan.|")).toEqual(["wallHeight", "boards"]);
    expect(offered("plan.boards.|")).toEqual(["count"]);
    expect(offered("plan.nothing.|")).toEqual([]);
  });

  it("the columns of a live table, for the row a function of its rows is given", () => {
    expect(offered("rows.map((row) => row.|)")).toEqual(["sawCut"]);
    expect(offered("rows.|")).toContain("filter");
  });

  it("the fields of what a function gives", () => {
    expect(offered('lengthEntry("8 ft", { min: f(1) }).|')).toEqual(["initial"]);
    expect(offered("lengthEntry.|")).toEqual([]);
    expect(offered("[lengthEntry(1)].|")).toEqual([]);
  });

  it("the published tables", () => {
    expect(offered("published.|")).toEqual(["species"]);
  });

  it("nothing in a text", () => {
    expect(offered('"to|')).toEqual([]);
  });
});

describe("names", () => {
  it("a title gives the name it was made from", () => {
    expect(nameOfTitle("Wall height")).toBe("wallHeight");
    expect(nameOfTitle("Count")).toBe("count");
  });

  it("a formula's own names are those it declares and its functions take", () => {
    expect(ownNames("const a = 1; let b; rows.map((row, at) => row); x => 2")).toEqual([
      "a",
      "b",
      "row",
      "at",
      "x",
    ]);
  });
});
