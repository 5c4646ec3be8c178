import { describe, expect, it } from "vitest";
import { outsideFittedSoil } from "../../../lib/index.ts";

describe("the caution of a model outside its soil", () => {
  it("names what called for it, and where the models come from", () => {
    const caution = outsideFittedSoil({ because: "compost: 42 % organic" });
    expect(caution.because).toBe("compost: 42 % organic");
    expect(caution.sources).toContain("rothc-2025");
    expect(outsideFittedSoil()).not.toHaveProperty("because");
  });
});
