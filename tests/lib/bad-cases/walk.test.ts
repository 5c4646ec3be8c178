import { describe, expect, it } from "vitest";
import { foot, type Problem, ProblemError } from "../../../lib/index.ts";
import { untried } from "./declared.ts";
import { length, number, unsound } from "./leaves.ts";
import { made } from "./made.ts";
import { badForms, list, record } from "./shape.ts";
import { faultIn, given } from "./walk.ts";

const problem: Problem = {
  code: "too-small",
  path: ["bed", "width"],
  allowed: "a length above 0 in",
  received: "-1 ft",
  remedy: "Give more than 0 in.",
};
const tried = {
  what: "negative",
  value: {},
  outcomes: ["too-small"],
  place: ["bed", "width"],
} as const;
const cases = { takes: {} };
const refusing = (changed: Partial<Problem>) => () => {
  throw new ProblemError([{ ...problem, ...changed }]);
};
const faultOf = async (call: () => unknown) => faultIn(await given(call), tried, cases);

describe("the walk over bad input", () => {
  it("lets a named problem pass", async () => {
    expect(await faultOf(refusing({}))).toBeUndefined();
    expect(await faultOf(() => ({ ok: false, problem }))).toBeUndefined();
    expect(await faultOf(() => ({ rows: [], problems: [problem] }))).toBeUndefined();
    expect(await faultOf(() => Promise.reject(new ProblemError([problem])))).toBeUndefined();
  });

  it("notices a crash, an acceptance, another kind of problem and another place", async () => {
    expect(await faultOf(() => JSON.parse("{"))).toMatch(/crashed/);
    expect(await faultOf(() => 3)).toMatch(/was accepted/);
    expect(await faultOf(refusing({ code: "too-large" }))).toMatch(/wanted too-small/);
    expect(await faultOf(refusing({ path: ["bed", "length"] }))).toMatch(/wanted too-small/);
  });

  it("notices a problem that does not help", async () => {
    expect(await faultOf(refusing({ remedy: " " }))).toMatch(/says not what to do/);
    expect(await faultOf(refusing({ allowed: "" }))).toMatch(/what is allowed/);
    expect(await faultOf(refusing({ received: "" }))).toMatch(/what was received/);
    expect(await faultOf(refusing({ received: "[object Object]" }))).toMatch(/of the machine/);
    expect(await faultOf(refusing({ allowed: "at least NaN in" }))).toMatch(/NaN/);
  });

  it("notices NaN however deep, in texts and in quantities", () => {
    expect(unsound({ beds: [{ area: { ...foot, si: Number.NaN } }] })).toBe(true);
    expect(unsound(["NaN in wide"])).toBe(true);
    expect(unsound(new Map([["A", Number.POSITIVE_INFINITY]]))).toBe(true);
    expect(unsound({ beds: [{ area: foot, name: "Nan's bed" }] })).toBe(false);
  });
});

describe("bad forms", () => {
  it("rebuild the whole argument around one bad part", () => {
    const beds = list([record({ width: length("4 ft"), count: number(2) })], { empty: "fine" });
    const nan = badForms(beds, ["beds"]).find(
      ({ what, place }) => what === "NaN" && place.at(-1) === "count",
    );
    expect(nan?.place).toEqual(["beds", 1, "count"]);
    expect(nan?.argument).toMatchObject([{ width: length("4 ft").good, count: Number.NaN }]);
  });

  it("are missed where a declared field has none", () => {
    const declared = [{ name: "bed", fields: [{ name: "width", fields: [] }] }];
    const without = { takes: { bed: record({ length: length("8 ft") }) } };
    expect(untried(declared, [without])).toEqual(["bed.width"]);
    expect(untried(declared, [{ takes: { bed: record({ width: length("4 ft") }) } }])).toEqual([]);
    expect(untried(declared, [{ takes: { bed: made({ width: foot }) } }])).toEqual([]);
    expect(untried(declared, [{ takes: {} }])).toEqual(["bed"]);
  });
});
