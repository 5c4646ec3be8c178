import { describe, expect, it } from "vitest";
import { amount, foot, inch, roomForSoil, times } from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

const inches = (n: number) => times(n, inch);

describe("roomForSoil", () => {
  it("leaves an inch for bark and an inch free where nothing is said (common practice)", () => {
    expect(amount(roomForSoil(inches(11.25)), inch)).toBeCloseTo(9.25, 9);
  });

  it("keeps what is asked for, none included", () => {
    const room = roomForSoil(inches(12), { mulch: inches(0), free: inches(0) });
    expect(amount(room, inch)).toBeCloseTo(12, 9);
    expect(amount(roomForSoil(inches(12), { free: inches(2) }), inch)).toBeCloseTo(9, 9);
  });

  it("refuses a wall lower than what is kept above the soil", () => {
    expect(refusals(() => roomForSoil(inches(1)))).toEqual(["contradiction wall"]);
    expect(amount(roomForSoil(inches(2)), inch)).toBeCloseTo(0, 9);
  });

  it("refuses lengths that cannot be", () => {
    expect(refusals(() => roomForSoil(wrong(undefined)))).toEqual(["missing wall"]);
    expect(refusals(() => roomForSoil(wrong(11)))).toEqual(["wrong-unit wall"]);
    expect(refusals(() => roomForSoil(times(30, foot), { mulch: inches(-1) }))).toEqual([
      "too-large wall",
      "too-small mulch",
    ]);
    expect(refusals(() => roomForSoil(inches(12), { free: wrong("1 in") }))).toEqual([
      "unreadable free",
    ]);
  });
});
