import { describe, expect, it } from "vitest";
import {
  barsDrawing,
  cubicFoot,
  type Drawing,
  money,
  type Tree,
  times,
} from "../../../lib/index.ts";

/** All elements of a class in a form of the drawing, with their attributes. */
function elements(drawing: Drawing, kind: string, form = -1): Readonly<Record<string, string>>[] {
  const found: Readonly<Record<string, string>>[] = [];
  const walk = (tree: Tree): void => {
    if (typeof tree === "string") return;
    const [, , attributes, children] = tree;
    if (attributes.class === kind) found.push(attributes);
    for (const child of children) walk(child);
  };
  const tree = drawing.forms.at(form)?.tree;
  if (tree !== undefined) walk(tree);
  return found;
}

const widths = (drawing: Drawing) => elements(drawing, "bar").map(({ width }) => Number(width));
const usd = (name: string, amount: number) => ({ name, amount: money(amount, "USD") });

describe("bars", () => {
  it("are to one another as the amounts are, the largest first", () => {
    const drawing = barsDrawing([usd("tax", 25), usd("boards", 100), usd("soil", 50)]);
    const [first = 0, second = 0, third = 0] = widths(drawing);
    expect(second / first).toBeCloseTo(0.5, 2);
    expect(third / first).toBeCloseTo(0.25, 2);
    expect(drawing.alternative).toBe("boards $100.00; soil $50.00; tax $25.00");
  });

  it("leave room for their figures at every width", () => {
    const rows = Array.from({ length: 9 }, (_, at) =>
      usd(`a rather long name, ${at}`, 12_345.67 + at),
    );
    const { forms } = barsDrawing(rows);
    expect(forms.length).toBeGreaterThan(2);
    for (const [at] of forms.entries()) {
      const [whole] = elements(barsDrawing(rows), "drawing bars", at);
      const right = Number(whole?.viewBox?.split(" ")[2]);
      for (const { x, width } of elements(barsDrawing(rows), "bar", at))
        expect(Number(x) + Number(width)).toBeLessThan(right - 50);
    }
  });

  it("add up what is too many to be read", () => {
    const rows = Array.from({ length: 40 }, (_, at) => ({
      name: `bed ${at}`,
      amount: times(cubicFoot, 40 - at),
    }));
    const drawing = barsDrawing(rows);
    expect(widths(drawing)).toHaveLength(24);
    // 17 + 16 + … + 1
    expect(drawing.alternative).toMatch(/; 17 more 5\.67.cu.yd$/);
  });

  it("show nothing at all as nothing, and no amounts in words", () => {
    expect(widths(barsDrawing([usd("none", 0)]))).toEqual([0]);
    expect(barsDrawing([]).alternative).toBe("Nothing to show.");
  });

  it("give figures in the units asked for", () => {
    const soil = [{ name: "soil", amount: times(cubicFoot, 2) }];
    expect(barsDrawing(soil, { units: "metric" }).alternative).toContain("L");
    expect(barsDrawing(soil, { title: "Fill" }).title).toBe("Fill");
  });
});
