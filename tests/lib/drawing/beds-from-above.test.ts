import { describe, expect, it } from "vitest";
import { bedsFromAbove, type DrawnBed, foot, inch, pound, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { formAt, type Mark, sizeOf, texts } from "./tree-reader.ts";

const feet = (n: number) => times(foot, n);
const section = { thickness: times(inch, 1.5) };
const bed = (
  name: string,
  lengthFt: number,
  widthFt: number,
  place?: DrawnBed["place"],
): DrawnBed => ({
  name,
  length: feet(lengthFt),
  width: feet(widthFt),
  section,
  place,
});
const at = (eastFt: number, northFt: number, turned: boolean) => ({
  east: feet(eastFt),
  north: feet(northFt),
  turned,
});

/** The boxes of a path made of rectangles. */
function boxes(all: readonly Mark[], kind: string) {
  const d = all.find((mark) => mark.kind === kind && mark.name === "path")?.at.d ?? "";
  return [...d.matchAll(/M(\S+) (\S+)h(\S+)v(\S+)h/g)].map(([, x, y, wide, high]) => ({
    x: Number(x),
    y: Number(y),
    wide: Number(wide),
    high: Number(high),
  }));
}

describe("bedsFromAbove", () => {
  const placed = [bed("1", 8, 4, at(0, 10, true)), bed("2", 8, 4, at(6, 10, false))];
  const broad = formAt(bedsFromAbove(placed), 670);

  it("sets beds at their places: length north where turned, else east", () => {
    const [one, two] = boxes(broad, "soil");
    if (one === undefined || two === undefined) throw new Error("two beds were given");
    expect(one.high / one.wide).toBeCloseTo(2, 2);
    expect(two.wide / two.high).toBeCloseTo(2, 2);
    const pxPerFt = one.wide / 4;
    expect((two.x - one.x) / pxPerFt).toBeCloseTo(6, 1);
    // Both begin 10 ft north: their lower edges are level, the longer reaches 4 ft farther up.
    expect(one.y + one.high).toBeCloseTo(two.y + two.high, 0);
    expect((two.y - one.y) / pxPerFt).toBeCloseTo(4, 1);
  });

  it("shows north only on a true plan, and says where it is not", () => {
    expect(texts(broad)).toContain("north");
    expect(bedsFromAbove(placed).caption).not.toMatch(/layout/);
    const rows = bedsFromAbove([bed("1", 8, 4), bed("2", 8, 4)]);
    expect(rows.caption).toMatch(/^Set in rows, not your layout\./);
    expect(texts(formAt(rows, 670))).not.toContain("north");
    expect(bedsFromAbove([...placed, bed("3", 4, 4)]).caption).toMatch(
      /^1 bed without a place is set/,
    );
  });

  it("sets beds without a place 2 ft apart, never over each other", () => {
    const many = Array.from({ length: 40 }, (_, n) => bed(String(n + 1), 4 + (n % 5) * 2, 4));
    const soil = boxes(formAt(bedsFromAbove(many), 670), "soil");
    const [one, two] = soil;
    const pxPerFt = (one?.wide ?? 0) / 4;
    expect(((two?.x ?? 0) - (one?.x ?? 0) - (one?.wide ?? 0)) / pxPerFt).toBeCloseTo(2, 1);
    soil.forEach((a, i) => {
      for (const b of soil.slice(i + 1)) {
        const apart =
          a.x + a.wide <= b.x || b.x + b.wide <= a.x || a.y + a.high <= b.y || b.y + b.high <= a.y;
        expect(apart).toBe(true);
      }
    });
  });

  it("draws kept boards grey, as many as there are", () => {
    const piece = { name: "1 end", bed: "1", part: "end", length: feet(4) };
    const board = {
      board: "K1",
      source: "kept",
      yard: null,
      section: { name: "2x12", width: times(inch, 11.25) },
      timber: "treated",
      length: feet(5),
      pieces: [piece],
      offcut: feet(0),
      cutCount: 1,
    };
    const kept = formAt(bedsFromAbove(placed, { cuts: [board] }), 670);
    expect(boxes(kept, "kept")).toHaveLength(1);
    expect(boxes(kept, "board")).toHaveLength(7);
    expect(texts(kept)).toContain("board kept");
  });

  it("names every bed on every form, and keeps inside the picture", () => {
    const named = [...placed, bed("The long narrow one", 3, 1, at(20, 0, false))];
    for (const from of [0, 420, 560, 670]) {
      const all = formAt(bedsFromAbove(named), from);
      expect(texts(all)).toEqual(expect.arrayContaining(["1", "2", "The long narrow one"]));
      const { width, height } = sizeOf(all);
      for (const { x, y, wide, high } of boxes(all, "soil")) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
        expect(x + wide).toBeLessThanOrEqual(width);
        expect(y + high).toBeLessThanOrEqual(height);
      }
    }
  });

  it("keeps to few elements and the first 400 of very many beds", () => {
    const many = Array.from({ length: 2000 }, (_, n) => bed(`A-${n}`, 8, 4));
    const drawing = bedsFromAbove(many);
    expect(drawing.caption).toMatch(/^The first 400 of 2000 beds\./);
    expect(formAt(drawing, 0).length).toBeLessThan(500);
  });

  it("says sizes in the reader's units", () => {
    expect(bedsFromAbove(placed).alternative).toBe(
      "2 beds from above, at their places: 2 of 4′ by 8′.",
    );
    expect(bedsFromAbove(placed, { units: "metric" }).alternative).toMatch(
      /2 of 1219 mm by 2438 mm/,
    );
    expect(texts(formAt(bedsFromAbove([]), 0))).toEqual(["No beds to draw."]);
  });

  it("refuses beds that are none, all at once", () => {
    expect(refusals(() => bedsFromAbove(wrong(undefined)))).toEqual(["missing beds"]);
    expect(refusals(() => bedsFromAbove([wrong(null)]))).toEqual(["missing beds.1"]);
    const bad = { ...bed("1", 0, 4), width: wrong(4), section: wrong(undefined) };
    expect(refusals(() => bedsFromAbove([bad]))).toEqual([
      "too-small beds.1.length",
      "wrong-unit beds.1.width",
      "missing beds.1.section",
    ]);
    const lost = bed("1", 8, 4, { east: wrong(pound), north: wrong(undefined), turned: false });
    expect(refusals(() => bedsFromAbove([lost]))).toEqual([
      "wrong-unit beds.1.east",
      "missing beds.1.north",
    ]);
    expect(refusals(() => bedsFromAbove([], { units: wrong("ft"), widths: [5000] }))).toEqual([
      "unknown units",
      "too-large widths.1",
    ]);
  });
});
