import { insertNewlineAndIndent, standardKeymap } from "@codemirror/commands";
import { indentUnit } from "@codemirror/language";
import { Compartment, EditorState, type Extension } from "@codemirror/state";
import { EditorView, keymap, lineNumbers } from "@codemirror/view";
import { el } from "../dom.ts";
import { changeTo } from "./change-to.ts";
import { type KeyActs, ownKeys } from "./field-keys.ts";
import { fieldLook } from "./field-look.ts";

export interface FieldOptions extends KeyActs {
  /** What a screen reader calls it. */
  readonly label: string;
  readonly text: string;
  /** Line in the document of the first line; without it no lines are counted. */
  readonly firstLine?: number;
  readonly isProse?: boolean;
  /** Marks, completion and the like. */
  readonly extensions?: readonly Extension[];
  /** The reader typed: the whole text as it is now. */
  typed(text: string): void;
  /** The caret stands somewhere else. */
  moved?(view: EditorView): void;
}

/** A change that came from the document, not from the reader's hand. */
let following = false;

/**
 * A field to write a formula or prose in. It stands in a shadow root, where its style needs no leave
 * of the page's policy, and has no history of its own: undoing is the notebook's.
 */
export class Field {
  readonly element: HTMLElement;
  readonly view: EditorView;
  readonly #lines = new Compartment();
  #first: number | undefined;

  constructor(options: FieldOptions) {
    const { label, text, firstLine, isProse = false, extensions = [] } = options;
    this.#first = firstLine;
    this.element = el("div", { class: "field-host" });
    const root = this.element.attachShadow({ mode: "open" });
    const parent = el("div");
    root.append(parent);
    this.view = new EditorView({
      root,
      parent,
      state: EditorState.create({
        doc: text,
        extensions: [
          ownKeys(options),
          ...extensions,
          keymap.of([{ key: "Enter", run: insertNewlineAndIndent }, ...standardKeymap]),
          this.#lines.of(numbers(firstLine)),
          indentUnit.of("  "),
          EditorState.tabSize.of(2),
          EditorView.lineWrapping,
          EditorView.contentAttributes.of({
            "aria-label": label,
            spellcheck: String(isProse),
            autocapitalize: isProse ? "sentences" : "off",
          }),
          fieldLook(isProse),
          EditorView.updateListener.of((update) => {
            if (update.docChanged && !following) options.typed(this.text);
            if (update.docChanged || update.selectionSet) options.moved?.(update.view);
          }),
        ],
      }),
    });
  }

  get text(): string {
    return this.view.state.doc.toString();
  }

  /** Takes over the document's text where it is another; the caret stays at its place in the text. */
  follow(text: string, firstLine?: number): void {
    if (firstLine !== this.#first) {
      this.#first = firstLine;
      this.view.dispatch({ effects: this.#lines.reconfigure(numbers(firstLine)) });
    }
    const change = changeTo(this.text, text);
    if (!change) return;
    following = true;
    try {
      this.view.dispatch({ changes: change });
    } finally {
      following = false;
    }
  }

  focus(): void {
    this.view.focus();
  }

  remove(): void {
    this.view.destroy();
    this.element.remove();
  }
}

function numbers(first: number | undefined): Extension {
  if (first === undefined) return [];
  return lineNumbers({ formatNumber: (line) => String(first + line - 1) });
}
