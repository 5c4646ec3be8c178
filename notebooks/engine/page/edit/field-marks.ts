import { syntaxTree } from "@codemirror/language";
import { type Extension, StateEffect, StateField } from "@codemirror/state";
import { Decoration, type DecorationSet, EditorView, ViewPlugin } from "@codemirror/view";

/** A piece of the text that is wrong. */
export interface WrongPiece {
  readonly from: number;
  readonly to: number;
}

const name = Decoration.mark({ class: "bw-name" });
const wrong = Decoration.mark({ class: "bw-wrong" });

const namesChanged = StateEffect.define<null>();
const setWrong = StateEffect.define<readonly WrongPiece[]>();

/** Underlines the names of other cells. */
export function cellNames(isCell: (name: string) => boolean): Extension {
  const mark = (view: EditorView): DecorationSet => {
    const pieces: { from: number; to: number }[] = [];
    syntaxTree(view.state).iterate({
      enter({ type, from, to }) {
        if (type.name === "VariableName" && isCell(view.state.sliceDoc(from, to)))
          pieces.push({ from, to });
      },
    });
    return Decoration.set(pieces.map(({ from, to }) => name.range(from, to)));
  };
  return ViewPlugin.define(
    (view) => ({
      marks: mark(view),
      update(update) {
        const isTold = update.transactions.some(({ effects }) =>
          effects.some((effect) => effect.is(namesChanged)),
        );
        const isRead = syntaxTree(update.startState) !== syntaxTree(update.state);
        if (update.docChanged || isRead || isTold) this.marks = mark(update.view);
      },
    }),
    { decorations: ({ marks }) => marks },
  );
}

/** Other names are cells now: the underlining is to be looked at again. */
export function lookAgain(view: EditorView): void {
  view.dispatch({ effects: namesChanged.of(null) });
}

/** Underlines, with a wave, the pieces that are wrong. */
export const wrongPieces: Extension = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update(marks, { changes, effects }) {
    let now = marks.map(changes);
    for (const effect of effects)
      if (effect.is(setWrong))
        now = Decoration.set(effect.value.map(({ from, to }) => wrong.range(from, to)));
    return now;
  },
  provide: (field) => EditorView.decorations.from(field),
});

/** Shows which pieces are wrong; those out of the text, and empty ones, are left out. */
export function showWrong(view: EditorView, pieces: readonly WrongPiece[]): void {
  const { length } = view.state.doc;
  const inside = pieces.filter(({ from, to }) => from >= 0 && from < to && to <= length);
  view.dispatch({ effects: setWrong.of([...inside].sort((a, b) => a.from - b.from)) });
}
