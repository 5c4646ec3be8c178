import { describe, expect, it } from "vitest";
import { plasticAndDrainage } from "../../../lib/index.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("plasticAndDrainage", () => {
  it("says the fact, what to do and whose word goes above ours", () => {
    const caution = plasticAndDrainage();
    expectWhole(caution, "plastic-and-drainage");
    expect(caution.advice).toMatch(/never inward.*above the soil line/);
    expectBecause(plasticAndDrainage);
  });
});
