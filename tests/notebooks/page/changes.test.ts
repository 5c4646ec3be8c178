import { describe, expect, it } from "vitest";
import { History } from "../../../notebooks/engine/page/changes.ts";
import { Moves, mainFigure } from "../../../notebooks/engine/page/moves.ts";
import { Turns } from "../../../notebooks/engine/page/turns.ts";
import type { CellId, CellState, ToRoom } from "../../../notebooks/engine/types/index.ts";

const kerf: CellId = "rebuild.md#kerf";
const lap: CellId = "rebuild.md#lap";
const fill: CellId = "rebuild.md#fill";

describe("History", () => {
  it("takes typing in one field for one change", () => {
    const history = new History();
    expect(history.note(new Map([[kerf, "1/8"]]), 0)).toBe(true);
    expect(history.note(new Map([[kerf, "1/"]]), 300)).toBe(false);
    expect(history.note(new Map([[lap, undefined]]), 600)).toBe(true);
    expect(history.take()?.before).toEqual(new Map([[lap, undefined]]));
    expect(history.take()?.before).toEqual(new Map([[kerf, "1/8"]]));
    expect(history.take()).toBeUndefined();
    expect(history.empty).toBe(true);
  });

  it("begins a new change after a pause", () => {
    const history = new History();
    history.note(new Map([[kerf, "1/8"]]), 0);
    expect(history.note(new Map([[kerf, "1/4"]]), 60_000)).toBe(true);
  });
});

describe("Moves", () => {
  const shown = (number: string): CellState => ({
    id: fill,
    cautions: [],
    problems: [],
    shown: { kind: "figure", figure: { text: `${number} cu yd`, number, unit: "cu yd" } },
  });

  it("says what a figure was before the change, until the next one", () => {
    const states = new Map([[fill, shown("3")]]);
    const moves = new Moves(states);
    expect(moves.was(fill)).toBeUndefined();
    moves.begin();
    states.set(fill, shown("2.7"));
    states.set(fill, shown("2.5"));
    expect(moves.was(fill)?.number).toBe("3");
    expect(moves.moved()).toEqual([fill]);
    moves.begin();
    expect(moves.was(fill)).toBeUndefined();
  });

  it("takes a record's first figure for the whole", () => {
    const figure = { text: "56 lb", number: "56", unit: "lb" };
    const fields = [
      { title: "Cautions", shown: { kind: "nothing" as const } },
      { title: "Wet", shown: { kind: "figure" as const, figure } },
    ];
    expect(mainFigure({ kind: "record", fields })).toEqual(figure);
    expect(mainFigure({ kind: "nothing" })).toBeUndefined();
  });
});

describe("Turns", () => {
  function turns() {
    const sent: ToRoom[] = [];
    const made = new Turns((message) => sent.push(message));
    made.restart(1);
    made.settled(0);
    return { made, sent };
  }

  it("sends one turn at a time and only the newest of what was typed meanwhile", () => {
    const { made, sent } = turns();
    made.enter(new Map([[kerf, "1"]]));
    made.enter(new Map([[kerf, "1/"]]));
    made.enter(new Map([[kerf, "1/4"]]));
    expect(sent).toEqual([{ kind: "enter", session: 1, turn: 1, changes: { [kerf]: "1" } }]);
    made.settled(1);
    expect(sent.at(-1)).toEqual({ kind: "enter", session: 1, turn: 2, changes: { [kerf]: "1/4" } });
    expect(sent).toHaveLength(2);
  });

  it("does not take an older turn's rest for the newest's", () => {
    const { made, sent } = turns();
    made.enter(new Map([[kerf, "1"]]));
    made.enter(new Map([[kerf, "2"]]));
    made.settled(0);
    expect(sent).toHaveLength(1);
  });

  it("puts defaults back by a message of their own", () => {
    const { made, sent } = turns();
    made.enter(new Map([[kerf, undefined]]));
    expect(sent).toEqual([{ kind: "reset", session: 1, turn: 1, cells: [kerf] }]);
  });
});
