import { describe, expect, it } from "vitest";
import { bedInSection, foot, inch, pound, type SectionedBed, times } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { formAt, texts } from "./tree-reader.ts";

const inches = (n: number) => times(inch, n);
const bed: SectionedBed = {
  name: "1",
  width: times(foot, 4),
  courses: 1,
  section: { thickness: inches(1.5), width: inches(11.25) },
  layers: [
    { name: "soil", depth: inches(6.5) },
    { name: "compost", depth: inches(2.5), kind: "compost" },
    { name: "bark", depth: inches(1), kind: "bark" },
  ],
  liner: true,
};

describe("bedInSection", () => {
  it("is true to scale, both ways", () => {
    for (const from of [0, 670]) {
      const rects = formAt(bedInSection(bed), from).filter(({ name }) => name === "rect");
      const high = (kind: string) => Number(rects.find((each) => each.kind === kind)?.at.height);
      const board = rects.find(({ kind }) => kind === "board");
      expect(Number(board?.at.height) / Number(board?.at.width)).toBeCloseTo(11.25 / 1.5, 1);
      expect(high("soil") / high("board")).toBeCloseTo(6.5 / 11.25, 2);
      expect(high("compost") / high("board")).toBeCloseTo(2.5 / 11.25, 2);
      expect(high("bark") / high("board")).toBeCloseTo(1 / 11.25, 2);
    }
  });

  it("measures the wall, the width and the free board, and names each layer", () => {
    const broad = texts(formAt(bedInSection(bed), 670));
    expect(broad).toEqual(
      expect.arrayContaining([
        "11 1⁄4″",
        "4′ · 1.22 m",
        "1 1⁄4″ free",
        "bark 1″",
        "6 1⁄2″ · 165 mm",
      ]),
    );
    const narrow = texts(formAt(bedInSection(bed, { units: "metric" }), 0));
    expect(narrow).toEqual(
      expect.arrayContaining(["286 mm", "32 mm free", "compost 64 mm", "liner"]),
    );
  });

  it("leads the liner under the board, never inward", () => {
    const all = formAt(bedInSection(bed), 670);
    const liner = all.find(({ kind }) => kind === "liner")?.at.d ?? "";
    const board = all.find(({ kind }) => kind === "board")?.at;
    const xs = [...liner.matchAll(/[MH](\S+?)(?= |V|$)/g)].map(([, x]) => Number(x));
    const inner = Number(board?.x) + Number(board?.width);
    expect(xs).toHaveLength(3);
    for (const x of xs) expect(x).toBeLessThanOrEqual(inner + 2);
    expect(xs.at(-1)).toBeCloseTo(Number(board?.x), 0);
    const bare = formAt(bedInSection({ ...bed, liner: false }), 670);
    expect(bare.some(({ kind }) => kind === "liner")).toBe(false);
  });

  it("stacks courses, lays the cap on them, and heaps what is over the rim", () => {
    const tall = { ...bed, courses: 3, cap: { thickness: inches(1.5), width: inches(5.5) } };
    const boards = formAt(bedInSection(tall), 670).filter(({ kind }) => kind === "board");
    expect(boards).toHaveLength(8);
    const full = { ...bed, layers: [{ name: "soil", depth: inches(12) }] };
    expect(bedInSection(full).alternative).toMatch(/3⁄4″ · 19 mm heaped above the rim/);
    expect(texts(formAt(bedInSection(full), 0))).toContain("3⁄4″ heaped");
  });

  it("draws where the surface was, and how far it has sunk", () => {
    const sunk = { ...bed, was: { name: "filled in April", depth: inches(11.25) } };
    for (const from of [0, 670]) {
      const all = formAt(bedInSection(sunk), from);
      // 11 1/4 in less 10 in that are there.
      expect(texts(all)).toContain("filled in April, 1 1⁄4″ higher");
      expect(all.filter(({ kind }) => kind === "former")).toHaveLength(1);
    }
    const still = { ...bed, was: { name: "filled in April", depth: inches(10) } };
    expect(texts(formAt(bedInSection(still), 670))).toContain("filled in April");
    const deeper = { ...bed, was: { name: "before", depth: inches(8) } };
    expect(texts(formAt(bedInSection(deeper), 670))).toContain("before, 2″ lower");
    expect(bedInSection(sunk).alternative).toMatch(/filled in April 11 1⁄4″ · 286 mm deep/);
  });

  it("leaves empty layers out", () => {
    const empty = {
      ...bed,
      layers: [{ name: "compost", depth: inches(0), kind: "compost" as const }],
    };
    expect(texts(formAt(bedInSection(empty), 670)).join()).not.toMatch(/compost/);
  });

  it("takes the name a bed has", () => {
    expect(bedInSection(bed).title).toBe("Bed 1 in section");
    expect(bedInSection({ ...bed, name: "High bed" }).title).toBe("High bed in section");
  });

  it("refuses what is no bed, all at once", () => {
    expect(refusals(() => bedInSection(wrong(undefined)))).toEqual(["missing bed"]);
    expect(refusals(() => bedInSection({ ...bed, section: wrong(null) }))).toEqual([
      "missing bed.section",
    ]);
    expect(refusals(() => bedInSection({ ...bed, layers: wrong("soil") }))).toEqual([
      "unreadable bed.layers",
    ]);
    expect(refusals(() => bedInSection({ ...bed, width: wrong(4) }))).toEqual([
      "wrong-unit bed.width",
    ]);
    expect(
      refusals(() =>
        bedInSection({
          ...bed,
          width: inches(3),
          courses: 0,
          layers: [
            { name: "soil", depth: inches(-1) },
            { name: "bark", depth: wrong(pound) },
          ],
        }),
      ),
    ).toEqual([
      "too-small bed.courses",
      "too-small bed.layers.1.depth",
      "wrong-unit bed.layers.2.depth",
      "contradiction bed.width",
    ]);
    expect(
      refusals(() => bedInSection(bed, { units: wrong(undefined), widths: [Number.NaN] })),
    ).toEqual(["unreadable widths.1"]);
  });
});
