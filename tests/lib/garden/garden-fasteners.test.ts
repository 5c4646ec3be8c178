import { describe, expect, it } from "vitest";
import { amount, gardenFasteners, gardenPieces, inch, squareInch } from "../../../lib/index.ts";
import { problemsOf } from "../problems.ts";
import { bed, screws, section, tables } from "./garden.ts";

const made = (spec: Parameters<typeof bed>[0], prices = "") => {
  const beds = [bed({ timber: "treated", ...spec })];
  const { rows } = tables({ prices }).prices;
  return gardenFasteners(beds, gardenPieces(beds, { prices: rows }).pieces, {
    screws,
    prices: rows,
  });
};
const taken = (where: string, found: ReturnType<typeof made>) =>
  found.screws.find((use) => use.where === where);

describe("gardenFasteners(beds, pieces, choices)", () => {
  it("has two plates a corner for each course (common practice)", () => {
    expect(made({}).plates).toBe(8);
    expect(made({ courses: 3 }).plates).toBe(24);
  });

  it("fastens plates with the longest screw that hides its point: at most 1 1/2 in through 1/8 in of plate", () => {
    const screw = taken("corner plates", made({}))?.choice.screw;
    expect(screw && amount(screw.length, inch)).toBeLessThanOrEqual(1.5);
    expect(screw && amount(screw.length, inch)).toBeGreaterThan(1);
  });

  it("takes a screw that is on sale before one that is not", () => {
    const prices = "yard,item,size,price\nA,1 in screws,100,8.50";
    const found = made({}, prices);
    expect(amount(taken("corner plates", found)?.choice.screw?.length ?? inch, inch)).toBe(1);
    expect(found.needs.map(({ item }) => item)).toContain("1 in screws");
  });

  it("has screws for stakes and seats only where there are some", () => {
    expect(made({}).screws.map((use) => use.where)).toEqual(["corner plates"]);
    const found = made({ stakes: 2, cap: section("2x6") });
    expect(found.screws.map((use) => use.where)).toEqual(["corner plates", "stakes", "seat"]);
    // Two sides, two stakes, one course, five screws across a board up to 12 in wide (MIL-DTL-45449).
    expect(taken("stakes", found)?.count).toBe(20);
    // Round an 8 ft x 4 ft bed no two further apart than 16 in: 7 + 4 screws, twice.
    expect(taken("seat", found)?.count).toBe(22);
  });

  it("seals both ends of every treated piece, and none of untreated ones", () => {
    const found = made({});
    expect(amount(found.preservative.area, squareInch)).toBeCloseTo(4 * 2 * 1.5 * 11.25, 9);
    expect(found.needs.map(({ item }) => item)).toContain("end-cut preservative");
    const plain = made({ timber: "larch" });
    expect(plain.needs.map(({ item }) => item)).not.toContain("end-cut preservative");
    expect([plain.stamp, found.stamp?.category]).toEqual([null, "UC4A"]);
    expect(made({ timber: "untreated pine" }).stamp).toBeNull();
  });

  it("asks for metal that lasts with copper", () => {
    expect(made({}).metal.screws).toMatch(/hot-dip galvanised|stainless/);
  });

  it("refuses to choose among no screws", () => {
    const beds = [bed()];
    expect(problemsOf(() => gardenFasteners(beds, [], { screws: [] }))[0]?.[0]).toBe("missing");
  });
});
