import type { CellId, TableText } from "../types/index.ts";
import { partsOf } from "./book.ts";
import type { CellView, Context } from "./context.ts";
import { button, el } from "./dom.ts";
import { isRange, pasteInto, readClipboard } from "./paste.ts";
import { TableGrid } from "./table-grid.ts";
import {
  countRows,
  inKnownOrder,
  type Rows,
  withField,
  withoutBlankEnd,
  withoutRow,
} from "./table-rows.ts";
import { TableTools } from "./table-tools.ts";

/** A table that is an entry: every cell a tray, filled by typing, pasting or from a file. */
export class EditableTable implements CellView {
  readonly element: HTMLElement;
  private readonly id: CellId;
  private readonly context: Context;
  private readonly grid: TableGrid;
  private readonly tools: TableTools;
  private readonly troubles = el("div");
  /** The rows on screen: those of the table, and empty ones at the end to fill in. */
  private rows: Rows = [];
  private columns: readonly string[] = [];
  private shown: TableText | undefined;
  private at: number | undefined;

  constructor(id: CellId, context: Context) {
    this.id = id;
    this.context = context;
    const title = context.book.title(id);
    const [, name] = partsOf(id);
    this.grid = new TableGrid(title, {
      typed: (row, column, text) => {
        this.rows = withField(this.rows, row, column, text);
        this.grid.keep(this.rows);
        this.commit();
      },
      pasted: (row, column, text) => this.paste(text, { row, column }),
      grow: () => this.addRow(),
      focused: (row) => {
        this.at = row;
        this.tools.at(row);
      },
    });
    this.tools = new TableTools(name, title, {
      addRow: () => {
        this.addRow();
        this.grid.focus(this.rows.length - 1, 0);
      },
      takeOut: () => this.takeOut(),
      paste: (text, instead) => this.pasteAll(text, instead),
      open: (text, fileName) => this.open(text, fileName),
      refuse: (words) => {
        this.troubles.replaceChildren(el("p", { class: "refused" }, words));
        context.say(words);
      },
      csv: () => context.csv.writeCsv(context.book.table(id)),
      putBack: () => context.enter(id, undefined),
    });
    this.element = el(
      "div",
      { class: "wide table-entry" },
      this.grid.element,
      this.troubles,
      this.tools.element,
    );
    this.update();
  }

  update(): void {
    const { book, problems } = this.context;
    const table = book.table(this.id);
    if (table !== this.shown) {
      this.shown = table;
      this.columns = table.columns;
      this.rows = table.rows;
      this.grid.show(this.columns, this.rows);
    }
    const placed = problems.of(this.id);
    this.grid.mark(placed);
    const whole = placed.filter(({ row }) => row === undefined);
    this.troubles.replaceChildren(
      ...whole.map(({ sentence }) => el("p", { class: "refused" }, sentence)),
    );
    this.tools.changed(book.entered.has(this.id));
    this.showCount();
  }

  private showCount(): void {
    const { counted, filled, left } = countRows(this.rows, this.context.problems.of(this.id));
    const rows = filled === 1 ? "row" : "rows";
    const { foot } = this.tools;
    if (left.length === 0) {
      foot.replaceChildren(`${filled.toLocaleString("en")} ${rows}, all counted`);
      return;
    }
    const shown = left
      .slice(0, 5)
      .flatMap(({ row, why }, index) => [
        index === 0 ? "" : "; ",
        button(`row ${row}`, () => this.grid.focus(row - 1, 0), { class: "lnk" }),
        `, ${why}`,
      ]);
    const more = left.length > 5 ? ` and ${left.length - 5} more` : "";
    foot.replaceChildren(`${counted} of ${filled} ${rows} counted. Left out: `, ...shown, more);
  }

  /** Hands the rows on. The table on screen is now the one entered, so nothing is drawn anew. */
  private commit(): void {
    const { book } = this.context;
    const rows = withoutBlankEnd(this.rows);
    const table = { ...book.table(this.id), columns: this.columns, rows };
    this.shown = table;
    this.context.enter(this.id, table);
    this.tools.changed(true);
    this.showCount();
  }

  private replace(table: TableText): void {
    this.columns = table.columns;
    this.rows = table.rows;
    this.grid.show(this.columns, this.rows);
    this.commit();
  }

  private addRow(): void {
    this.rows = [...this.rows, this.columns.map(() => "")];
    this.grid.show(this.columns, this.rows);
  }

  private takeOut(): void {
    const { at } = this;
    if (at === undefined) return;
    this.rows = withoutRow(this.rows, at);
    this.grid.show(this.columns, this.rows);
    this.commit();
    this.context.say(`Row ${at + 1} is taken out. Undo last change brings it back.`);
    this.grid.focus(Math.min(at, this.rows.length - 1), 0);
  }

  private paste(text: string, at: { readonly row: number; readonly column: number }): boolean {
    if (!isRange(text)) return false;
    const table = { ...this.context.book.table(this.id), columns: this.columns, rows: this.rows };
    const pasted = pasteInto(table, readClipboard(text), at);
    this.replace(pasted.table);
    const beyond =
      pasted.beyond > 0
        ? ` ${pasted.beyond} fields stood beyond the last column and are left off.`
        : "";
    this.context.say(`${pasted.rows} rows pasted.${beyond}`);
    return true;
  }

  private pasteAll(text: string, instead: boolean): void {
    if (instead) this.rows = [];
    const row = withoutBlankEnd(this.rows).length;
    this.rows = this.rows.slice(0, row);
    // One line, or one column, is rows too when it is put in here.
    if (!this.paste(text, { row, column: 0 })) this.paste(`${text}\n\t`, { row, column: 0 });
  }

  private open(text: string, fileName: string): void {
    const { book, csv, say } = this.context;
    try {
      const opened = csv.readCsv(text, partsOf(this.id)[1]);
      this.replace(inKnownOrder(opened, book.defaultTable(this.id).columns));
      say(`${opened.rows.length} rows opened from ${fileName}.`);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      say(`${fileName} can’t be read: ${why}`);
    }
  }
}
