import { describe, expect, it } from "vitest";
import { amount, inch, pilotHole, pound } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { inches } from "./stock.ts";

describe("pilotHole", () => {
  it("is narrower in softwood than in dense wood, and never as wide as the root", () => {
    const root = inches(0.15);
    const soft = amount(pilotHole(root, { specificGravity: 0.36 }), inch);
    const dense = amount(pilotHole(root, { specificGravity: 0.7 }), inch);
    expect(soft).toBeCloseTo(0.105, 9);
    expect(dense).toBeCloseTo(0.135, 9);
  });

  it("refuses what is no hole or no wood", () => {
    expect(refusals(() => pilotHole(wrong(0.15), { specificGravity: 5 }))).toEqual([
      "wrong-unit root",
      "too-large specificGravity",
    ]);
    expect(refusals(() => pilotHole(wrong(pound), { specificGravity: wrong("fir") }))).toEqual([
      "wrong-unit root",
      "unreadable specificGravity",
    ]);
    expect(refusals(() => pilotHole(inches(0), wrong(undefined)))).toEqual(["missing options"]);
    expect(refusals(() => pilotHole(inches(0), { specificGravity: 0.5 }))).toEqual([
      "too-small root",
    ]);
  });
});
