import { describe, expect, it } from "vitest";
import { nitrogenTieUp } from "../../../lib/index.ts";

describe("the caution of wood that is dug in", () => {
  it("names what called for it and its sources", () => {
    const caution = nitrogenTieUp({ because: "coarse wood" });
    expect(caution.because).toBe("coarse wood");
    expect(caution.sources).toContain("clemson-compost");
  });
});
