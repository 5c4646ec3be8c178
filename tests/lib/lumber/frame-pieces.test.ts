import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  type FrameSpec,
  framePieces,
  inch,
  money,
  type Piece,
} from "../../../lib/index.ts";
import { bed, bedPieces, feet, inches, problemsOf, section } from "./make.ts";

const listed = (pieces: readonly Piece[]) =>
  pieces.map(
    ({ count, name, length }) => `${count} ${name} ${Number(amount(length, inch).toFixed(6))}`,
  );

describe("framePieces", () => {
  // Hand-worked: 48 - 2 x 1.5 = 45, 96 - 2 x 1.5 = 93 (common practice).
  it("lets the sides run through", () => {
    expect(listed(bedPieces())).toEqual(["2 A-1 side 96", "2 A-1 end 45"]);
  });

  it("lets the ends run through", () => {
    expect(listed(bedPieces({ lap: "ends" }))).toEqual(["2 A-1 side 93", "2 A-1 end 48"]);
  });

  it("takes two boards a side for each course", () => {
    expect(bedPieces({ courses: 3 }).map((piece) => piece.count)).toEqual([6, 6]);
  });

  it("makes a cap that reaches 1 in beyond the wall, mitred to the long points", () => {
    const pieces = bedPieces({ cap: section("2x6") });
    expect(listed(pieces.slice(2))).toEqual(["2 A-1 cap side 98", "2 A-1 cap end 50"]);
    expect(pieces.map((piece) => piece.mitred === true)).toEqual([false, false, true, true]);
    expect(pieces[2]?.section.name).toBe("2x6");
  });

  it("takes the reach given, none included", () => {
    const cap = section("2x6");
    expect(listed(bedPieces({ cap, capReach: inches(0) }).slice(2))).toEqual([
      "2 A-1 cap side 96",
      "2 A-1 cap end 48",
    ]);
  });

  // Hand-worked: 50 - 2 x 5.5 = 39; 98 - 2 x 5.5 = 87.
  it("butts a cap as the walls lap", () => {
    const cap = { cap: section("2x6"), capJoint: "butted" } as const;
    expect(listed(bedPieces(cap).slice(2))).toEqual(["2 A-1 cap side 98", "2 A-1 cap end 39"]);
    expect(listed(bedPieces({ ...cap, lap: "ends" }).slice(2))).toEqual([
      "2 A-1 cap side 87",
      "2 A-1 cap end 50",
    ]);
    expect(bedPieces(cap).some((piece) => piece.mitred)).toBe(false);
  });

  it("cuts stakes for both long sides", () => {
    const stakes = { stakes: 2, stakeSection: section("2x4"), stakeLength: inches(30) };
    expect(listed(bedPieces(stakes).slice(2))).toEqual(["4 A-1 stake 30"]);
  });

  // Hand-worked: 96 / 3 = 32; between two ends a side begins 1.5 in later.
  it("says where the stakes stand behind each side, evenly between the corners", () => {
    const stakes = { stakes: 2, stakeSection: section("2x4"), stakeLength: inches(30) };
    const places = (lap: FrameSpec["lap"]) =>
      bedPieces({ ...stakes, lap }).map(({ stakesAt = [] }) =>
        stakesAt.map((place) => Number(amount(place, inch).toFixed(6))),
      );
    expect(places("sides")).toEqual([[32, 64], [], []]);
    expect(places("ends")).toEqual([[30.5, 62.5], [], []]);
    expect(bedPieces().some((piece) => "stakesAt" in piece)).toBe(false);
  });

  it("names the bed and the timber on every piece", () => {
    const pieces = bedPieces({ timber: "cedar", cap: section("2x6") });
    expect(pieces.every((piece) => piece.bed === "A-1" && piece.timber === "cedar")).toBe(true);
    expect(bedPieces().some((piece) => "timber" in piece)).toBe(false);
  });

  it("works in metric sections", () => {
    const metric = {
      length: inches(2400 / 25.4),
      width: inches(1200 / 25.4),
      section: section("47x225"),
    };
    expect(amount(bedPieces(metric)[1]?.length ?? inches(0), inch) * 25.4).toBeCloseTo(1106, 9);
  });

  it("adds up to the outside of the bed, whatever its size and lap", () => {
    const size = fc.integer({ min: 12, max: 400 });
    fc.assert(
      fc.property(size, size, fc.constantFrom("sides", "ends"), (lengthIn, widthIn, lap) => {
        const [side, end] = bedPieces({ length: inches(lengthIn), width: inches(widthIn), lap });
        const total =
          amount(side?.length ?? inches(0), inch) + amount(end?.length ?? inches(0), inch);
        expect(total + 3).toBeCloseTo(lengthIn + widthIn, 9);
      }),
    );
  });

  it.each<[string, Partial<FrameSpec>, string]>([
    ["no width", { width: undefined as never }, "missing A-1.width"],
    ["a bare number", { width: 48 as never }, "wrong-unit A-1.width"],
    ["money for a length", { length: money(8, "USD") as never }, "wrong-unit A-1.length"],
    ["a zero length", { length: feet(0) }, "too-small A-1.length"],
    ["a negative length", { length: feet(-8) }, "too-small A-1.length"],
    ["an absurd length", { length: feet(1e6) }, "too-large A-1.length"],
    ["no number", { length: { ...feet(8), si: Number.NaN } }, "unreadable A-1.length"],
    ["half a course", { courses: 1.5 }, "unreadable A-1.courses"],
    ["no course", { courses: 0 }, "too-small A-1.courses"],
    ["eleven courses", { courses: 11 }, "too-large A-1.courses"],
    ["another lap", { lap: "corners" as never }, "unknown A-1.lap"],
    ["text for a section", { section: "2x12" as never }, "unreadable A-1.section"],
    ["a negative reach", { cap: section("2x6"), capReach: inches(-1) }, "too-small A-1.capReach"],
    ["another joint", { cap: section("2x6"), capJoint: "glued" as never }, "unknown A-1.capJoint"],
    ["stakes without a section", { stakes: 1, stakeLength: feet(2) }, "missing A-1.stakeSection"],
    ["a negative count", { stakes: -1 }, "too-small A-1.stakes"],
    ["a bed as wide as its boards", { width: inches(3) }, "contradiction A-1.width"],
    [
      "a cap wider than the bed",
      { width: inches(8), cap: section("2x6") },
      "contradiction A-1.width",
    ],
  ])("refuses %s", (_, over, problem) => {
    expect(problemsOf(() => framePieces(bed(over)))).toEqual([problem]);
  });

  it("says all that is wrong at once, and refuses nothing at all", () => {
    expect(problemsOf(() => framePieces(bed({ length: feet(0), courses: 0 })))).toHaveLength(2);
    expect(problemsOf(() => framePieces(undefined as unknown as FrameSpec))).toEqual([
      "missing frame",
    ]);
  });
});
