import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  foot,
  inch,
  newton,
  over,
  penetration,
  pound,
  poundForce,
  withdrawal,
} from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { inches } from "./stock.ts";

const kinds = ["wood screw", "nail", "lag screw"] as const;

describe("withdrawal", () => {
  it("grows with denser wood and a thicker fastener", () => {
    const density = fc.double({ min: 0.2, max: 0.6, noNaN: true });
    const size = fc.double({ min: 0.05, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        density,
        size,
        (fastener, specificGravity, diameterIn) => {
          const held = withdrawal({ fastener, specificGravity, diameter: inches(diameterIn) }).si;
          const denser = withdrawal({
            fastener,
            specificGravity: specificGravity * 1.5,
            diameter: inches(diameterIn),
          });
          const thicker = withdrawal({
            fastener,
            specificGravity,
            diameter: inches(diameterIn * 1.5),
          });
          expect(denser.si).toBeGreaterThan(held);
          expect(thicker.si).toBeGreaterThan(held);
        },
      ),
    );
  });

  it("relies on nothing for screws and nails along the fibres, on less for lag screws", () => {
    const joint = { specificGravity: 0.5, diameter: inches(0.25), grain: "end" } as const;
    expect(withdrawal({ ...joint, fastener: "wood screw" }).si).toBe(0);
    expect(withdrawal({ ...joint, fastener: "nail" }).si).toBe(0);
    const side = withdrawal({ ...joint, fastener: "lag screw", grain: "side" }).si;
    expect(withdrawal({ ...joint, fastener: "lag screw" }).si).toBeCloseTo(0.75 * side, 6);
  });

  it("is a force per length", () => {
    const held = withdrawal({ fastener: "nail", specificGravity: 0.42, diameter: inches(0.131) });
    expect(over(held, over(newton, foot))).toBeGreaterThan(0);
    // A pound-force is 4.448 N (NIST SP 811, appendix B.8).
    expect(amount(poundForce, newton)).toBeCloseTo(4.448222, 6);
  });

  it("refuses what it cannot reckon with, all at once", () => {
    expect(refusals(() => withdrawal(wrong(undefined)))).toEqual(["missing options"]);
    expect(
      refusals(() =>
        withdrawal({
          fastener: wrong("staple"),
          specificGravity: -0.5,
          diameter: wrong(pound),
          grain: wrong("cross"),
        }),
      ),
    ).toEqual([
      "unknown fastener",
      "too-small specificGravity",
      "wrong-unit diameter",
      "unknown grain",
    ]);
  });
});

describe("penetration", () => {
  const joint = { fastener: "wood screw", diameter: inches(0.19), through: inches(1.5) } as const;

  it("is the length past the first piece, enough from six diameters on", () => {
    // Number 10 through a 1-1/2 in board: 1.14 in past it.
    expect(penetration({ ...joint, length: inches(2.63) }).enough).toBe(false);
    expect(penetration({ ...joint, length: inches(2.64) }).enough).toBe(true);
    expect(amount(penetration({ ...joint, length: inches(3) }).depth, inch)).toBeCloseTo(1.5, 9);
  });

  it("is nothing where the fastener does not come through", () => {
    expect(penetration({ ...joint, length: inch })).toMatchObject({
      depth: { si: 0 },
      enough: false,
    });
  });

  it("refuses what is no fastener", () => {
    expect(refusals(() => penetration(wrong(3)))).toEqual(["unreadable joint"]);
    expect(
      refusals(() =>
        penetration({
          fastener: wrong("peg"),
          length: wrong(3),
          diameter: inches(0),
          through: inches(-1),
        }),
      ),
    ).toEqual(["unknown fastener", "wrong-unit length", "too-small diameter", "too-small through"]);
  });
});
