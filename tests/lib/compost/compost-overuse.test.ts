import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compostOveruse } from "../../../lib/index.ts";

describe("compostOveruse", () => {
  it("cites sources that are known and defers to a soil test", () => {
    const path = new URL("../../../data/sources.json", import.meta.url);
    const known = JSON.parse(readFileSync(path, "utf8")) as Record<string, unknown>;
    const caution = compostOveruse();
    expect(caution.sources.filter((id) => !(id in known))).toEqual([]);
    expect(caution.defersTo).toContain("soil test");
  });

  it("says what called for it where that is given, and leaves it out otherwise", () => {
    expect(compostOveruse({ because: "2 in on bed 3" }).because).toBe("2 in on bed 3");
    expect("because" in compostOveruse()).toBe(false);
  });
});
