import { button, el, freshId } from "./dom.ts";
import { readTextFile } from "./pick-file.ts";
import { saveText } from "./save-text.ts";

export interface ToolEvents {
  addRow(): void;
  takeOut(): void;
  paste(text: string, instead: boolean): void;
  open(text: string, fileName: string): void;
  /** A file was chosen that holds no table: why. */
  refuse(words: string): void;
  /** The table as CSV text, to be saved. */
  csv(): string;
  putBack(): void;
}

/** What can be done with a table, under it. */
export class TableTools {
  readonly element = el("div", { class: "tools-of-table" });
  readonly foot = el("p", { class: "note" });
  private readonly takeOut: HTMLButtonElement;
  private readonly back: HTMLButtonElement;
  private readonly panel = el("div", { class: "paste-panel", hidden: true });

  constructor(name: string, title: string, events: ToolEvents) {
    this.takeOut = button("Take out the row", () => events.takeOut());
    this.takeOut.hidden = true;
    this.back = button("Put back the table", () => events.putBack());
    const named = (made: HTMLButtonElement) => {
      made.append(el("span", { class: "vh" }, ` of ${title}`));
      return made;
    };
    const paste = button("Paste rows", () => this.togglePanel(paste), { "aria-expanded": "false" });
    this.fillPanel(events, paste);
    this.element.append(
      el(
        "div",
        { class: "under" },
        named(button("Add a row", () => events.addRow())),
        this.takeOut,
        named(paste),
        ...openFile(title, events),
        named(button("Save as CSV", () => saveText(events.csv(), `${name}.csv`, "text/csv"))),
        named(this.back),
        this.foot,
      ),
      this.panel,
    );
  }

  /** The row that "Take out" means; undefined where none has been touched. */
  at(row: number | undefined): void {
    this.takeOut.hidden = row === undefined;
    this.takeOut.textContent = `Take out row ${(row ?? 0) + 1}`;
  }

  changed(isChanged: boolean): void {
    this.back.hidden = !isChanged;
  }

  private togglePanel(by: HTMLElement): void {
    this.panel.hidden = !this.panel.hidden;
    by.setAttribute("aria-expanded", String(!this.panel.hidden));
    if (!this.panel.hidden) this.panel.querySelector("textarea")?.focus();
  }

  private fillPanel(events: ToolEvents, by: HTMLElement): void {
    const id = freshId("paste");
    const area = el("textarea", { id, rows: 5, spellcheck: "false" });
    const take = (instead: boolean) => {
      if (area.value.trim() === "") return area.focus();
      events.paste(area.value, instead);
      area.value = "";
      this.togglePanel(by);
      by.focus();
    };
    this.panel.append(
      el("label", { for: id }, "Rows copied from a spreadsheet, with or without their headings"),
      el("span", { class: "tray" }, area),
      el(
        "p",
        { class: "acts" },
        button("Add them at the end", () => take(false)),
        button("Put them in place of all rows", () => take(true)),
      ),
    );
  }
}

function openFile(title: string, events: ToolEvents): HTMLElement[] {
  const file = el("input", {
    type: "file",
    accept: ".csv,.tsv,.txt,text/csv,text/tab-separated-values",
    class: "vh",
    tabindex: -1,
    "aria-label": `A CSV file for ${title}`,
  });
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen) void openChosen(chosen, events);
    file.value = "";
  });
  return [
    button("Open a CSV file", () => file.click(), { "aria-label": `Open a CSV file for ${title}` }),
    file,
  ];
}

/** More than anybody's table holds, and more than fields on a page can be made for, in MB. */
const largestFile = 5;

async function openChosen(file: File, events: ToolEvents): Promise<void> {
  const read = await readTextFile(file, largestFile);
  if (read.ok) events.open(read.text, read.name);
  else events.refuse(`${read.words} The table stays as it was.`);
}
