import { describe, expect, it } from "vitest";
import { leadInOldSoil } from "../../../lib/index.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("leadInOldSoil", () => {
  it("says the fact, what to do and whose word goes above ours", () => {
    const caution = leadInOldSoil();
    expectWhole(caution, "lead-in-old-soil");
    expect(caution.advice).toMatch(/200 parts per million/);
    expectBecause(leadInOldSoil);
  });
});
