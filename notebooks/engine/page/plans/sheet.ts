import type { Plan } from "../../store/index.ts";
import { loadPlans } from "../../store/seldom.ts";
import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { dayInWords } from "../days.ts";
import { button, el } from "../dom.ts";
import { onPaper } from "../on-paper.ts";
import { answersTable } from "./answers-table.ts";
import { BarsView } from "./bars.ts";
import { columnHead, type HeadActs } from "./column-head.ts";
import { type Column, columnsOf, differencesOf } from "./columns.ts";
import { differencesTable, heldInVain } from "./differences-table.ts";
import { type FullView, openFullView } from "./full-view.ts";
import { enteredNow, keepAsPlan } from "./keep.ts";
import { drawable, planBars } from "./plan-bars.ts";
import { askRename, putPlanAway, usePlan } from "./plan-changes.ts";
import { PlanRuns } from "./plan-runs.ts";
import { loadRemembered, type Remembered, remember } from "./remembered.ts";
import { cellOptions, chooser, doer, drawOnce, either, ticks } from "./sheet-controls.ts";
import { hearOthers } from "./tell-others.ts";
import { titlesOf } from "./titles.ts";
import { watchBook } from "./watch-book.ts";
import { whatPlansHold } from "./words.ts";

/** Opens the sheet of plans in place of the notebook's page. */
export async function openPlansSheet(context: Context): Promise<void> {
  const { storage } = context.options;
  const { file } = context.book.main;
  const [{ plans, trouble }, remembered] = await Promise.all([
    loadPlans(storage, file),
    loadRemembered(storage, file),
  ]);
  const sheet = new PlansSheet(context, plans, remembered);
  if (trouble !== undefined) sheet.note(trouble);
}

/** So many columns stand side by side, what is entered now among them. */
const most = { wide: 5, phone: 3 } as const;

class PlansSheet {
  readonly #context: Context;
  readonly #view: FullView;
  readonly #runs: PlanRuns;
  readonly #phone = matchMedia("screen and (max-width: 639px)");
  readonly #bars = new BarsView();
  readonly #parts = {
    acts: el("p", { class: "acts sheetacts" }),
    controls: el("div", { class: "sheetcontrols" }),
    above: el("div", { class: "sheetcontrols" }),
    table: el("div"),
    drawnOf: el("div", { class: "drawnof" }),
    differences: el("section", { class: "sheetpart", "aria-label": "What differs" }),
  };
  #plans: readonly Plan[];
  #remembered: Remembered;
  #paper = false;
  readonly #unwatch: () => void;
  readonly #unhear: () => void;

  constructor(context: Context, plans: readonly Plan[], remembered: Remembered) {
    this.#context = context;
    this.#plans = plans;
    this.#remembered = remembered;
    const { title } = context.book.main;
    this.#view = openFullView(context, {
      title: "Plans side by side",
      of: `${title}, ${dayInWords(context.today)}`,
      acts: [
        button("Print this sheet", () => print()),
        button("Keep what is entered now", () => void this.#keep()),
      ],
      closed: () => this.#end(),
    });
    this.#runs = new PlanRuns(context, {
      changed: (done, total) => this.#goesOn(done, total),
    });
    const { acts, controls, above, table, drawnOf, differences } = this.#parts;
    this.#view.body.append(
      acts,
      controls,
      el("section", { class: "sheetpart", "aria-label": "What each comes to" }, above, table),
      el("section", { class: "sheetpart drawnpart" }, drawnOf, this.#bars.element),
      differences,
      el("p", { class: "holds" }, whatPlansHold),
    );
    this.#phone.addEventListener("change", this.#draw);
    onPaper(this.#view.element, {
      begin: () => this.#fit(true),
      end: () => this.#fit(false),
    });
    this.#unwatch = watchBook(context, ({ documents, entered, units }) => {
      if (documents) this.#runs.documentsChanged();
      if (documents || units || entered) this.#run();
      this.#draw();
    });
    this.#unhear = hearOthers(
      context,
      () => void this.#reload("Plans were changed in another tab."),
    );
    this.#draw();
    this.#run();
  }

  note(words: string): void {
    this.#view.note(words);
  }

  #end(): void {
    this.#unwatch();
    this.#unhear();
    this.#runs.remove();
    this.#phone.removeEventListener("change", this.#draw);
  }

  #fit(paper: boolean): void {
    this.#paper = paper;
    this.#draw();
  }

  #columns(): readonly Column[] {
    const shared = new Set(this.#remembered.shared);
    return columnsOf(this.#context, this.#plans, {
      shared,
      result: (name) => this.#runs.result(name),
    });
  }

  /** What is shown: what is entered now, and the plans the reader chose, or else the newest. */
  #shown(columns: readonly Column[]): readonly Column[] {
    const room = this.#room();
    const [now, ...kept] = columns;
    const names = this.#chosen();
    const shown = kept.filter(({ name }) => names.has(name)).slice(0, room - 1);
    return now === undefined ? shown : [now, ...shown];
  }

  #room(): number {
    return this.#phone.matches && !this.#paper ? most.phone : most.wide;
  }

  #chosen(): ReadonlySet<string> {
    const all = this.#plans.map(({ name }) => name);
    const chosen = this.#remembered.shown?.filter((name) => all.includes(name));
    const room = this.#room() - 1;
    return new Set(chosen?.slice(0, room) ?? all.slice(-room));
  }

  readonly #draw = (): void => {
    const columns = this.#columns();
    const shown = this.#shown(columns);
    const held = document.activeElement?.getAttribute("data-key");
    drawOnce(
      this.#parts.controls,
      [
        this.#plans.map(({ name }) => name),
        [...this.#chosen()],
        this.#room(),
        this.#sharable(),
        this.#remembered.shared,
      ],
      () => this.#controls(),
    );
    this.#drawAnswers(shown);
    this.#parts.differences.replaceChildren(
      ...differencesTable(this.#context, shown),
      ...heldInVain(this.#context, shown),
    );
    // What had focus was drawn anew; its like takes it over.
    if (held && document.activeElement?.getAttribute("data-key") !== held)
      this.#view.element.querySelector<HTMLElement>(`[data-key="${CSS.escape(held)}"]`)?.focus();
  };

  #controls(): readonly HTMLElement[] {
    const parts: HTMLElement[] = [];
    const names = this.#plans.map(({ name }) => ({ value: name, words: name }));
    if (names.length === 0)
      parts.push(
        el(
          "p",
          { class: "none" },
          "No plan has been kept yet. “Keep what is entered now” makes the first; then change what you like and keep another.",
        ),
      );
    if (names.length >= this.#room())
      parts.push(
        ticks("Plans shown", names, {
          ticked: this.#chosen(),
          most: this.#room() - 1,
          tick: (name, on) => this.#choose(name, on),
        }),
      );
    parts.push(...this.#sharing());
    return parts;
  }

  /** Tables that differ may be taken by all plans as they are now. */
  #sharing(): readonly HTMLElement[] {
    const { book } = this.#context;
    const ids = this.#sharable();
    if (ids.length === 0) return [];
    const options = ids.map((id) => ({ value: id, words: book.title(id) }));
    return [
      ticks("Tables that every plan takes as they are now, not as it holds them", options, {
        ticked: new Set(this.#remembered.shared),
        tick: (id, on) => {
          const shared = this.#remembered.shared.filter((one) => one !== id);
          this.#remember({ shared: on ? [...shared, id as CellId] : shared });
          this.#run();
        },
      }),
    ];
  }

  #sharable(): readonly CellId[] {
    const own = [enteredNow(this.#context), ...this.#plans.map(({ entered }) => entered)];
    return differencesOf(this.#context, own).tables.map(({ id }) => id);
  }

  #drawAnswers(shown: readonly Column[]): void {
    const { book } = this.#context;
    const pinned = book.pinned();
    const added = this.#remembered.rows.filter((id) => book.block(id) && !pinned.includes(id));
    const rows = [...pinned, ...added];
    const others = this.#otherRows(shown, new Set(rows));
    const title = titlesOf(book);
    const { allRows } = this.#remembered;
    drawOnce(this.#parts.above, [others, allRows, shown.length > 1], () => [
      ...(shown.length > 1
        ? [
            either("Answers", ["those that differ", "all"], {
              on: allRows,
              set: (on) => this.#remember({ allRows: on }),
            }),
          ]
        : []),
      doer("Another answer", "Add a row", cellOptions(others, title), (id) =>
        this.#remember({ rows: [...this.#remembered.rows, id] }),
      ),
    ]);
    this.#parts.table.replaceChildren(
      ...answersTable({
        columns: shown,
        rows,
        onlyDiffering: shown.length > 1 && !allRows,
        added: new Set(added),
        title,
        head: (column) => columnHead(column, this.#acts),
        takeAway: (id) =>
          this.#remember({ rows: this.#remembered.rows.filter((one) => one !== id) }),
      }),
    );
    this.#drawBars(shown, rows);
  }

  #otherRows(shown: readonly Column[], there: ReadonlySet<CellId>): readonly CellId[] {
    const ids = [...this.#context.book.outline.values()].map(({ id }) => id);
    return ids.filter(
      (id) => !there.has(id) && shown.some(({ answers }) => answers.get(id)?.is === "figure"),
    );
  }

  #drawBars(shown: readonly Column[], rows: readonly CellId[]): void {
    const { book } = this.#context;
    const able = drawable(shown, rows);
    const { drawn } = this.#remembered;
    const id = drawn !== undefined && able.includes(drawn) ? drawn : able[0];
    drawOnce(this.#parts.drawnOf, [able, id], () =>
      able.length < 2
        ? []
        : [
            chooser("Drawn", cellOptions(able, titlesOf(book)), {
              chosen: id,
              choose: (chosen) => this.#remember({ drawn: chosen }),
            }),
          ],
    );
    this.#bars.show(id === undefined ? undefined : planBars(shown, id, titlesOf(book)(id)));
    this.#bars.element.hidden = id === undefined;
  }

  #goesOn(done: number, total: number): void {
    this.#draw();
    const isRunning = done < total;
    drawOnce(this.#parts.acts, [isRunning, this.#runs.stopped], () =>
      isRunning
        ? [button("Stop", () => this.#runs.stop())]
        : this.#runs.stopped
          ? [button("Work out the rest", () => this.#run())]
          : [],
    );
    // Said at the start only: a plan a second would be chatter.
    if (isRunning)
      this.#view.show(`Working out plan ${done + 1} of ${total}.`, done > 0 || total < 2);
    else if (this.#runs.stopped) this.#view.show("Stopped.");
    else this.#view.show(total > 0 ? "All plans are worked out." : "", total < 2);
  }

  #run(): void {
    const shown = this.#chosen();
    const [, ...kept] = this.#columns();
    // Those in sight first.
    const order = [...kept].sort((a, b) => Number(shown.has(b.name)) - Number(shown.has(a.name)));
    void this.#runs.run(order.map(({ name, entered }) => ({ name, entered })));
  }

  #remember(changes: Partial<Remembered>): void {
    this.#remembered = { ...this.#remembered, ...changes };
    const { storage } = this.#context.options;
    void remember(storage, this.#context.book.main.file, changes);
    this.#draw();
  }

  #choose(name: string, on: boolean): void {
    const shown = [...this.#chosen()].filter((one) => one !== name);
    this.#remember({ shown: on ? [...shown, name] : shown });
  }

  readonly #acts: HeadActs = {
    use: (plan) => {
      const column = this.#columns().find((one) => one.plan?.name === plan.name);
      if (!column) return;
      usePlan(this.#context, column, (words, undo) => this.#view.note(words, undo));
      this.#draw();
      // The word that was chosen is gone: the plan is in use. What takes it back has focus.
      this.#view.element.querySelector<HTMLElement>(".noted button")?.focus();
    },
    rename: (plan) =>
      askRename(this.#context, plan, async (to) => {
        this.#runs.renamed(plan.name, to);
        const { shown } = this.#remembered;
        if (shown) this.#remember({ shown: shown.map((one) => (one === plan.name ? to : one)) });
        await this.#reload(`${plan.name} is called ${to} now.`);
      }),
    putAway: (plan) => {
      const order = this.#plans.map(({ name }) => name);
      const told = async (words: string, undo?: () => void) => {
        await this.#reload(words, undo);
        this.#view.element.querySelector<HTMLElement>(".noted button")?.focus();
      };
      void putPlanAway(this.#context, plan, { order, told });
    },
  };

  #keep(): Promise<void> {
    return keepAsPlan(this.#context, (name) => {
      const { shown } = this.#remembered;
      if (shown) this.#remember({ shown: [...shown, name].slice(1 - this.#room()) });
      void this.#reload(`${name} is kept.`);
    });
  }

  async #reload(words: string, undo?: () => void): Promise<void> {
    const { storage } = this.#context.options;
    const { plans, trouble } = await loadPlans(storage, this.#context.book.main.file);
    this.#plans = plans;
    this.#view.note(trouble ?? words, undo);
    this.#draw();
    this.#run();
  }
}
