import { type Answer, answersOf, stepsBetween } from "../../plans/index.ts";
import type { CellId, Entered } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { SideRoom, type SideRun } from "../side-room.ts";

/** What a plan comes to, as far as is known. */
export interface PlanResult {
  readonly answers: ReadonlyMap<CellId, Answer>;
  readonly is: "waiting" | "running" | "done" | "failed";
  /** Why it failed, in words. */
  readonly why?: string;
}

export interface ToRun {
  readonly name: string;
  readonly entered: Entered;
}

export interface RunEvents {
  /** Something has come; `done` of `total` plans stand. */
  changed(done: number, total: number): void;
}

const unknown: PlanResult = { answers: new Map(), is: "waiting" };

/**
 * Works plans out one after the other in a closed room beside the page. What a plan came to before
 * stays until the new answers come; a plan that nothing has changed for is not worked out again.
 */
export class PlanRuns {
  readonly #context: Context;
  readonly #events: RunEvents;
  readonly #room: SideRoom;
  readonly #results = new Map<string, PlanResult>();
  /** What each result rests on. */
  readonly #bases = new Map<string, string>();
  /** What is entered in the open session of the room; undefined where none is open. */
  #inRoom: Entered | undefined;
  #setting = "";
  #documents = 0;
  #run = 0;
  #stopped = false;

  constructor(context: Context, events: RunEvents) {
    this.#context = context;
    this.#events = events;
    this.#room = new SideRoom(context.options);
  }

  result(name: string): PlanResult {
    return this.#results.get(name) ?? unknown;
  }

  /** The reader stopped it before its end. */
  get stopped(): boolean {
    return this.#stopped;
  }

  /** Formulas or tables of the documents are others now. */
  documentsChanged(): void {
    this.#documents += 1;
  }

  renamed(from: string, to: string): void {
    for (const map of [this.#results, this.#bases] as Map<string, unknown>[]) {
      const held = map.get(from);
      map.delete(from);
      if (held !== undefined) map.set(to, held);
    }
  }

  /** Works out all of these whose answers do not stand; overtakes what runs. */
  async run(plans: readonly ToRun[]): Promise<void> {
    this.#run += 1;
    this.#stopped = false;
    const run = this.#run;
    const setting = `${this.#documents} ${this.#context.driver.units}`;
    if (setting !== this.#setting) this.#inRoom = undefined;
    this.#setting = setting;
    const basisOf = ({ entered }: ToRun) => `${setting} ${JSON.stringify(entered)}`;
    const left = plans.filter((plan) => this.#bases.get(plan.name) !== basisOf(plan));
    const total = left.length;
    for (const { name } of left) this.#set(name, { is: "waiting" });
    this.#events.changed(0, total);
    for (const [done, plan] of left.entries()) {
      await this.#one(plan, run, () => this.#events.changed(done, total));
      if (run !== this.#run) return;
      this.#bases.set(plan.name, basisOf(plan));
      this.#events.changed(done + 1, total);
    }
  }

  /** Ends what runs; what has not been worked out says so. */
  stop(): void {
    this.#run += 1;
    this.#stopped = true;
    this.#inRoom = undefined;
    this.#room.end();
    for (const [name, { is }] of this.#results)
      if (is === "waiting" || is === "running")
        this.#set(name, { is: "failed", why: "it was stopped" });
    this.#events.changed(0, 0);
  }

  remove(): void {
    this.#run += 1;
    this.#room.remove();
  }

  async #one({ name, entered }: ToRun, run: number, told: () => void): Promise<void> {
    this.#set(name, { is: "running" });
    told();
    const heard = ({ states }: SideRun) => {
      if (run !== this.#run) return;
      // Cells not heard of yet keep what they said before.
      const answers = new Map([...this.result(name).answers, ...answersOf(states.values())]);
      this.#set(name, { answers });
      told();
    };
    try {
      const { states } = await this.#begin(entered, heard);
      if (run !== this.#run) return;
      this.#set(name, { answers: answersOf(states.values()), is: "done" });
    } catch (error) {
      if (run !== this.#run) return;
      // A room that broke holds nothing: the next plan begins a new one.
      this.#inRoom = undefined;
      const why = error instanceof Error ? error.message : String(error);
      this.#set(name, { is: "failed", why });
    }
  }

  #begin(entered: Entered, heard: (run: SideRun) => void): Promise<SideRun> {
    const { book, driver } = this.#context;
    const before = this.#inRoom;
    if (before === undefined) {
      const { documents, main } = book;
      const notebook = { main: main.file, documents, entered, units: driver.units };
      const opened = this.#room.open(notebook, heard);
      // Overtaken before it stood, the room is opened anew.
      return opened.then((run) => {
        this.#inRoom = entered;
        return run;
      });
    }
    this.#inRoom = entered;
    const { changes, reset } = stepsBetween(before, entered);
    return this.#room.enter(changes, reset, heard);
  }

  #set(name: string, changes: Partial<PlanResult>): void {
    const { why: _, ...rest } = this.result(name);
    this.#results.set(name, { ...rest, ...changes });
  }
}
