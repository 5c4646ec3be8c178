import { completionStatus } from "@codemirror/autocomplete";
import { indentLess, indentMore } from "@codemirror/commands";
import { indentUnit } from "@codemirror/language";
import { type Extension, Prec } from "@codemirror/state";
import { type Command, EditorView, keymap } from "@codemirror/view";

/** What the keys of a field do beyond writing. */
export interface KeyActs {
  keep(): void;
  putBack(): void;
  undo(): void;
  redo(): void;
}

/**
 * The keys of a field. Escape frees Tab, so that nobody is caught in it; Escape once more puts back.
 * Undoing goes to the notebook's own history, in which entries stand too.
 */
export function ownKeys(acts: KeyActs): Extension {
  let isFree = false;
  const act = (run: () => void): Command => {
    return () => {
      run();
      return true;
    };
  };
  const leave: Command = ({ state }) => {
    // An open list of names is closed first; one that is only being made is no reason to wait.
    if (completionStatus(state) === "active") return false;
    if (isFree) acts.putBack();
    isFree = !isFree;
    return true;
  };
  const tab =
    (inside: Command): Command =>
    (view) =>
      !isFree && inside(view);
  return [
    Prec.high(
      EditorView.domEventHandlers({
        keydown({ key }) {
          if (!["Escape", "Tab", "Shift"].includes(key)) isFree = false;
          return false;
        },
        blur() {
          isFree = false;
        },
        beforeinput(event) {
          if (event.inputType === "historyUndo") acts.undo();
          else if (event.inputType === "historyRedo") acts.redo();
          else return false;
          event.preventDefault();
          return true;
        },
      }),
    ),
    Prec.highest(keymap.of([{ key: "Escape", run: leave }])),
    keymap.of([
      { key: "Mod-Enter", run: act(acts.keep) },
      { key: "Mod-z", run: act(acts.undo), preventDefault: true },
      { key: "Mod-Shift-z", run: act(acts.redo), preventDefault: true },
      { key: "Mod-y", run: act(acts.redo), preventDefault: true },
      { key: "Tab", run: tab(indented), shift: tab(indentLess) },
    ]),
  ];
}

/** Tab moves chosen lines in, or else puts a step at the caret. */
const indented: Command = (view) => {
  const { state } = view;
  if (!state.selection.main.empty) return indentMore(view);
  view.dispatch(state.replaceSelection(state.facet(indentUnit)));
  return true;
};

/** The same keys in words, to stand under a field. */
export const keysInWords =
  "Ctrl and Enter keeps it. Escape twice puts it back. Tab moves a line in; after Escape it leaves the field.";
