import { beforeAll, describe, expect, it } from "vitest";
import { type RuleDoc, ruleDocs } from "../../build/steps/made.ts";

let rules: ReadonlyMap<string, RuleDoc>;
beforeAll(() => {
  rules = new Map(ruleDocs().map((doc) => [doc.name, doc]));
}, 60_000);

describe("the rules that a working shows", () => {
  it("are those of the trades, with their sources", () => {
    expect(rules.get("woodDensity")?.rule).toContain("density");
    expect(rules.get("woodDensity")?.sources).toContain("gtr-190");
    expect(rules.get("gardenMulch")?.sources).toEqual(["common practice"]);
  });

  it("leave out what only reads, checks, prints or reckons", () => {
    for (const name of ["printQuantity", "isQuantity", "sumOf", "readRows", "sentence"])
      expect(rules.has(name), name).toBe(false);
  });

  it("keep the units, whose values have a source", () => {
    expect(rules.get("inch")?.sources.length).toBeGreaterThan(0);
  });

  it("are written with the signs of print", () => {
    expect(rules.get("coverVolume")?.rule).toBe("volume = area × depth");
    expect(rules.get("roomForSoil")?.rule).toContain("wall height − mulch");
  });
});
