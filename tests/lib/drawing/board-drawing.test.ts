import { describe, expect, it } from "vitest";
import { boardDrawing, type DrawnBoard, inch, pound, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { formAt, marks, sizeOf, texts } from "./tree-reader.ts";

const inches = (n: number) => times(inch, n);
const section = { name: "2x12", width: inches(11.25) };
const piece = (bed: string, part: string, lengthIn: number) => ({
  name: `${bed} ${part}`,
  bed,
  part,
  length: inches(lengthIn),
});

const board = (
  name: string,
  lengthIn: number,
  lengthsIn: readonly number[],
  yard: string | null = "Alder",
): DrawnBoard => ({
  board: name,
  source: yard ?? "kept",
  yard,
  section,
  timber: "treated",
  length: inches(lengthIn),
  pieces: lengthsIn.map((each) => piece("A-1", each > 60 ? "side" : "end", each)),
  offcut: inches(lengthIn - lengthsIn.reduce((sum, each) => sum + each + 0.125, 0)),
  cutCount: lengthsIn.length,
});

const whole: DrawnBoard = {
  ...board("B3", 96, []),
  pieces: [piece("A-1", "side", 96)],
  cutCount: 0,
  offcut: inches(0),
};
const plan = {
  cuts: [board("B1", 96, [45, 45]), board("B2", 96, [45, 45]), whole, board("K1", 60, [45], null)],
};

describe("boardDrawing", () => {
  const broad = formAt(boardDrawing(plan), 670);

  it("draws kept boards first and boards cut alike in one row, with their count", () => {
    const labels = broad.filter(({ kind }) => kind === "label strong").map(({ text }) => text);
    expect(labels).toEqual([
      "Boards kept, sawn first",
      "1 at 5′",
      "Boards from Alder",
      "2 at 8′",
      "1 at 8′",
    ]);
    expect(texts(broad)).toContain("B1–B2");
  });

  it("puts every piece, cut and offcut where it lies, to scale", () => {
    const rects = broad.filter(({ name }) => name === "rect");
    const row = rects.filter(({ kind }) => kind === "board")[0];
    const pxPerIn = Number(row?.at.width) / 96;
    expect(Number(row?.at.height) / pxPerIn).toBeCloseTo(11.25, 0);
    const first = Number(row?.at.x);
    const kerfs = rects.filter(
      ({ kind, at }) => kind === "kerf" && Math.abs(Number(at.y) - Number(row?.at.y) + 4) < 0.2,
    );
    // Cuts after 45 in, and after 45 + 1/8 + 45 in.
    const middles = kerfs.map(({ at }) => (Number(at.x) + Number(at.width) / 2 - first) / pxPerIn);
    expect(middles[0]).toBeCloseTo(45.06, 1);
    expect(middles[1]).toBeCloseTo(90.19, 1);
    for (const { at } of kerfs) {
      expect(Number(at.width)).toBeGreaterThanOrEqual(1.6);
      expect(Number(at.height)).toBeGreaterThanOrEqual(Number(row?.at.height) + 8 - 0.2);
    }
    const over = rects.find(
      ({ kind, at }) => kind === "offcut" && Math.abs(Number(at.y) - Number(row?.at.y)) < 0.2,
    );
    expect(Number(over?.at.width) / pxPerIn).toBeCloseTo(5.75, 1);
  });

  it("says lengths as they are cut, what is over, and where nothing is cut", () => {
    expect(texts(broad)).toEqual(
      expect.arrayContaining(["b 3′ 9″", "a 8′", "5 3⁄4″ over", "no cut"]),
    );
    const short = { ...plan, shortened: [{ name: "A-1 side", bed: "A-1", short: inches(1 / 16) }] };
    expect(texts(formAt(boardDrawing(short), 670))).toContain("1⁄16″ short");
  });

  it("numbers the cuts in their order, the yard's first, with what squares the end hatched", () => {
    const sawn: DrawnBoard = {
      ...board("B1", 192, [45, 45, 80]),
      squared: inches(1),
      atYard: { first: inches(100), pieces: 2, rest: inches(100 - 1 - 90.25) },
      offcut: inches(192 - 100 - 0.125 - 80.125),
      cutCount: 5,
    };
    const drawing = boardDrawing({ cuts: [sawn], certificate: { kerf: inches(0.125) } });
    const form = formAt(drawing, 670);
    const orders = form.filter(({ kind }) => kind === "order");
    // From left to right: what squares it, two pieces, the yard's cut, the piece of the second part.
    expect(orders.map(({ text }) => text)).toEqual(["2", "3", "4", "1", "5"]);
    expect(texts(form)).toContain("cut at the yard, before it goes on the car");
    const rects = form.filter(({ name }) => name === "rect");
    const [row] = rects.filter(({ kind }) => kind === "board");
    const pxPerIn = Number(row?.at.width) / 192;
    const inInches = (x: string | undefined) => (Number(x) - Number(row?.at.x)) / pxPerIn;
    expect(orders.map(({ at }) => inInches(at.x))).toEqual(
      [0.94, 46.06, 91.19, 100.06, 180.19].map((at) => expect.closeTo(at, 0)),
    );
    const over = rects.filter(({ kind }) => kind === "offcut").slice(0, 3);
    expect(over.map(({ at }) => inInches(at.x))).toEqual([
      expect.closeTo(0, 0),
      expect.closeTo(91.25, 0),
      expect.closeTo(180.25, 0),
    ]);
  });

  it("has a box to tick for each board, and says the beds of each piece where there is room", () => {
    expect(broad.filter(({ kind }) => kind === "tick")).toHaveLength(plan.cuts.length);
    expect(texts(broad).filter((text) => text === "A-1").length).toBeGreaterThan(0);
    const many = { cuts: Array.from({ length: 40 }, (_, at) => board(`B${at}`, 96, [45])) };
    expect(formAt(boardDrawing(many), 670).filter(({ kind }) => kind === "tick")).toHaveLength(1);
  });

  it("explains every letter once, with its count and its beds", () => {
    const metric = texts(formAt(boardDrawing(plan, { units: "metric" }), 670));
    expect(metric).toEqual(
      expect.arrayContaining(["a 1 × 2438 mm side: A-1", "b 5 × 1143 mm end: A-1"]),
    );
  });

  it("labels narrow boards under themselves, and drops lengths that do not fit", () => {
    const stakes = {
      ...board("B9", 96, [9, 9, 9]),
      section: { name: "2x4", width: inches(3.5) },
    };
    const narrow = formAt(boardDrawing({ cuts: [stakes] }), 0);
    expect(narrow.filter(({ kind }) => kind === "piece under").map(({ text }) => text)).toEqual([
      "a",
      "a",
      "a",
    ]);
  });

  it("keeps everything inside the picture", () => {
    for (const from of [0, 420, 560, 670]) {
      const all = formAt(boardDrawing(plan), from);
      const { width, height } = sizeOf(all);
      for (const { at } of all.filter(({ name }) => name === "rect")) {
        expect(Number(at.x)).toBeGreaterThanOrEqual(0);
        expect(Number(at.x) + Number(at.width)).toBeLessThanOrEqual(width);
        expect(Number(at.y) + Number(at.height)).toBeLessThanOrEqual(height);
      }
    }
  });

  it("says in words what it shows, and has no colour of its own", () => {
    const drawing = boardDrawing(plan);
    expect(drawing.alternative).toBe(
      "3 ways of sawing 4 boards (1 kept, 3 from Alder) into 6 pieces.",
    );
    for (const form of drawing.forms) {
      for (const { at } of marks(form.tree)) {
        expect(at).not.toHaveProperty("fill");
        expect(at).not.toHaveProperty("style");
      }
    }
  });

  it("draws no boards as words", () => {
    expect(texts(formAt(boardDrawing({ cuts: [] }), 0))).toEqual(["No boards to cut."]);
  });

  it("refuses boards that are none, all at once", () => {
    expect(refusals(() => boardDrawing(wrong(undefined)))).toEqual(["missing plan"]);
    expect(refusals(() => boardDrawing(wrong({})))).toEqual(["missing cuts"]);
    expect(refusals(() => boardDrawing({ cuts: [wrong(null)] }))).toEqual(["missing cuts.1"]);
    const bad = {
      ...whole,
      length: wrong(96),
      offcut: inches(-1),
      cutCount: 0.5,
      section: { name: "", width: wrong(pound) },
    };
    expect(refusals(() => boardDrawing({ cuts: [bad] }))).toEqual([
      "wrong-unit cuts.1.length",
      "missing cuts.1.section.name",
      "wrong-unit cuts.1.section.width",
      "too-small cuts.1.offcut",
      "unreadable cuts.1.cutCount",
    ]);
    expect(
      refusals(() => boardDrawing(plan, { units: wrong("feet"), widths: [100, wrong("720")] })),
    ).toEqual(["unknown units", "too-small widths.1", "unreadable widths.2"]);
    expect(refusals(() => boardDrawing(plan, { widths: [] }))).toEqual(["missing widths"]);
  });
});
