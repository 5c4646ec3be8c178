import { describe, expect, it } from "vitest";
import { inch, requireRecord, requireRecords } from "../../../lib/index.ts";
import { refusals } from "../soil/at-hand.ts";

describe("requireRecord", () => {
  it("lets records pass and names what is none", () => {
    expect(() => requireRecord({ length: inch }, ["bed"])).not.toThrow();
    expect(refusals(() => requireRecord(undefined, ["bed"]))).toEqual(["missing bed"]);
    expect(refusals(() => requireRecord(null, ["bed"]))).toEqual(["missing bed"]);
    expect(refusals(() => requireRecord([], ["bed"]))).toEqual(["unreadable bed"]);
    expect(refusals(() => requireRecord("8 ft", ["bed"]))).toEqual(["unreadable bed"]);
  });
});

describe("requireRecords", () => {
  it("counts the entries that are none from 1", () => {
    expect(() => requireRecords([{}, {}], ["beds"])).not.toThrow();
    expect(refusals(() => requireRecords({}, ["beds"]))).toEqual(["unreadable beds"]);
    expect(refusals(() => requireRecords(undefined, ["beds"]))).toEqual(["missing beds"]);
    expect(refusals(() => requireRecords([{}, null, 4], ["beds"]))).toEqual([
      "missing beds.2",
      "unreadable beds.3",
    ]);
  });
});
