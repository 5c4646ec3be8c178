import type { CellId } from "../../types/index.ts";
import { partsOf } from "../book.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { placeOf, withFormulaAt } from "./block-place.ts";
import { callHelp } from "./call-help.ts";
import { ColumnsForm } from "./columns-form.ts";
import { completion } from "./completion.ts";
import { Field } from "./field.ts";
import { keysInWords } from "./field-keys.ts";
import { cellNames, lookAgain, showWrong, wrongPieces } from "./field-marks.ts";
import { formulaLanguage } from "./formula-language.ts";
import { handedWords } from "./handed-words.ts";
import { slipActs } from "./slip-acts.ts";
import { SlipFoot } from "./slip-foot.ts";
import { SlipHead } from "./slip-head.ts";
import { SlipNames } from "./slip-names.ts";
import type { HandedWord } from "./suggestions.ts";
import { otherNames, vocabularyOf } from "./vocabulary.ts";
import { wrongIn } from "./wrong-pieces.ts";

/**
 * An opened cell that may be changed: a slip laid on the page. What is typed is at once in the
 * document, and the cell's value goes on living below.
 */
export class CellSlip {
  readonly element: HTMLElement;
  readonly #id: CellId;
  readonly #context: Context;
  readonly #close: () => void;
  readonly #head: SlipHead;
  readonly #names: SlipNames;
  readonly #foot: SlipFoot;
  readonly #help = el("p", { class: "callhelp", hidden: true });
  readonly #field: Field | undefined;
  readonly #columns: ColumnsForm | undefined;
  readonly #before: string;
  #handed: readonly HandedWord[] = [];
  #others: ReadonlySet<string> = new Set();
  #wrong = "";

  constructor(id: CellId, context: Context, close: () => void) {
    this.#id = id;
    this.#context = context;
    this.#close = close;
    const [file, name] = partsOf(id);
    const { block } = placeOf(id, context.book.documents) ?? {};
    this.#head = new SlipHead(name, context, () => placeOf(id, context.book.documents));
    this.#names = new SlipNames(context);
    this.#foot = new SlipFoot(context.book.title(id), context);
    this.#before = block?.kind === "cell" ? block.formula : "";
    this.#field = block?.kind === "cell" ? this.#makeField(name, file) : undefined;
    this.#columns = block?.kind === "table" ? new ColumnsForm(id, context) : undefined;
    this.element = el(
      "div",
      { class: "slip own-slip", role: "group", "aria-label": `The cell ${name}` },
      this.#head.element,
      el(
        "div",
        { class: "slipbody" },
        this.#field ? this.#pad(this.#field) : this.#columns?.element,
        this.#names.element,
      ),
      el("div", { class: "slipfoot" }, this.#foot.element, this.#buttons()),
      slipActs(id, context),
    );
    void this.#learnNames();
    this.update();
  }

  /** Shows the cell as it is now: its block, its value, what it takes. */
  update(): void {
    const { book } = this.#context;
    const place = placeOf(this.#id, book.documents);
    if (!place || (place.block.kind !== "cell" && place.block.kind !== "table")) return;
    const { block } = place;
    const state = book.states.get(this.#id);
    this.#head.show(block);
    this.#names.show(book.outline.get(this.#id));
    this.#foot.show(state);
    this.#columns?.update();
    if (block.kind !== "cell" || !this.#field) return;
    this.#field.follow(block.formula.replaceAll("\r\n", "\n"), block.formulaLine);
    this.#markNames(this.#field);
    const pieces = state?.error
      ? wrongIn(this.#field.text, block.formulaLine, state.error, place.notebook.file)
      : [];
    const wrong = JSON.stringify(pieces);
    if (wrong !== this.#wrong) showWrong(this.#field.view, pieces);
    this.#wrong = wrong;
  }

  focus(): void {
    if (this.#field) this.#field.focus();
    else this.element.querySelector<HTMLElement>("summary, button")?.focus();
  }

  end(): void {
    this.#foot.end();
    this.#field?.remove();
    this.element.remove();
  }

  /** Without the reference the cells of the notebook are offered all the same. */
  async #learnNames(): Promise<void> {
    try {
      const { names } = await this.#context.options.loadReference();
      this.#handed = handedWords(names);
    } catch {
      this.#handed = [];
    }
  }

  #makeField(name: string, file: string): Field {
    const { block } = placeOf(this.#id, this.#context.book.documents) ?? {};
    const cell = block?.kind === "cell" ? block : undefined;
    return new Field({
      label: `Formula of ${name}`,
      text: this.#before.replaceAll("\r\n", "\n"),
      ...(cell ? { firstLine: cell.formulaLine } : {}),
      extensions: [
        formulaLanguage,
        cellNames((word) => this.#others.has(word)),
        wrongPieces,
        completion(() => {
          const { cells, handed } = vocabularyOf(this.#context, file, this.#handed);
          // A cell that names itself would go round in a circle.
          return { cells: cells.filter((one) => one.name !== name), handed };
        }),
      ],
      typed: (text) => this.#write(text),
      moved: (view) => this.#showHelp(view.state.selection.main.head),
      keep: () => this.#keep(),
      putBack: () => this.#putBack(),
      undo: () => this.#context.undo(),
      redo: () => this.#context.redo(),
    });
  }

  #markNames(field: Field): void {
    const before = [...this.#others].join();
    this.#others = otherNames(this.#context, this.#id);
    if ([...this.#others].join() !== before) lookAgain(field.view);
  }

  #pad(field: Field): HTMLElement {
    return el(
      "div",
      { class: "writing" },
      el("div", { class: "pad-tray" }, field.element),
      this.#help,
      el("p", { class: "hint keys" }, keysInWords),
    );
  }

  #buttons(): HTMLElement {
    return el(
      "div",
      { class: "acts" },
      button("Keep", () => this.#keep(), { class: "main" }),
      this.#field && button("Put back", () => this.#putBack()),
    );
  }

  #write(formula: string): void {
    const place = placeOf(this.#id, this.#context.book.documents);
    if (!place) return;
    const { notebook, index } = place;
    const text = withFormulaAt(notebook, index, formula);
    const goesOn = `formula:${this.#id}`;
    this.#context.editing.edit(new Map([[notebook.file, text]]), { goesOn });
  }

  #showHelp(caret: number): void {
    const text = this.#field?.text;
    const found = text === undefined ? undefined : callHelp(text, caret, this.#handed);
    this.#help.hidden = found === undefined;
    if (found) this.#help.replaceChildren(el("code", {}, found.call), ` ${found.help}`);
  }

  #keep(): void {
    this.#close();
    this.#context.say("Kept.");
  }

  #putBack(): void {
    const place = placeOf(this.#id, this.#context.book.documents);
    const isChanged = place?.block.kind === "cell" && place.block.formula !== this.#before;
    if (isChanged) {
      this.#write(this.#before);
      this.#context.say("The formula is as it was before.");
    }
    this.#close();
  }
}
