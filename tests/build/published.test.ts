import { describe, expect, it } from "vitest";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import { amount, cubicFoot, isQuantity, printQuantity } from "../../lib/index.ts";

function made(fields: readonly object[], csv: string) {
  const resources = [{ name: "things", path: "things.csv", schema: { fields } }];
  return loadPublished({ "datapackage.json": JSON.stringify({ resources }), "things.csv": csv });
}

describe("published rows", () => {
  it("have quantities where a column has a unit, null where a field is blank", () => {
    const { things } = made(
      [
        { name: "bag", type: "string" },
        { name: "size", type: "number", unit: "ft3" },
        { name: "share", type: "number", unit: "%" },
        { name: "count", type: "integer" },
        { name: "wet", type: "boolean" },
      ],
      "bag,size,share,count,wet\nsmall,2,12.5,3,true\nlarge,,,,\n",
    );
    const [small, large] = things ?? [];
    expect(small?.size).toSatisfy(isQuantity);
    expect(amount(small?.size as never, cubicFoot as never)).toBe(2);
    expect(small).toMatchObject({ bag: "small", share: 0.125, count: 3, wet: true });
    expect(large).toEqual({ bag: "large", size: null, share: null, count: null, wet: null });
    expect(Object.isFrozen(things) && Object.isFrozen(small)).toBe(true);
  });

  it.each([
    ["a number that is none", [{ name: "a", type: "number" }], "a\nmuch\n", "row 1, a: “much”"],
    ["a share of a thing", [{ name: "a", type: "integer" }], "a\n1.5\n", "row 1, a"],
    ["an unknown unit", [{ name: "a", type: "number", unit: "ells" }], "a\n1\n", "ells"],
    ["an unknown type", [{ name: "a", type: "geopoint" }], "a\n1\n", "geopoint"],
    ["a column nobody described", [{ name: "a" }], "a,b\n1,2\n", "column b"],
  ])("refuse %s", (_, fields, csv, words) => {
    expect(() => made(fields, csv).things).toThrow(words);
  });

  it("are all readable, and come with a source each", () => {
    const published = loadPublished(dataFiles());
    expect(Object.keys(published).length).toBeGreaterThan(0);
    for (const [name, rows] of Object.entries(published)) {
      expect(rows.length, name).toBeGreaterThan(0);
      for (const row of rows) expect(row.source, name).toBeTruthy();
    }
  });

  it("print as they were published", () => {
    const bag = loadPublished(dataFiles()).bagSizes?.[0]?.size;
    expect(isQuantity(bag) && printQuantity(bag, { unit: "cu ft" })).toMatch(/^[\d.]+ cu ft$/);
  });
});
