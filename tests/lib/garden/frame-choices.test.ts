import { describe, expect, it } from "vitest";
import { amount, frameChoices, inch } from "../../../lib/index.ts";

describe("frameChoices(chosen)", () => {
  it("has the shipped choices: treated 2x12, one course, lap sides, no cap, no stakes", () => {
    const chosen = frameChoices();
    expect(chosen).toMatchObject({
      timber: "treated",
      courses: 1,
      lap: "sides",
      cap: "none",
      stakes: 0,
    });
    expect(chosen.section.name).toBe("2x12");
    expect(amount(chosen.capReach, inch)).toBe(1);
  });

  it("keeps zero and no where they are given, and takes undefined for not given", () => {
    expect(frameChoices({ stakes: 0, liner: false }).liner).toBe(false);
    const loose = { lap: undefined } as unknown as Parameters<typeof frameChoices>[0];
    expect(frameChoices(loose).lap).toBe("sides");
  });
});
