import { describe, expect, it } from "vitest";
import { type Answer, answerOf, differs, lowest } from "../../../notebooks/engine/plans/index.ts";
import type { CellState, Shown } from "../../../notebooks/engine/types/index.ts";

const figure = (text: string, of: string, size: number): Answer => ({
  is: "figure",
  figure: { text, number: text, unit: "" },
  measure: { of, low: size, likely: size, high: size },
});
const dollars = (size: number) => figure(`$${size.toFixed(2)}`, "money in USD", size);

describe("a row of answers", () => {
  it("differs where any two say something else", () => {
    expect(differs([dollars(3), dollars(3)])).toBe(false);
    expect(differs([dollars(3), undefined, dollars(4)])).toBe(true);
    expect(differs([dollars(3), { is: "error", message: "no price" }])).toBe(true);
    expect(differs([])).toBe(false);
  });

  it("has its lowest marked where less money is to be paid", () => {
    expect([...lowest([dollars(30), dollars(20), dollars(25)])]).toEqual([1]);
    expect([...lowest([dollars(30), dollars(20), dollars(20.001)])]).toEqual([1, 2]);
    expect([...lowest([dollars(-5), undefined, dollars(0)])]).toEqual([0]);
  });

  it("has none marked where all are alike, there is one only, or it is no money", () => {
    expect(lowest([dollars(30), dollars(30)]).size).toBe(0);
    expect(lowest([dollars(30), undefined]).size).toBe(0);
    expect(lowest([figure("3 ft", "length", 1), figure("2 ft", "length", 0.6)]).size).toBe(0);
    expect(lowest([dollars(30), figure("€20.00", "money in EUR", 20)]).size).toBe(0);
    expect(
      lowest([figure("$3 / ft", "price per length", 9), figure("$2 / ft", "price per length", 6)])
        .size,
    ).toBe(0);
  });
});

describe("what a cell answers", () => {
  const state = (shown: Shown): CellState => ({ id: "a.md#a", shown, cautions: [], problems: [] });
  it("is counted where it counts something", () => {
    const answer = answerOf(state({ kind: "text", text: "34 boards" }));
    expect(answer).toMatchObject({ measure: { of: "board", likely: 34 } });
    const one = answerOf(state({ kind: "text", text: "1 board" }));
    expect(one).toMatchObject({ measure: { of: "board", likely: 1 } });
    expect(answerOf(state({ kind: "text", text: "no plan" }))).not.toHaveProperty("measure");
    expect(answerOf(state({ kind: "text", text: "5–15 %" }))).not.toHaveProperty("measure");
  });

  it("is the first figure of a record, and none of a drawing or an entry", () => {
    const shown: Shown = {
      kind: "record",
      fields: [
        {
          title: "Height",
          shown: { kind: "figure", figure: { text: "3 ft", number: "3", unit: "ft" } },
        },
      ],
    };
    expect(answerOf(state(shown))).toMatchObject({ is: "figure", figure: { text: "3 ft" } });
    expect(answerOf(state({ kind: "nothing" }))).toBeUndefined();
    const entry = { entry: "number", initial: "1", text: "1" } as const;
    expect(answerOf({ id: "a.md#a", entry, cautions: [], problems: [] })).toBeUndefined();
  });
});
