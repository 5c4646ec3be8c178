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

  it("holds the soil with all four sides sloping, and little more", () => {
    for (const [loose, length] of [
      [18.75, 8],
      [30, 8],
      [40, 8],
      [200, 12],
    ] as const) {
      const room = heapRoom(times(loose, cubicFoot), { length: times(length, foot) });
      const run = room.height.si / Math.tan((35 * Math.PI) / 180);
      const [a, b] = [room.length.si, room.width.si];
      const [c, d] = [a - 2 * run, b - 2 * run];
      // The prismatoid of ground, middle and top.
      const middle = ((a + c) * (b + d)) / 4;
      const held = (room.height.si / 6) * (a * b + 4 * middle + Math.max(0, c) * Math.max(0, d));
      expect(held).toBeGreaterThanOrEqual(times(loose, cubicFoot).si - 1e-9);
      expect(held).toBeLessThan(times(loose, cubicFoot).si * 1.2);
      expect(room.area.si).toBeCloseTo(a * b, 12);
    }
  });

  it("is at most two feet high unless another height is asked for", () => {
    const much = heapRoom(times(200, cubicFoot), { length: times(6, foot) });
    expect(much.height.si).toBeCloseTo(times(2, foot).si, 12);
  });

  it("is none for no soil", () => {
    expect(heapRoom(times(0, cubicFoot), { length: times(8, foot) }).width.si).toBe(0);
  });
});
