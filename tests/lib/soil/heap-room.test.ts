import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicFoot, foot, heapRoom, inch, times } from "../../../lib/index.ts";

describe("the room of a heap", () => {
  it("holds the volume under its sides, as a ridge or flat-topped", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        number(1, 200),
        number(3, 20),
        number(20, 50),
        number(6, 60),
        (loose, length, slope, highest) => {
          const options = { length: times(length, foot), slope, highest: times(highest, inch) };
          const { width, height } = heapRoom(times(loose, cubicFoot), options);
          const run = height.si / Math.tan((slope * Math.PI) / 180);
          const top = width.si - 2 * run;
          expect(top).toBeGreaterThanOrEqual(-1e-9);
          expect(((width.si + top) / 2) * height.si * options.length.si).toBeCloseTo(
            times(loose, cubicFoot).si,
            9,
          );
          expect(height.si).toBeLessThanOrEqual(options.highest.si + 1e-12);
        },
      ),
    );
  });

  it("is none for no soil", () => {
    expect(heapRoom(times(0, cubicFoot), { length: times(8, foot) }).width.si).toBe(0);
  });
});
