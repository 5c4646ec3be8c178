import type { CellId, TableText } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { button, el, freshId } from "../dom.ts";
import { withColumn, withColumnNamed, withoutColumn, wrongColumn } from "./table-columns.ts";

/** The columns of a table: each may be called otherwise or taken out, and more added. */
export class ColumnsForm {
  readonly element: HTMLElement;
  readonly #id: CellId;
  readonly #context: Context;
  readonly #list = el("ul");
  readonly #wrong = el("p", { class: "refused", role: "alert", hidden: true });
  #shown = "";

  constructor(id: CellId, context: Context) {
    this.#id = id;
    this.#context = context;
    const fieldId = freshId("column");
    const input = nameField("", fieldId);
    const form = el(
      "form",
      { class: "more-column" },
      el("label", { for: fieldId }, "Another column"),
      el("span", { class: "tray" }, input),
      el("button", { type: "submit" }, "Add the column"),
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const name = input.value.trim();
      if (!this.#mayBe(name, this.#table.columns)) return input.focus();
      this.#enter(withColumn(this.#table, name), `A column ${name} is added.`);
      input.value = "";
    });
    this.element = el(
      "div",
      { class: "columns-form" },
      el("p", { class: "hint" }, "Its columns. A unit may stand in brackets, as in length (in)."),
      this.#list,
      form,
      this.#wrong,
    );
    this.update();
  }

  update(): void {
    const { columns } = this.#table;
    const key = JSON.stringify(columns);
    if (key === this.#shown) return;
    this.#shown = key;
    this.#list.replaceChildren(...columns.map((name, at) => this.#line(name, at)));
  }

  get #table(): TableText {
    return this.#context.book.table(this.#id);
  }

  #line(name: string, at: number): HTMLElement {
    const input = nameField(name, freshId("column"));
    input.setAttribute("aria-label", `Name of column ${at + 1}`);
    input.addEventListener("change", () => {
      const now = input.value.trim();
      const others = this.#table.columns.filter((_, index) => index !== at);
      if (now === name) return;
      if (!this.#mayBe(now, others)) {
        input.value = name;
        return;
      }
      this.#enter(withColumnNamed(this.#table, at, now), `${name} is called ${now} now.`);
    });
    const out = button(
      "Take out",
      () => {
        const words = `The column ${name} is taken out. Undo brings it back.`;
        this.#enter(withoutColumn(this.#table, at), words);
        this.element.querySelector<HTMLElement>("input")?.focus();
      },
      { class: "lnk", "aria-label": `Take out the column ${name}` },
    );
    return el("li", {}, el("span", { class: "tray" }, input), out);
  }

  #mayBe(name: string, others: readonly string[]): boolean {
    const why = wrongColumn(name, others);
    this.#wrong.textContent = why ?? "";
    this.#wrong.hidden = why === undefined;
    return why === undefined;
  }

  #enter(table: TableText, words: string): void {
    this.#context.enter(this.#id, table);
    this.#context.say(words);
    this.update();
  }
}

function nameField(value: string, id: string): HTMLInputElement {
  return el("input", {
    type: "text",
    id,
    value,
    maxlength: 80,
    autocomplete: "off",
    spellcheck: "false",
  });
}
