import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, foot, freeBoard, inch, roomForSoil, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const inches = (n: number) => times(n, inch);

describe("freeBoard", () => {
  it("is the way back from roomForSoil", () => {
    const part = fc.double({ min: 0, max: 8, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (soil, mulch, free) => {
        const wall = inches(soil + mulch + free);
        const room = roomForSoil(wall, { mulch: inches(mulch), free: inches(free) });
        const found = freeBoard(wall, { soil: room, mulch: inches(mulch) });
        expect(amount(found.free, inch)).toBeCloseTo(free, 4);
        expect(found.fits).toBe(true);
      }),
    );
  });

  it("says how far the layers stand over the rim", () => {
    const found = freeBoard(inches(9), { soil: inches(8), dressing: inches(1), mulch: inches(2) });
    expect(amount(found.over, inch)).toBeCloseTo(2, 9);
    expect(found).toMatchObject({ fits: false, free: { si: 0 } });
  });

  it("fits flush, in spite of the dust of sums", () => {
    const found = freeBoard(inches(0.3), { soil: inches(0.1), mulch: inches(0.2) });
    expect(found).toMatchObject({ fits: true, free: { si: 0 }, over: { si: 0 } });
  });

  it("refuses depths that cannot be, all at once", () => {
    expect(refusals(() => freeBoard(wrong(undefined), wrong({})))).toEqual([
      "missing wall",
      "missing soil",
    ]);
    expect(refusals(() => freeBoard(inches(9), wrong(null)))).toContain("missing options");
    expect(
      refusals(() => freeBoard(wrong(9), { soil: inches(-1), mulch: times(21, foot) })),
    ).toEqual(["wrong-unit wall", "too-small soil", "too-large mulch"]);
    expect(refusals(() => freeBoard(inches(9), { soil: inch, dressing: wrong("1 in") }))).toEqual([
      "unreadable dressing",
    ]);
  });
});
