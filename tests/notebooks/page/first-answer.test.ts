import { describe, expect, it } from "vitest";
import { FirstAnswer } from "../../../notebooks/engine/page/first-answer.ts";
import type { CellId, FromRoom } from "../../../notebooks/engine/types/index.ts";

const id = "rebuild.md#total" as CellId;
const book = { pinned: () => [id, "rebuild.md#boards" as CellId], title: () => "The bill" };
const figure = (number: string) => ({ text: `$${number}`, number, unit: "" });

function values(number: string, cell: CellId = id): FromRoom {
  const state = { id: cell, cautions: [], problems: [] };
  const shown = { kind: "figure", figure: figure(number) } as const;
  return { kind: "values", session: 1, turn: 0, cells: [{ ...state, shown }] };
}
const settled = (...working: CellId[]): FromRoom => ({
  kind: "settled",
  session: 1,
  turn: 0,
  working,
});

function heard(...messages: readonly FromRoom[]) {
  const first = new FirstAnswer(book, "2026-04-25");
  return messages.map((message) => {
    const answer = first.heard(message);
    return typeof answer === "object" ? answer.figure.number : answer;
  });
}

describe("the first answer of a notebook", () => {
  it("stands when nothing it rests on is being worked out, not while it gets better", () => {
    expect(
      heard(values("720"), settled(id), values("700"), settled(id), values("690"), settled()),
    ).toEqual(["not yet", "not yet", "not yet", "not yet", "not yet", "690"]);
  });

  it("does not wait for long work of others", () => {
    const other = "rebuild.md#compared" as CellId;
    expect(heard(settled(other), values("720"), settled(other))).toEqual([
      "not yet",
      "not yet",
      "720",
    ]);
  });

  it("is none where everything rests without one, whatever other cells say", () => {
    expect(heard(values("34", "rebuild.md#boards" as CellId), settled())).toEqual([
      "not yet",
      undefined,
    ]);
  });
});
