import { describe, expect, it } from "vitest";
import { buriedLines } from "../../../lib/index.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("buriedLines", () => {
  it("says the fact, what to do and whose word goes above ours", () => {
    const caution = buriedLines();
    expectWhole(caution, "buried-lines");
    expect(caution.advice).toMatch(/811.*18 to 24 in/);
    expectBecause(buriedLines);
  });
});
