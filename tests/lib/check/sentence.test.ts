import { describe, expect, it } from "vitest";
import { type Problem, placeInWords, problemCodes, sentence } from "../../../lib/index.ts";

const problem: Problem = {
  code: "unreadable",
  path: ["beds", 3, "length"],
  allowed: "a length from 1 ft to 100 ft",
  received: "6 fot",
  remedy: "Write 6 ft, 72 in or 183 cm.",
};

describe("placeInWords", () => {
  it("counts rows and names the rest", () => {
    expect(placeInWords(["beds", 3, "length"])).toBe("beds, row 3, length");
    expect(placeInWords(["kerf"])).toBe("kerf");
    expect(placeInWords([])).toBe("");
  });
});

describe("sentence", () => {
  const wrong = {
    missing: "nothing was given",
    unreadable: "can't be read",
    "wrong-unit": "is of another kind or has no unit",
    "too-small": "is too small",
    "too-large": "is too large",
    unknown: "is not known here",
    duplicate: "is given more than once",
    "mixed-currency": "mixes currencies",
    contradiction: "contradicts what is given elsewhere",
    unpriced: "has no price",
    "no-fit": "is longer than every board",
  } as const;

  it.each(problemCodes)("of %s says place, received, fault, allowed and remedy", (code) => {
    const received = code === "missing" ? "" : "6 fot";
    const words = sentence({ ...problem, code, received });
    const start = code === "missing" ? "" : "“6 fot” ";
    const verb = code === "missing" ? "needed" : "allowed";
    expect(words).toBe(
      `beds, row 3, length: ${start}${wrong[code]}; ${verb} is a length from 1 ft to 100 ft. ` +
        "Write 6 ft, 72 in or 183 cm.",
    );
  });

  it("says that nothing was given where there is nothing to quote", () => {
    const words = sentence({ ...problem, received: "  " });
    expect(words).toContain("nothing was given; needed is");
    expect(words).not.toContain("“");
  });

  it("has no place where there is none", () => {
    expect(sentence({ ...problem, path: [] })).toMatch(/^“6 fot” can't be read;/);
  });

  it("names the other places", () => {
    const also = [
      ["onHand", 2, "price"],
      ["yards", 1, "trip_cost"],
    ];
    const words = sentence({ ...problem, code: "mixed-currency", also });
    expect(words).toMatch(
      /183 cm\. It concerns also: onHand, row 2, price; yards, row 1, trip_cost\.$/,
    );
  });

  it("keeps long and many-lined input to one line", () => {
    const words = sentence({ ...problem, received: `6\n\tft ${"x".repeat(500)}` });
    expect(words).not.toContain("\n");
    expect(words).toContain("“6 ft xxx");
    expect(words).toContain("xxx…”");
    expect(words.length).toBeLessThan(260);
  });
});
