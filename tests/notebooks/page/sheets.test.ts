import { describe, expect, it } from "vitest";
import { cutsBetween } from "../../../notebooks/engine/page/sheets.ts";

/** Boards 40 high, 10 apart, in groups of four under a heading, 40 between groups. */
function boards(groups: number): [number, number][] {
  const spans: [number, number][] = [];
  for (let group = 0, at = 0; group < groups; group += 1) {
    spans.push([at, at + 16]);
    at += 22;
    for (let board = 0; board < 4; board += 1, at += 50) spans.push([at, at + 40]);
    at += 30;
  }
  return spans;
}

describe("cutsBetween", () => {
  it("leaves a drawing alone that fits", () => {
    expect(cutsBetween(boards(2), { top: 0, bottom: 500, most: 800 })).toEqual([]);
  });

  it("cuts where nothing is drawn, into pieces that fit", () => {
    const spans = boards(12);
    const bottom = Math.max(...spans.map(([, to]) => to));
    const cuts = cutsBetween(spans, { top: 0, bottom, most: 800 });
    const edges = [0, ...cuts, bottom];
    edges.slice(1).forEach((edge, index) => {
      expect(edge - (edges[index] ?? 0)).toBeLessThanOrEqual(800);
    });
    for (const cut of cuts)
      expect(
        spans.some(([from, to]) => from < cut && cut < to),
        `at ${cut}`,
      ).toBe(false);
  });

  it("keeps a heading with its boards: cuts between groups", () => {
    const spans = boards(12);
    const bottom = Math.max(...spans.map(([, to]) => to));
    const headings = spans.filter(([from, to]) => to - from === 16).map(([from]) => from);
    for (const cut of cutsBetween(spans, { top: 0, bottom, most: 800 }))
      expect(Math.min(...headings.filter((at) => at >= cut)) - cut).toBeLessThan(40);
  });

  it("ends where there is no free height at all", () => {
    const cuts = cutsBetween([[0, 5_000]], { top: 0, bottom: 5_000, most: 1_000 });
    expect(cuts).toEqual([1_000, 2_000, 3_000, 4_000]);
  });
});
