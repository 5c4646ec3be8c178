import { describe, expect, it } from "vitest";
import {
  isProblem,
  type Problem,
  ProblemError,
  problemCodes,
  problemsOf,
} from "../../../lib/index.ts";

const problem: Problem = {
  code: "missing",
  path: ["beds"],
  allowed: "a table",
  received: "",
  remedy: "Give one.",
};

describe("isProblem", () => {
  it("knows a problem of every code, out of a clone too", () => {
    for (const code of problemCodes) expect(isProblem({ ...problem, code })).toBe(true);
    expect(isProblem(JSON.parse(JSON.stringify({ ...problem, also: [["a", 1]] })))).toBe(true);
  });

  it("refuses what lacks a part or has another", () => {
    const { remedy: _without, ...rest } = problem;
    const others = [
      rest,
      { ...problem, code: "odd" },
      { ...problem, code: "toString" },
      { ...problem, path: "beds" },
      { ...problem, path: [{}] },
      { ...problem, received: 3 },
      { ...problem, also: "beds" },
      { ...problem, also: ["beds"] },
      null,
      "missing",
    ];
    for (const other of others) expect(isProblem(other), JSON.stringify(other)).toBe(false);
  });
});

describe("problemsOf", () => {
  it("gives what an error carries", () => {
    expect(problemsOf(new ProblemError([problem]))).toEqual([problem]);
    // An error of another copy of the library has the same shape and another class.
    const foreign = Object.assign(new Error("foreign"), { problems: [problem] });
    expect(problemsOf(foreign)).toEqual([problem]);
  });

  it("gives nothing for other errors and values", () => {
    const others = [
      new Error("no board"),
      Object.assign(new Error(), { problems: [] }),
      Object.assign(new Error(), { problems: ["odd"] }),
      null,
      undefined,
      "missing",
    ];
    for (const other of others) expect(problemsOf(other)).toBeUndefined();
  });
});
