import type { PlacedProblem } from "./context.ts";
import { button, el, freshId } from "./dom.ts";
import { onPaper } from "./on-paper.ts";
import { signAtSide } from "./side-sign.ts";
import { markRows } from "./table-marks.ts";
import { headingWords, isFigures, type Rows } from "./table-rows.ts";

export interface GridEvents {
  typed(row: number, column: number, text: string): void;
  /** Gives true where it took the text as rows. */
  pasted(row: number, column: number, text: string): boolean;
  /** The field below the last one was asked for. */
  grow(): void;
  focused(row: number): void;
}

/** So many rows are drawn at once: a garden of 2,000 beds stays as quick as one of 14. */
const windowOnScreen = 60;

interface Field {
  readonly row: number;
  readonly column: number;
}

/** The trays of a table, a window of rows at a time. Fields are never rebuilt while typed in. */
export class TableGrid {
  readonly element = el("div");
  private readonly events: GridEvents;
  private readonly head = el("tr");
  private readonly body = el("tbody");
  private readonly pager = el("p", { class: "pager" });
  private columns: readonly string[] = [];
  private rows: Rows = [];
  private first = 0;
  private size = windowOnScreen;
  private problems: readonly PlacedProblem[] = [];

  constructor(title: string, events: GridEvents) {
    this.events = events;
    const captionId = freshId("rows");
    const table = el(
      "table",
      { class: "led edit" },
      el("caption", { id: captionId, class: "vh" }, `${title}, to fill in`),
      el("thead", {}, this.head),
      this.body,
    );
    const region = { class: "scroll", role: "group", "aria-labelledby": captionId, tabindex: 0 };
    const holder = el("div", region, table);
    this.element.append(signAtSide(holder), holder, this.pager);
    this.body.addEventListener("input", (event) => this.onInput(event));
    this.body.addEventListener("keydown", (event) => this.onKey(event));
    this.body.addEventListener("paste", (event) => this.onPaste(event));
    this.body.addEventListener("focusin", (event) => {
      const at = placeOfField(event.target);
      if (at) this.events.focused(at.row);
    });
    onPaper(this.element, {
      begin: () => this.drawWith(Number.POSITIVE_INFINITY),
      end: () => this.drawWith(windowOnScreen),
    });
  }

  /** Draws the rows anew; what had focus keeps it. */
  show(columns: readonly string[], rows: Rows): void {
    const at = placeOfField(document.activeElement);
    const had = at !== undefined && this.body.contains(document.activeElement);
    this.columns = columns;
    this.rows = rows;
    this.draw();
    if (had && at) this.focus(Math.min(at.row, rows.length - 1), at.column);
  }

  /** Takes over what was typed, without touching any field. */
  keep(rows: Rows): void {
    this.rows = rows;
  }

  /** Marks the fields that are refused. */
  mark(problems: readonly PlacedProblem[]): void {
    this.problems = problems;
    markRows(this.body, this.columns, this.problems);
  }

  focus(row: number, column: number): void {
    if (row < 0) return;
    if (row < this.first || row >= this.first + this.size) {
      this.first = this.startOf(row);
      this.draw();
    }
    const field = this.field(row, column);
    field?.focus();
    field?.select();
  }

  /** On paper all rows are drawn. */
  private drawWith(size: number): void {
    if (this.rows.length <= windowOnScreen) return;
    this.size = size;
    this.draw();
  }

  private draw(): void {
    const { columns, rows } = this;
    this.first = Math.min(this.first, this.startOf(Math.max(0, rows.length - 1)));
    const right = columns.map((_, column) => isFigures(rows.slice(0, 200), column));
    const sizes = columns.map((_, column) => {
      const longest = Math.max(...rows.slice(0, 200).map((row) => row[column]?.length ?? 0), 0);
      return Math.min(20, Math.max(3, longest));
    });
    this.head.replaceChildren(
      ...columns.map((name, column) =>
        el("th", { scope: "col", class: right[column] ? undefined : "l" }, headingWords(name)),
      ),
    );
    const shown = rows.slice(this.first, this.first + this.size);
    this.body.replaceChildren(
      ...shown.map((row, offset) => this.rowView(row, this.first + offset, right, sizes)),
    );
    this.drawPager();
    markRows(this.body, this.columns, this.problems);
  }

  /** The first row drawn where this one is in sight. */
  private startOf(row: number): number {
    return Number.isFinite(this.size) ? Math.floor(row / this.size) * this.size : 0;
  }

  private rowView(
    row: readonly string[],
    index: number,
    right: readonly boolean[],
    sizes: readonly number[],
  ): HTMLElement {
    const cells = this.columns.map((name, column) => {
      const field = el("input", {
        type: "text",
        value: row[column] ?? "",
        size: sizes[column],
        autocomplete: "off",
        spellcheck: "false",
        "aria-label": `Row ${index + 1}, ${headingWords(name).toLowerCase()}`,
        "data-row": index,
        "data-column": column,
      });
      // A table squeezes its fields below their size; what is in them must be seen.
      field.style.minWidth = `calc(${sizes[column] ?? 4}ch + 1.25rem)`;
      return el(
        "td",
        { class: right[column] ? undefined : "l" },
        el("span", { class: "tray c" }, field),
      );
    });
    return el("tr", { "data-row": index }, ...cells);
  }

  private drawPager(): void {
    const { rows, first, size } = this;
    const last = Math.min(first + size, rows.length);
    this.pager.hidden = rows.length <= size;
    if (this.pager.hidden) return;
    const move = (by: number) => {
      this.first = first + by;
      this.draw();
    };
    const before = button("Rows before", () => move(-size));
    const after = button("Rows after", () => move(size));
    before.disabled = first === 0;
    after.disabled = last >= rows.length;
    this.pager.replaceChildren(
      el("span", {}, `Rows ${first + 1} to ${last} of ${rows.length.toLocaleString("en")}`),
      before,
      after,
    );
  }

  private field(row: number, column: number): HTMLInputElement | null {
    return this.body.querySelector(`input[data-row="${row}"][data-column="${column}"]`);
  }

  private onInput({ target }: Event): void {
    const at = placeOfField(target);
    if (at) this.events.typed(at.row, at.column, (target as HTMLInputElement).value);
  }

  private onPaste(event: ClipboardEvent): void {
    const at = placeOfField(event.target);
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (at && this.events.pasted(at.row, at.column, text)) event.preventDefault();
  }

  private onKey(event: KeyboardEvent): void {
    const at = placeOfField(event.target);
    if (!at || event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
    const to = this.keyTarget(event, at);
    if (!to) return;
    event.preventDefault();
    if (to.row >= this.rows.length) this.events.grow();
    this.focus(to.row, to.column);
  }

  /** Enter and the arrows go up and down; Tab only needs help where the drawn rows end. */
  private keyTarget({ key, shiftKey }: KeyboardEvent, { row, column }: Field): Field | undefined {
    const last = this.columns.length - 1;
    const down = key === "ArrowDown" || (key === "Enter" && !shiftKey);
    const up = key === "ArrowUp" || (key === "Enter" && shiftKey);
    if (down && (row + 1 < this.rows.length || key === "Enter")) return { row: row + 1, column };
    if (up && row > 0) return { row: row - 1, column };
    if (key !== "Tab") return undefined;
    const end = Math.min(this.first + this.size, this.rows.length) - 1;
    if (!shiftKey && column === last && row === end && row + 1 < this.rows.length)
      return { row: row + 1, column: 0 };
    if (shiftKey && column === 0 && row === this.first && row > 0)
      return { row: row - 1, column: last };
    return undefined;
  }
}

function placeOfField(target: EventTarget | null): Field | undefined {
  if (!(target instanceof HTMLInputElement) || target.dataset.row === undefined) return undefined;
  return { row: Number(target.dataset.row), column: Number(target.dataset.column) };
}
