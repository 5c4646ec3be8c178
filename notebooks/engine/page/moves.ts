import type { CellId, CellState, Figure, Shown } from "../types/index.ts";
import { splitUnit } from "./figure-text.ts";

/** Words as a figure: "34 boards" has digits and a unit. */
export function figureOfText(text: string): Figure {
  const [number, unit] = splitUnit(text);
  return { text, number, unit };
}

/** The one figure that stands for a value: its own, or the first of a record. */
export function mainFigure(shown: Shown | undefined): Figure | undefined {
  if (shown?.kind === "figure") return shown.figure;
  if (shown?.kind === "text" && shown.text.length <= 60) return figureOfText(shown.text);
  if (shown?.kind === "record")
    for (const field of shown.fields) {
      const figure = mainFigure(field.shown);
      if (figure) return figure;
    }
  return undefined;
}

/**
 * What each figure was before the reader's last change. A change lasts while somebody types in one
 * field, so "was 3" does not turn into the half-typed numbers between.
 */
export class Moves {
  private before = new Map<CellId, Figure>();
  private readonly states: ReadonlyMap<CellId, CellState>;

  constructor(states: ReadonlyMap<CellId, CellState>) {
    this.states = states;
  }

  /** A new change begins: what stands now is what things were. */
  begin(): void {
    this.before = new Map();
    for (const [id, { shown }] of this.states) {
      const figure = mainFigure(shown);
      if (figure) this.before.set(id, figure);
    }
  }

  /** Nothing has moved: after opening, and when everything is printed in other units. */
  clear(): void {
    this.before = new Map();
  }

  /** What the figure was, where it has moved. */
  was(id: CellId): Figure | undefined {
    const now = mainFigure(this.states.get(id)?.shown);
    const before = this.before.get(id);
    return before && now && before.text !== now.text ? before : undefined;
  }

  moved(): readonly CellId[] {
    return [...this.before.keys()].filter((id) => this.was(id) !== undefined);
  }
}
