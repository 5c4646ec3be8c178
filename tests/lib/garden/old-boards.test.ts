import { describe, expect, it } from "vitest";
import { amount, inch, kilogramPerCubicMetre, oldBoards, times } from "../../../lib/index.ts";
import { bed, tables } from "./garden.ts";

const old = (year: number, name = "A") => bed({ bed: name, built: { year } });

describe("oldBoards(beds, options)", () => {
  it("takes down the walls of beds with a year: 2 x 96 in and 2 x 45 in", () => {
    const made = oldBoards([old(2014), bed({ bed: "New" })]);
    expect([made.beds, Math.round(amount(made.out, inch))]).toEqual([["A"], 282]);
    expect(made.mass).toBeNull();
  });

  it("does not carry away what was kept, and never less than nothing", () => {
    const { onHand } = tables({ onHand: "section,length,count\n2x12,8 ft,2" });
    expect(Math.round(amount(oldBoards([old(2014)], { onHand }).out, inch))).toBe(90);
    const plenty = tables({ onHand: "section,length,count\n2x12,8 ft,20" }).onHand;
    expect(oldBoards([old(2014)], { onHand: plenty }).out.si).toBe(0);
  });

  it("weighs what must be carried away", () => {
    const density = times(500, kilogramPerCubicMetre);
    const { mass, out } = oldBoards([old(2014)], { woodDensity: density });
    const section = 1.5 * 11.25 * inch.si ** 2;
    expect(mass?.si).toBeCloseTo(out.si * section * 500, 9);
  });

  it("warns of arsenic in boards from before 2004 and of burning them, and not of later ones", () => {
    expect(
      oldBoards([old(2003), old(2010, "B")]).cautions.map(({ id, because }) => [id, because]),
    ).toEqual([
      ["old-treated-wood", "old boards of A"],
      ["never-burn", "old boards of A"],
    ]);
    expect(oldBoards([old(2004)]).cautions).toEqual([]);
    expect(oldBoards([]).cautions).toEqual([]);
  });
});
