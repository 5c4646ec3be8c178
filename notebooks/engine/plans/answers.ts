import type { CellId, CellState, Figure, Measure, Shown } from "../types/index.ts";

/** What a cell answers, as far as plans are compared by it. */
export type Answer =
  | {
      readonly is: "figure";
      readonly figure: Figure;
      /** How large it is, where it has a size. */
      readonly measure?: Measure;
      /** Long work was stopped before its end: the best that had been found. */
      readonly cutShort?: boolean;
    }
  | { readonly is: "error"; readonly message: string };

/** The answers among the states of a notebook's cells; entries and drawings are none. */
export function answersOf(states: Iterable<CellState>): Map<CellId, Answer> {
  const answers = new Map<CellId, Answer>();
  for (const state of states) {
    const answer = answerOf(state);
    if (answer !== undefined) answers.set(state.id, answer);
  }
  return answers;
}

/** What one cell answers; undefined where that is no figure. */
export function answerOf(state: CellState | undefined): Answer | undefined {
  if (state === undefined || state.entry !== undefined) return undefined;
  if (state.error !== undefined) return { is: "error", message: state.error.message };
  const found = figureIn(state.shown);
  return found && { is: "figure", ...found, ...(state.cutShort ? { cutShort: true } : {}) };
}

type Found = { readonly figure: Figure; readonly measure?: Measure };

/** A figure, short words, or the first of either in a record: as in the tally. */
function figureIn(shown: Shown | undefined): Found | undefined {
  if (shown?.kind === "figure")
    return { figure: shown.figure, ...(shown.measure ? { measure: shown.measure } : {}) };
  if (shown?.kind === "text" && shown.text.length <= 60) return counted(shown.text);
  if (shown?.kind === "record")
    for (const field of shown.fields) {
      const found = figureIn(field.shown);
      if (found) return found;
    }
  return undefined;
}

/** "34 boards" is a count of boards; other words are words. */
function counted(text: string): Found {
  const [, number, of] = /^(\d+(?:\.\d+)?)\s+(\p{L}+)$/u.exec(text) ?? [];
  if (number === undefined || of === undefined) return { figure: { text, number: text, unit: "" } };
  const size = Number(number);
  // One board and two boards are counted in the same.
  const measure = { of: of.replace(/s$/, ""), low: size, likely: size, high: size };
  return { figure: { text, number, unit: of }, measure };
}
