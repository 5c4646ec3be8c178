import { describe, expect, it } from "vitest";
import { localCodes } from "../../../lib/index.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("localCodes", () => {
  it("says the fact, what to do and whose word goes above ours", () => {
    const caution = localCodes();
    expectWhole(caution, "local-codes");
    expect(caution.advice).toMatch(/building office/);
    expectBecause(localCodes);
  });
});
