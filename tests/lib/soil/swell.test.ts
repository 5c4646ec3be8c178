import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  cubicMetre,
  cubicYard,
  foot,
  type SoilState,
  swell,
  times,
} from "../../../lib/index.ts";
import { refusals, wrong } from "./at-hand.ts";

const earth = { soil: "common earth", bankToLoose: 1.25, bankToCompacted: 0.9 };
const state = fc.constantFrom<SoilState>("bank", "loose", "compacted");

describe("swell", () => {
  it("goes from its place to a loose heap where nothing is said", () => {
    expect(amount(swell(times(4, cubicYard), earth), cubicYard)).toBeCloseTo(5, 9);
  });

  it("comes back to the same volume, by any way", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e4, noNaN: true }),
        state,
        state,
        state,
        (m3, a, b, c) => {
          const step = (volume: ReturnType<typeof swell>, from: SoilState, to: SoilState) =>
            swell(volume, earth, { from, to });
          const start = times(m3, cubicMetre);
          expect(step(step(start, a, b), b, a).si).toBeCloseTo(m3, 6);
          expect(step(step(start, a, b), b, c).si).toBeCloseTo(step(start, a, c).si, 6);
        },
      ),
    );
  });

  it("leaves it as it is from a state to the same", () => {
    expect(swell(times(3, cubicMetre), earth, { from: "loose" }).si).toBe(3);
  });

  it("refuses volumes, rows and states that cannot be", () => {
    expect(refusals(() => swell(wrong(undefined), earth))).toEqual(["missing volume"]);
    expect(refusals(() => swell(wrong(foot), earth))).toEqual(["wrong-unit volume"]);
    expect(refusals(() => swell(times(-1, cubicMetre), earth))).toEqual(["too-small volume"]);
    expect(refusals(() => swell(cubicMetre, wrong({ soil: "x" })))).toEqual([
      "missing soil.bankToLoose",
      "missing soil.bankToCompacted",
    ]);
    expect(refusals(() => swell(cubicMetre, { ...earth, bankToLoose: 0 }))).toEqual([
      "too-small soil.bankToLoose",
    ]);
    expect(refusals(() => swell(cubicMetre, { ...earth, bankToCompacted: 30 }))).toEqual([
      "too-large soil.bankToCompacted",
    ]);
    expect(refusals(() => swell(cubicMetre, earth, { to: wrong("heap") }))).toEqual(["unknown to"]);
    expect(refusals(() => swell(cubicMetre, earth, { from: wrong(3) }))).toEqual(["unknown from"]);
  });
});
