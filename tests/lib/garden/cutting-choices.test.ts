import { describe, expect, it } from "vitest";
import { amount, cuttingChoices, inch, times } from "../../../lib/index.ts";

describe("cuttingChoices(chosen)", () => {
  it("has kerf and shortfall 1/8 in, no spare boards, beds for food", () => {
    const chosen = cuttingChoices();
    expect([amount(chosen.kerf, inch), amount(chosen.shortfall, inch)]).toEqual([0.125, 0.125]);
    expect([chosen.spareBoards, chosen.food]).toEqual([0, true]);
  });

  it("keeps a kerf of nothing", () => {
    expect(cuttingChoices({ kerf: times(0, inch) }).kerf.si).toBe(0);
  });
});
