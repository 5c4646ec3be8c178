import { answerOf, needsLongWork, type OwnRange } from "../../plans/index.ts";
import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { dayInWords } from "../days.ts";
import { button, el } from "../dom.ts";
import { BarsView } from "./bars.ts";
import { type FullView, openFullView } from "./full-view.ts";
import { effectBars, effectsOf, type Found } from "./matters-effects.ts";
import { MattersRun, type MattersState } from "./matters-run.ts";
import { mattersTable } from "./matters-table.ts";
import { loadRemembered, type Remembered, remember } from "./remembered.ts";
import { chooser, drawOnce } from "./sheet-controls.ts";
import { titlesOf } from "./titles.ts";
import { watchBook } from "./watch-book.ts";
import { timeInWords } from "./words.ts";

/** Opens the sheet that says which entries move an answer most. */
export async function openMattersSheet(context: Context): Promise<void> {
  const { storage } = context.options;
  const remembered = await loadRemembered(storage, context.book.main.file);
  new MattersSheet(context, remembered);
}

const shares = {
  "0.1": "10 % under and over",
  "0.2": "20 % under and over",
  "0.5": "50 % under and over",
};
type Share = keyof typeof shares;

class MattersSheet {
  readonly #context: Context;
  readonly #view: FullView;
  readonly #run: MattersRun;
  readonly #bars = new BarsView();
  readonly #controls = el("div", { class: "sheetcontrols" });
  readonly #acts = el("p", { class: "acts sheetacts" });
  readonly #tables = el("div", { class: "sheetpart" });
  readonly #unwatch: () => void;
  #remembered: Remembered;
  #share: Share = "0.2";
  #tenth = -1;

  constructor(context: Context, remembered: Remembered) {
    this.#context = context;
    this.#remembered = remembered;
    this.#view = openFullView(context, {
      title: "What matters most",
      of: `${context.book.main.title}, ${dayInWords(context.today)}`,
      acts: [button("Print this sheet", () => print())],
      closed: () => {
        this.#unwatch();
        this.#run.remove();
      },
    });
    this.#run = new MattersRun(context, () => this.#draw());
    this.#view.body.append(
      this.#controls,
      this.#acts,
      this.#bars.element,
      this.#tables,
      el("p", { class: "holds" }, about),
    );
    this.#unwatch = watchBook(context, ({ documents, entered, units }) => {
      if (documents || entered || units) this.#open();
      this.#draw();
    });
    this.#draw();
    this.#open();
  }

  /** Answers that have a size, the pinned ones first. */
  #answers(): readonly CellId[] {
    const { book } = this.#context;
    const pinned = book.pinned();
    const others = [...book.outline.keys()].filter((id) => !pinned.includes(id));
    return [...pinned, ...others].filter((id) => {
      const answer = answerOf(book.states.get(id));
      return answer?.is === "figure" && answer.measure !== undefined;
    });
  }

  #answer(): CellId | undefined {
    const all = this.#answers();
    const { answer } = this.#remembered;
    return answer !== undefined && all.includes(answer) ? answer : all[0];
  }

  #open(): void {
    const answer = this.#answer();
    this.#tenth = -1;
    if (answer !== undefined) void this.#run.open(this.#asked(answer));
  }

  #asked(answer: CellId) {
    return { answer, share: Number(this.#share), ranges: this.#remembered.ranges };
  }

  readonly #draw = (): void => {
    const { state } = this.#run;
    const answer = this.#answer();
    this.#drawControls(answer);
    this.#drawActs(state);
    this.#tell(state, answer);
    if (answer === undefined) return;
    const found = effectsOf(this.#context, state);
    const title = titlesOf(this.#context.book)(answer);
    const bars = effectBars(this.#context, title, found);
    this.#bars.element.hidden = bars === undefined;
    this.#bars.show(bars);
    this.#drawTables(state, found);
  };

  #drawControls(answer: CellId | undefined): void {
    const { book } = this.#context;
    const titleOf = titlesOf(book);
    const options = this.#answers().map((value) => ({
      value,
      words: `${titleOf(value)}${needsLongWork(value, book.outline) ? " (takes long work)" : ""}`,
    }));
    drawOnce(this.#controls, [options, answer, this.#share], () => [
      chooser("Answer", options, {
        chosen: answer,
        choose: (id) => {
          this.#remember({ answer: id });
          this.#open();
        },
      }),
      chooser(
        "Each entry goes",
        (Object.keys(shares) as Share[]).map((value) => ({ value, words: shares[value] })),
        {
          chosen: this.#share,
          choose: (share) => {
            this.#share = share;
            this.#ranges();
          },
        },
      ),
    ]);
  }

  #drawActs({ is, done, total, left = 0 }: MattersState): void {
    const words =
      is === "ready"
        ? `Go on: ${total - done} more, about ${timeInWords(left)}`
        : is === "stopped"
          ? "Go on"
          : is === "running"
            ? "Stop"
            : is === "failed"
              ? "Try again"
              : "";
    drawOnce(this.#acts, [words], () =>
      words === ""
        ? []
        : [
            button(words, () => {
              if (is === "running") this.#run.stop();
              else if (is === "failed") this.#open();
              else void this.#run.begin();
            }),
          ],
    );
  }

  /** What goes on, in words; said at the start, at each tenth and at the end. */
  #tell(state: MattersState, answer: CellId | undefined): void {
    const { is, done, total, left = 0 } = state;
    const standing =
      answer === undefined
        ? "This notebook has no answer with a size yet."
        : is === "failed"
          ? `It could not be worked out: ${state.why ?? ""}`
          : is === "opening"
            ? "Opening the notebook beside the page."
            : total === 0
              ? "No entry feeds this answer."
              : is === "done"
                ? `All ${total} are tried.`
                : undefined;
    const rest = left > 2 && is === "running" ? `, about ${timeInWords(left)} more` : "";
    const tenth = total === 0 ? 0 : Math.floor((10 * done) / total);
    const quiet = is === "opening" || (standing === undefined && tenth === this.#tenth);
    this.#view.show(standing ?? `${done} of ${total} tried${rest}.`, quiet);
    this.#tenth = tenth;
  }

  #drawTables(state: MattersState, found: Found): void {
    const held = document.activeElement;
    // What is being typed is not taken from under the reader's hands.
    if (held instanceof HTMLInputElement && this.#tables.contains(held)) {
      this.#later(held);
      return;
    }
    const byId = new Map(state.varied.map((varied) => [varied.id, varied]));
    const moving = found.moving.flatMap(({ id }) => byId.get(id) ?? []);
    const still = found.still.flatMap(({ id }) => byId.get(id) ?? []);
    const others = state.varied.filter(({ id }) => !found.byEntry.has(id));
    const options = {
      context: this.#context,
      state,
      title: titlesOf(this.#context.book),
      effect: (id: CellId) => found.byEntry.get(id),
      bound: (id: CellId, range: OwnRange) => this.#bound(id, range),
    };
    const waiting = state.is === "done" ? "Not varied" : "Not tried yet, or not varied";
    const parts = [
      ...(moving.length > 0
        ? [mattersTable(moving, "Entries that move it, the largest effect first", options)]
        : []),
      ...folded(still, "Entries that do not move it", (rows, words) =>
        mattersTable(rows, words, options),
      ),
      ...folded(others, waiting, (rows, words) => mattersTable(rows, words, options)),
    ];
    const open = new Set(
      [...this.#tables.querySelectorAll<HTMLDetailsElement>("details[open]")].map(
        ({ dataset }) => dataset.what,
      ),
    );
    for (const part of parts)
      if (part instanceof HTMLDetailsElement) part.open = open.has(part.dataset.what);
    const key = held?.closest(".plansheet") ? held.getAttribute("data-key") : null;
    this.#tables.replaceChildren(...parts);
    if (key) this.#tables.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus();
  }

  #later(held: HTMLInputElement): void {
    if (held.dataset.waits === "") return;
    held.dataset.waits = "";
    held.addEventListener("blur", () => setTimeout(this.#draw), { once: true });
  }

  #bound(id: CellId, range: OwnRange): void {
    const { ranges } = this.#remembered;
    this.#remember({ ranges: { ...ranges, [id]: { ...ranges[id], ...range } } });
    this.#ranges();
  }

  #ranges(): void {
    const answer = this.#answer();
    if (answer !== undefined) void this.#run.ranges(this.#asked(answer));
  }

  #remember(changes: Partial<Remembered>): void {
    this.#remembered = { ...this.#remembered, ...changes };
    const { storage } = this.#context.options;
    void remember(storage, this.#context.book.main.file, changes);
  }
}

const about =
  "One entry at a time goes from its low to its high; all others stay as they are. A low and a high may be written over, with a unit as in the entry; emptied, they are the usual ones again. Nothing you have entered is changed by this.";

function folded<T>(
  rows: readonly T[],
  words: string,
  make: (rows: readonly T[], words: string) => HTMLElement,
): HTMLElement[] {
  if (rows.length === 0) return [];
  return [
    el(
      "details",
      { class: "nomove", "data-what": words },
      el("summary", {}, `${words} (${rows.length})`),
      make(rows, words),
    ),
  ];
}
