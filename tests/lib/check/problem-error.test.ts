import { describe, expect, it } from "vitest";
import { type Problem, ProblemError, sentence } from "../../../lib/index.ts";

const problems: readonly Problem[] = [
  { code: "missing", path: ["a"], allowed: "a length", received: "", remedy: "Give one." },
  { code: "too-small", path: ["b"], allowed: "a count", received: "-1", remedy: "Give more." },
];

describe("ProblemError", () => {
  it("says every problem's sentence, a line each", () => {
    const error = new ProblemError(problems);
    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe("ProblemError");
    expect(error.message.split("\n")).toEqual(problems.map(sentence));
    expect(error.problems).toEqual(problems);
  });

  it("takes better words where there are some", () => {
    expect(new ProblemError(problems, "a length can't be added to a volume").message).toBe(
      "a length can't be added to a volume",
    );
  });
});
