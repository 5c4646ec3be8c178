import { describe, expect, it } from "vitest";
import {
  type KindRules,
  readByRules,
  readRecord,
  type Stored,
} from "../../../notebooks/engine/store/index.ts";

/** An invented kind: version 1 had boards in a text, 2 a list of them, 3 says whose they are. */
const rules: KindRules = {
  newest: 3,
  steps: {
    1(old: Stored) {
      if (typeof old.boards !== "string") throw new TypeError("no boards");
      return { boards: old.boards.split(" ") };
    },
    2: (old) => ({ ...old, owner: "me" }),
  },
  fits: (stored) => "owner" in stored && Array.isArray((stored as Stored).boards),
};
const read = (stored: unknown) => readByRules("pile", stored, rules);

describe("an older version of a record", () => {
  it("is brought up to the newest one step a version", () => {
    const stored = { kind: "pile", version: 1, boards: "2x12 2x10" };
    expect(read(stored)).toEqual({
      is: "record",
      record: { kind: "pile", version: 3, boards: ["2x12", "2x10"], owner: "me" },
    });
    expect(stored).toEqual({ kind: "pile", version: 1, boards: "2x12 2x10" });
  });

  it("takes only the steps it needs", () => {
    expect(read({ kind: "pile", version: 2, boards: [] })).toEqual({
      is: "record",
      record: { kind: "pile", version: 3, boards: [], owner: "me" },
    });
    const newest = { kind: "pile", version: 3, boards: [], owner: "you" };
    expect(read(newest)).toEqual({ is: "record", record: newest });
  });

  it.each([
    ["a step fails", { kind: "pile", version: 1, boards: 7 }],
    ["there is no step from it", { kind: "pile", version: 0, boards: "" }],
    ["what came of it has not the shape", { kind: "pile", version: 2, boards: "2x12" }],
    ["its version is no whole number", { kind: "pile", version: 1.5, boards: "" }],
    ["it is of another kind", { kind: "heap", version: 1, boards: "" }],
  ])("is broken where %s", (_, stored) => expect(read(stored)).toEqual({ is: "broken" }));

  it("is newer past the newest, whatever it holds", () => {
    expect(read({ kind: "pile", version: 4 })).toEqual({ is: "newer", version: 4 });
  });
});

const document = {
  kind: "document",
  version: 1,
  place: "plot.md",
  text: "# Plot\n",
  title: "Plot",
  revision: 1,
  changed: "2026-04-25T14:00:00.000Z",
  origin: { from: "new" },
  ownGarden: false,
};
const plan = { name: "Cedar", made: "2026-04-25T14:00:00.000Z", entered: { "a.md#x": "1" } };
const plans = { kind: "plans", version: 1, main: "plot.md", plans: [plan] };
const state = {
  kind: "state",
  version: 1,
  main: "plot.md",
  number: 3,
  at: "2026-04-25T14:00:00.000Z",
  why: "typing",
  apart: false,
  files: ["plot.md"],
  texts: { "plot.md": "# Plot\n" },
  entered: { "plot.md#x": "1" },
};
const states = {
  kind: "states",
  version: 1,
  main: "plot.md",
  next: 4,
  states: [{ number: 3, at: "2026-04-25T14:00:00.000Z", why: "typing" }],
};

describe("the shapes of records", () => {
  it.each([
    ["document", document],
    ["document", { ...document, origin: { from: "shipped", file: "a.md" }, writer: "p" }],
    ["document", { ...document, origin: { from: "link", key: "k" } }],
    ["plans", plans],
    ["plans", { ...plans, plans: [] }],
    ["state", state],
    ["state", { ...state, plan: "Cedar", whole: { "document:plot.md": document } }],
    ["states", states],
    ["states", { ...states, removed: { title: "Plot", at: "" } }],
  ] as const)("a good %s is read", (kind, stored) =>
    expect(readRecord(kind, stored)).toEqual({ is: "record", record: stored }),
  );

  it.each([
    ["document", { ...document, text: 7 }],
    ["document", { ...document, revision: -1 }],
    ["document", { ...document, revision: 1.5 }],
    ["document", { ...document, origin: { from: "heaven" } }],
    ["document", { ...document, origin: { from: "file" } }],
    ["document", { ...document, ownGarden: "yes" }],
    ["plans", { ...plans, plans: [plan, plan] }],
    ["plans", { ...plans, plans: [{ ...plan, entered: { noCell: "1" } }] }],
    ["plans", { ...plans, plans: {} }],
    ["state", { ...state, entered: { "plot.md#x": 1 } }],
    ["state", { ...state, texts: { "plot.md": null } }],
    ["state", { ...state, files: undefined }],
    ["states", { ...states, states: [{}] }],
    ["states", { ...states, next: "4" }],
  ] as const)("a %s is broken with something wrong in it", (kind, stored) =>
    expect(readRecord(kind, stored)).toEqual({ is: "broken" }),
  );
});
