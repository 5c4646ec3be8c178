import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foot, inch, plateScrews, pound, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { inches, screw } from "./stock.ts";

const plate = inches(0.075);
const board = inches(1.5);

describe("plateScrews", () => {
  it("takes the longest that keeps 1/8 in of wood before its point", () => {
    const stock = [screw(1), screw(1.625), screw(1.25), screw(1.5)];
    // 0.075 + 1.5 - 0.125 = 1.45 in
    expect(plateScrews({ plate, board }, { stock }).screw).toBe(stock[2]);
    expect(
      plateScrews({ plate, board: inches(0.75) }, { stock: [screw(0.5), screw(1)] }).screw?.length,
    ).toEqual(inches(0.5));
  });

  it("takes one that just fits, and the thicker of equal ones", () => {
    const thin = screw(1.5, 0.138);
    const thick = screw(1.5, 0.19);
    const joint = { plate: inches(0.125), board };
    expect(plateScrews(joint, { stock: [thin, thick] }).screw).toBe(thick);
    expect(plateScrews(joint, { stock: [thick, thin] }).screw).toBe(thick);
  });

  it("says so where all are too long, and how long one may be", () => {
    const choice = plateScrews({ plate, board }, { stock: [screw(2)] });
    expect(choice.screw).toBeNull();
    expect(choice.offers.map(({ kind }) => kind)).toEqual(["shorter-screw"]);
    expect(choice.most.si).toBeCloseTo(inches(1.45).si, 12);
    expect(choice.reason).toMatch(/would show its point/);
  });

  it("never shows a point, and no other that hides it is longer", () => {
    const thickness = fc.double({ min: 0.5, max: 3, noNaN: true });
    const lengths = fc.array(fc.double({ min: 0.25, max: 6, noNaN: true }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(thickness, lengths, (thicknessIn, lengthsIn) => {
        const stock = lengthsIn.map((lengthIn) => screw(lengthIn));
        const { screw: taken, most } = plateScrews(
          { plate, board: inches(thicknessIn) },
          { stock },
        );
        const hidden = stock.filter(({ length }) => length.si <= most.si + 1e-9);
        expect(taken?.length.si ?? 0).toBeCloseTo(
          Math.max(0, ...hidden.map(({ length }) => length.si)),
          8,
        );
      }),
    );
  });

  it("refuses what is no joint or no stock", () => {
    expect(refusals(() => plateScrews(wrong(undefined), { stock: [screw(1)] }))).toEqual([
      "missing joint",
    ]);
    expect(refusals(() => plateScrews({ plate, board }, wrong(undefined)))).toEqual([
      "missing options",
    ]);
    expect(refusals(() => plateScrews({ plate, board }, { stock: [] }))).toEqual(["missing stock"]);
    expect(refusals(() => plateScrews({ plate, board }, { stock: [wrong(3)] }))).toEqual([
      "unreadable stock.1",
    ]);
    expect(
      refusals(() =>
        plateScrews(
          { plate: wrong(0.1), board: times(foot, 2) },
          { stock: [screw(1)], clearance: inches(-1) },
        ),
      ),
    ).toEqual(["wrong-unit plate", "too-large board", "too-small clearance"]);
    expect(
      refusals(() =>
        plateScrews(
          { plate, board },
          { stock: [{ length: wrong(pound), diameter: inch }, screw(400)] },
        ),
      ),
    ).toEqual(["wrong-unit stock.1.length"]);
  });
});
