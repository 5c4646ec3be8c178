import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  gardenColumns,
  type ProblemCode,
  readBeds,
  readOnHand,
  readPieces,
  readPrices,
  readYards,
  sentence,
  type TableText,
} from "../../../lib/index.ts";
import { unsound } from "../bad-cases/leaves.ts";
import { faultOf } from "../bad-cases/walk.ts";

type TableName = keyof typeof gardenColumns;
type Cases = readonly (readonly [text: string, code: ProblemCode])[];

const read = {
  beds: readBeds,
  onHand: readOnHand,
  yards: readYards,
  prices: readPrices,
  pieces: readPieces,
} as const;

/** A row that is good in every column. */
const good: Readonly<Record<TableName, Readonly<Record<string, string>>>> = {
  beds: {
    ...{ bed: "A", length: "8 ft", width: "4 ft", count: "2", courses: "2", section: "2x12" },
    ...{
      timber: "treated",
      lap: "ends",
      cap: "2x6",
      stakes: "1",
      liner: "yes",
      soil_depth: "9 in",
    },
    ...{ depth_now: "6 in", built: "2014", east: "1 ft", north: "2 ft", turned: "no" },
  },
  onHand: {
    ...{ section: "2x12", length: "8 ft", count: "2", timber: "treated", bought: "2014-05" },
    sound: "7 ft",
  },
  yards: {
    ...{ yard: "Alder", trip_cost: "$6", tax: "6 %", tax_on: "goods", delivery: "$55" },
    ...{ delivery_from: "$150", distance: "7 mi", payload: "900 lb" },
  },
  prices: {
    ...{ yard: "Alder", item: "compost", size: "1 cu yd", price: "$38", form: "bulk" },
    ...{ limit: "20", from: "2", step: "0.5" },
  },
  pieces: { piece: "shelf", section: "2x10", length: "30 in", count: "4", timber: "cedar" },
};

// What a person may write into a field of each kind, and what that is.
const lengths: Cases = [
  ["8", "wrong-unit"],
  ["40 lb", "wrong-unit"],
  ["8 fot", "unreadable"],
  ["long", "unreadable"],
  ["NaN", "unreadable"],
  ["Infinity ft", "unreadable"],
  ["1e308 ft", "too-large"],
  ["999999 ft", "too-large"],
];
const someLengths: Cases = [...lengths, ["-8 ft", "too-small"], ["0 ft", "too-small"]];
const depths: Cases = [...lengths, ["-1 in", "too-small"]];
const counts: Cases = [
  ["-1", "too-small"],
  ["1.5", "unreadable"],
  ["two", "unreadable"],
  ["3 ft", "unreadable"],
  ["1000000000", "too-large"],
];
const someCounts: Cases = [...counts, ["0", "too-small"]];
const sections: Cases = [
  ["2", "unreadable"],
  ["2x13", "unknown"],
  ["0x12", "unknown"],
  ["-2x12", "unreadable"],
  ["9999x9999", "unknown"],
  ["8 ft", "unreadable"],
];
const names: Cases = [["x".repeat(81), "too-large"]];
const dates: Cases = [
  ["4/5/2014", "unreadable"],
  ["2014-13", "unreadable"],
  ["2014-02-30", "unreadable"],
  ["-2014", "unreadable"],
  ["0000", "unreadable"],
  ["0999", "too-small"],
  ["9999", "too-large"],
  ["last year", "unreadable"],
];
const answers: Cases = [
  ["perhaps", "unreadable"],
  ["1", "unreadable"],
  ["-1", "unreadable"],
];
const sums: Cases = [
  ["-1", "too-small"],
  ["1,000,000,000,000", "too-large"],
  ["99999999", "too-large"],
  ["six", "unreadable"],
  ["6 lb", "wrong-unit"],
  ["$", "unreadable"],
  ["NaN", "unreadable"],
];
const amounts: Cases = [
  ["-1", "too-small"],
  ["1,000,000,000,000", "too-large"],
  ["3 lb", "wrong-unit"],
  ["3 ft", "wrong-unit"],
  ["some", "unreadable"],
];

const isText = new Set(["bed", "timber", "yard", "item", "piece"]);

/** Bad texts by table and column, each with the problem it must be. */
const cases: Readonly<Record<TableName, Readonly<Record<string, Cases>>>> = {
  beds: {
    bed: names,
    length: someLengths,
    width: someLengths,
    count: someCounts,
    courses: [...someCounts, ["11", "too-large"]],
    section: sections,
    timber: names,
    lap: [
      ["corners", "unknown"],
      ["1", "unknown"],
      ["none", "unknown"],
    ],
    cap: sections,
    stakes: [...counts, ["51", "too-large"]],
    liner: answers,
    soil_depth: depths,
    depth_now: depths,
    built: dates,
    east: lengths,
    north: lengths,
    turned: answers,
  },
  onHand: {
    section: sections,
    length: someLengths,
    count: someCounts,
    timber: names,
    bought: dates,
    sound: [...someLengths, ["8 ft 1 in", "contradiction"]],
  },
  yards: {
    yard: names,
    trip_cost: sums,
    tax: [
      ["-1 %", "too-small"],
      ["101 %", "too-large"],
      ["1e9 %", "too-large"],
      ["6", "wrong-unit"],
      ["six %", "unreadable"],
      ["$6", "unreadable"],
    ],
    tax_on: [
      ["delivery", "unknown"],
      ["6 %", "unknown"],
    ],
    delivery: sums,
    delivery_from: sums,
    distance: [
      ...lengths.filter(([text]) => text !== "999999 ft"),
      ["-1 mi", "too-small"],
      ["25,000 mi", "too-large"],
    ],
    payload: [
      ["0 lb", "too-small"],
      ["-900 lb", "too-small"],
      ["900", "wrong-unit"],
      ["900 ft", "wrong-unit"],
      ["1e9 lb", "too-large"],
      ["a lot", "unreadable"],
    ],
  },
  prices: {
    yard: names,
    item: names,
    size: [
      ["0 cu yd", "too-small"],
      ["-1 cu yd", "too-small"],
      ["1e12 cu yd", "too-large"],
      ["0", "too-small"],
      ["-5", "too-small"],
      ["1.5", "unreadable"],
      ["1 mile per hour", "unreadable"],
      ["a yard", "unreadable"],
      ["$5", "unreadable"],
      ["0 ft x 4 ft", "too-small"],
    ],
    price: sums,
    form: [
      ["sack", "unknown"],
      ["1", "unknown"],
      ["board", "unreadable"],
      ["kit", "contradiction"],
    ],
    limit: amounts,
    from: amounts,
    step: [...amounts, ["0", "too-small"], ["0 cu yd", "too-small"]],
  },
  pieces: {
    piece: names,
    section: sections,
    length: someLengths,
    count: someCounts,
    timber: names,
  },
};

const tableNames = Object.keys(gardenColumns) as TableName[];

function tableWith(name: TableName, column: string, text: string): TableText {
  const row = { ...good[name], [column]: text };
  const columns = Object.keys(row);
  const rows = [columns.map((each) => (row as Readonly<Record<string, string>>)[each] ?? "")];
  return { kind: "table", name, columns, rows, decimal: "." };
}

describe("gardenColumns", () => {
  // The public file format: these names do not change.
  it("are those of the file format, with what every row fills in", () => {
    const written = (name: TableName) =>
      gardenColumns[name]
        .map((column) => (column.required ? `*${column.name}` : column.name))
        .join(" ");
    expect(tableNames.map((name) => `${name}: ${written(name)}`)).toEqual([
      "beds: *bed *length *width count courses section timber lap cap stakes liner soil_depth depth_now built east north turned",
      "onHand: *section *length count timber bought sound",
      "yards: *yard trip_cost tax tax_on delivery delivery_from distance payload",
      "prices: *yard *item *size *price form limit from step",
      "pieces: *piece *section *length count timber",
    ]);
  });

  it.each(tableNames)("every column of %s has bad cases and a good one", (name) => {
    const columns = gardenColumns[name].map((column) => column.name);
    expect(Object.keys(cases[name]).sort()).toEqual([...columns].sort());
    expect(Object.keys(good[name]).sort()).toEqual([...columns].sort());
    for (const column of columns) expect(cases[name][column]?.length).toBeGreaterThan(0);
  });

  it.each(tableNames)("the good row of %s is good", (name) => {
    const reading = read[name](
      tableWith(name, gardenColumns[name][0]?.name ?? "", Object.values(good[name])[0] ?? ""),
    );
    expect(reading.problems.map(sentence)).toEqual([]);
    expect(reading.rows.length).toBeGreaterThan(0);
  });

  describe.each(tableNames)("bad fields of %s", (name) => {
    const listed = Object.entries(cases[name]).flatMap(([column, bad]) =>
      bad.map(([text, code]) => ({ column, text, code })),
    );
    it.each(listed)("$column “$text” is $code", ({ column, text, code }) => {
      const reading = read[name](tableWith(name, column, text));
      const found = reading.problems.map((problem) => [problem.code, ...problem.path]);
      // An item that is no board contradicts its form at either of the two.
      const place = name === "prices" && text === "board" ? "item" : column;
      expect(found).toContainEqual([code, name, 1, place]);
      expect(reading.rows).toEqual([]);
      expect(reading.problems.map(faultOf).filter((fault) => fault !== undefined)).toEqual([]);
    });
  });

  describe.each(tableNames)("blank fields of %s", (name) => {
    it.each(gardenColumns[name])("$name", ({ name: column, required }) => {
      const { problems, rows } = read[name](tableWith(name, column, " "));
      const codes = problems.map((problem) => [problem.code, ...problem.path]);
      expect(codes).toEqual(required ? [["missing", name, 1, column]] : []);
      expect(rows.length > 0).toBe(!required);
    });
  });

  describe.each(tableNames)("headings of %s with a unit of another kind", (name) => {
    it.each(gardenColumns[name])("$name (°)", ({ name: column }) => {
      const plain = tableWith(name, column, "8");
      const columns = plain.columns.map((each) => (each === column ? `${each} (acre)` : each));
      const reading = read[name]({ ...plain, columns });
      expect(reading.problems.every((problem) => faultOf(problem) === undefined)).toBe(true);
      expect(unsound(reading.rows)).toBe(false);
    });
  });

  it.each(tableNames)(
    "never crashes on any text in %s, and never reads what is no number",
    (name) => {
      const columns = gardenColumns[name].map((column) => column.name);
      const written = Object.values(cases[name]).flatMap((bad) => bad.map(([text]) => text));
      const anything = fc.oneof(
        fc.constantFrom(
          ...written,
          "none",
          "NaN",
          "∞",
          "-0",
          "1/0",
          "0x12",
          "１２",
          "8' 3\"",
          "__proto__",
        ),
        fc.string({ maxLength: 8 }),
        fc.double().map(String),
      );
      fc.assert(
        fc.property(fc.constantFrom(...columns), anything, (column, text) => {
          const reading = read[name](tableWith(name, column, text));
          // A name may be any text, even one that looks like a number gone wrong.
          if (!isText.has(column)) expect(unsound(reading.rows)).toBe(false);
          expect(reading.problems.map(faultOf).filter((fault) => fault !== undefined)).toEqual([]);
          expect(reading.rows.length > 0).toBe(reading.problems.length === 0);
        }),
        { numRuns: 400 },
      );
    },
  );
});
