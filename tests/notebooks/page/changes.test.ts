import { describe, expect, it } from "vitest";
import { type Change, History } from "../../../notebooks/engine/page/changes.ts";
import { Moves, mainFigure } from "../../../notebooks/engine/page/moves.ts";
import { Turns } from "../../../notebooks/engine/page/turns.ts";
import type { CellId, CellState, Entered, ToRoom } from "../../../notebooks/engine/types/index.ts";

const kerf: CellId = "rebuild.md#kerf";
const lap: CellId = "rebuild.md#lap";
const fill: CellId = "rebuild.md#fill";

/** One entry's text, as a change. */
const entered = (id: CellId, value: string | undefined): Change => ({
  entered: new Map([[id, value]]),
  texts: new Map(),
});

describe("History", () => {
  it("takes typing in one field for one change", () => {
    const history = new History();
    expect(history.note(entered(kerf, "1/8"), 0, kerf)).toBe(true);
    expect(history.note(entered(kerf, "1/"), 300, kerf)).toBe(false);
    expect(history.note(entered(lap, undefined), 600, lap)).toBe(true);
    expect(history.undo((change) => change)).toEqual(entered(lap, undefined));
    expect(history.undo((change) => change)).toEqual(entered(kerf, "1/8"));
    expect(history.undo((change) => change)).toBeUndefined();
    expect(history.empty).toBe(true);
  });

  it("begins a new change after a pause, and where it stands by itself", () => {
    const history = new History();
    history.note(entered(kerf, "1/8"), 0, kerf);
    expect(history.note(entered(kerf, "1/4"), 60_000, kerf)).toBe(true);
    history.note(entered(kerf, "1/4"), 60_001, undefined);
    expect(history.note(entered(kerf, "1/4"), 60_002, undefined)).toBe(true);
  });

  it("does again what was undone, until something else is done", () => {
    const history = new History();
    history.note(entered(kerf, "1/8"), 0, undefined);
    // The field holds 1/4 when it is undone, and 1/8 when it is done again.
    history.undo(() => entered(kerf, "1/4"));
    expect(history.nothingUndone).toBe(false);
    expect(history.redo(() => entered(kerf, "1/8"))).toEqual(entered(kerf, "1/4"));
    expect(history.undo(() => entered(kerf, "1/4"))).toEqual(entered(kerf, "1/8"));
    history.note(entered(lap, "ends"), 10_000, undefined);
    expect(history.nothingUndone).toBe(true);
    expect(history.redo((change) => change)).toBeUndefined();
  });

  it("keeps documents beside entries", () => {
    const history = new History();
    const before: Change = { entered: new Map(), texts: new Map([["a.md", "# A"]]) };
    history.note(before, 0, undefined);
    expect(history.undo((change) => change)).toEqual(before);
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

  it("sends an edit with all that is entered, as it is when its turn comes", () => {
    const { made, sent } = turns();
    made.enter(new Map([[kerf, "1"]]));
    let now: Entered = {};
    made.edit(() => ({ documents: {}, entered: now }));
    made.enter(new Map([[lap, "ends"]]));
    expect(sent).toHaveLength(1);
    now = { [kerf]: "1", [lap]: "ends" };
    made.settled(1);
    expect(sent.slice(1)).toEqual([
      { kind: "edit", session: 1, turn: 2, documents: {}, entered: now },
    ]);
    made.settled(2);
    expect(sent).toHaveLength(2);
  });

  it("puts defaults back by a message of their own", () => {
    const { made, sent } = turns();
    made.enter(new Map([[kerf, undefined]]));
    expect(sent).toEqual([{ kind: "reset", session: 1, turn: 1, cells: [kerf] }]);
  });
});
