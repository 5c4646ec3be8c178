import { describe, expect, it } from "vitest";
import { addressOf, placeOf } from "../../../../notebooks/engine/page/reference/place.ts";
import { searchNames } from "../../../../notebooks/engine/page/reference/search.ts";
import { signatureLines } from "../../../../notebooks/engine/page/reference/signature.ts";
import type { ReferenceName } from "../../../../notebooks/engine/types/index.ts";

function named(name: string, more: Partial<ReferenceName> = {}): ReferenceName {
  return {
    ...{ name, what: "function", group: "soil", signature: name, summary: "" },
    ...{ sources: [], throws: [], examples: [], parameters: [] },
    ...more,
  };
}

const names = [
  named("bedFill", { summary: "What to order for a bed.", rule: "area × depth" }),
  named("planBoards", {
    summary: "Which boards to buy.",
    parameters: [
      {
        name: "problem",
        type: "P",
        fields: [{ name: "kerf", type: "Length", help: "The saw cut." }],
      },
    ],
  }),
  named("BoardPlan", { what: "type", fields: [{ name: "offcuts", type: "Length[]" }] }),
  named("boardFeet", { summary: "Board feet of boards." }),
];
const found = (words: string) => searchNames(names, words).map(({ name }) => name);

describe("searching the reference", () => {
  it("finds by name, as it is written and as it is said", () => {
    expect(found("planBoards")).toEqual(["planBoards"]);
    expect(found("plan boards")).toEqual(["planBoards"]);
    expect(found("PLAN")).toEqual(["planBoards", "BoardPlan"]);
  });

  it("finds by summary, rule, options and their help", () => {
    expect(found("order")).toEqual(["bedFill"]);
    expect(found("depth")).toEqual(["bedFill"]);
    expect(found("kerf")).toEqual(["planBoards"]);
    expect(found("saw")).toEqual(["planBoards"]);
    expect(found("offcuts")).toEqual(["BoardPlan"]);
  });

  it("wants every word, wherever it is", () => {
    expect(found("boards kerf")).toEqual(["planBoards"]);
    expect(found("boards nowhere")).toEqual([]);
  });

  it("puts what is found by its name first, and gives all where nothing is asked", () => {
    expect(found("board")[0]).toBe("BoardPlan");
    expect(found("boards")).toEqual(["planBoards", "boardFeet"]);
    expect(found("  ")).toHaveLength(names.length);
  });
});

describe("the address of a place", () => {
  it("reads back what was written", () => {
    for (const place of [{}, { name: "planBoards" }, { part: "soil" }, { find: "saw & kerf" }])
      expect(placeOf(addressOf(place))).toEqual(place);
  });
});

describe("a signature", () => {
  it("stays on a line where it fits", () => {
    expect(signatureLines("litre: Volume")).toEqual(["litre: Volume"]);
  });

  it("has what is handed in on lines of its own where it does not", () => {
    const long =
      "planning(problem: Record<string, number>, options?: { done: (a: A, b: B) => void }): Promise<Plan>";
    expect(signatureLines(long)).toEqual([
      "planning(",
      "  problem: Record<string, number>,",
      "  options?: { done: (a: A, b: B) => void },",
      "): Promise<Plan>",
    ]);
  });
});
