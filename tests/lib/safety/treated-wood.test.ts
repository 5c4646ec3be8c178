import { describe, expect, it } from "vitest";
import { neverBurn, sawingTreatedWood } from "../../../lib/index.ts";
import { expectBecause, expectWhole } from "./caution-cases.ts";

describe("sawingTreatedWood", () => {
  it("asks for mask, goggles and gloves, and to pick the dust up", () => {
    expectWhole(sawingTreatedWood(), "sawing-treated-wood");
    expect(sawingTreatedWood().advice).toMatch(/dust mask, goggles and gloves.*all sawdust/);
    expectBecause(sawingTreatedWood);
  });
});

describe("neverBurn", () => {
  it("forbids burning, chipping and composting", () => {
    expectWhole(neverBurn(), "never-burn");
    expect(neverBurn().advice).toMatch(/Never burn.*mulch.*compost/);
    expectBecause(neverBurn);
  });
});
