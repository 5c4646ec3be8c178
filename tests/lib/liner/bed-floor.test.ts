import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, bedFloor, foot, squareInch } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { feet, frame, inches, roll } from "./frames.ts";

describe("bedFloor", () => {
  it("is nothing where the floor is left open", () => {
    const floor = bedFloor(frame(8, 4), { kind: "open", roll: roll(4, 25) });
    expect(floor).toMatchObject({ area: { si: 0 }, strips: 0, rollLength: { si: 0 } });
  });

  it("covers the inside, the way that takes less of the roll", () => {
    // Inside 93 in x 45 in. A 4 ft roll covers the width in one strip of 93 in.
    const mesh = bedFloor(frame(8, 4), { kind: "mesh", roll: roll(4, 25) });
    expect(amount(mesh.area, squareInch)).toBeCloseTo(93 * 45, 6);
    expect([mesh.strips, amount(mesh.rollLength, foot)]).toEqual([1, 7.75]);
    // A 3 ft roll: two strips of 93 in, or three of 45 in across: 135 in is less.
    const narrow = bedFloor(frame(8, 4), { kind: "sheet", roll: roll(3, 25) });
    expect([narrow.strips, amount(narrow.rollLength, foot)]).toEqual([3, 11.25]);
  });

  it("always has at least the area of the floor on the roll", () => {
    const side = fc.double({ min: 1, max: 40, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.double({ min: 1, max: 12, noNaN: true }), (a, b, widthFt) => {
        const floor = bedFloor(frame(a, b), { kind: "mesh", roll: roll(widthFt, 100) });
        expect(floor.rollLength.si * feet(widthFt).si).toBeGreaterThanOrEqual(floor.area.si - 1e-9);
      }),
    );
  });

  it("refuses kinds, rolls and laps that are none", () => {
    expect(refusals(() => bedFloor(wrong(null), { kind: "mesh", roll: roll(4, 25) }))).toEqual([
      "missing frame",
    ]);
    expect(refusals(() => bedFloor(frame(8, 4), wrong(undefined)))).toEqual(["missing options"]);
    expect(
      refusals(() => bedFloor(frame(8, 4), { kind: wrong("gravel"), roll: roll(4, 25) })),
    ).toEqual(["unknown kind"]);
    expect(refusals(() => bedFloor(frame(8, 4), { kind: "mesh", roll: wrong(undefined) }))).toEqual(
      ["missing roll"],
    );
    expect(
      refusals(() =>
        bedFloor(frame(8, 4), {
          kind: "mesh",
          roll: { width: wrong(4), length: feet(0) },
          lap: feet(3),
        }),
      ),
    ).toEqual(["wrong-unit roll.width", "too-small roll.length", "too-large lap"]);
    expect(
      refusals(() => bedFloor(frame(8, 4), { kind: "mesh", roll: roll(1, 25), lap: inches(12) })),
    ).toEqual(["contradiction lap"]);
  });
});
