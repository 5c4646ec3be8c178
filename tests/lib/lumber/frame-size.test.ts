import { describe, expect, it } from "vitest";
import {
  amount,
  dressedSection,
  foot,
  frameDiagonal,
  frameHeight,
  inch,
} from "../../../lib/index.ts";
import { feet, inches, problemsOf, section } from "./make.ts";

describe("frameDiagonal", () => {
  // 3-4-5 and 5-12-13 triangles.
  it.each([
    [3, 4, 5],
    [12, 5, 13],
    [8, 6, 10],
  ])("of %d ft by %d ft is %d ft", (length, width, diagonal) => {
    const frame = { length: feet(length), width: feet(width) };
    expect(amount(frameDiagonal(frame), foot)).toBeCloseTo(diagonal, 9);
  });

  it.each([
    [{ length: feet(0), width: feet(4) }, ["too-small length"]],
    [{ length: feet(-8), width: feet(4) }, ["too-small length"]],
    [{ length: feet(8), width: 4 as never }, ["wrong-unit width"]],
    [{ length: feet(1000), width: feet(4) }, ["too-large length"]],
    [{} as never, ["missing length", "missing width"]],
    [undefined as never, ["missing frame"]],
  ])("refuses %j", (frame, problems) => {
    expect(problemsOf(() => frameDiagonal(frame))).toEqual(problems);
  });
});

describe("frameHeight", () => {
  it("is the courses' measured width, dry or green", () => {
    const frame = { courses: 2, section: section("2x12") };
    expect(amount(frameHeight(frame), inch)).toBeCloseTo(22.5, 9);
    const green = { ...frame, section: dressedSection(frame.section, "green") };
    expect(amount(frameHeight(green), inch)).toBeCloseTo(23, 9);
  });

  it.each([
    [{ courses: 0, section: section("2x12") }, ["too-small courses"]],
    [{ courses: 2.5, section: section("2x12") }, ["unreadable courses"]],
    [{ courses: 99, section: section("2x12") }, ["too-large courses"]],
    [
      { courses: 1, section: { ...section("2x12"), width: inches(-1) } },
      ["too-small section.width"],
    ],
    [{ courses: 1 } as never, ["missing section"]],
    [undefined as never, ["missing frame"]],
  ])("refuses %j", (frame, problems) => {
    expect(problemsOf(() => frameHeight(frame))).toEqual(problems);
  });
});
