import type { CellId, DocumentProblem, FromRoom, ToRoom, Units } from "../types/index.ts";
import type { Book, EnteredValue } from "./book.ts";
import { History } from "./changes.ts";
import { Moves } from "./moves.ts";
import { Restarts } from "./restarts.ts";
import type { RoomLink } from "./room-link.ts";
import { Turns } from "./turns.ts";
import { Watchdog } from "./watchdog.ts";

export interface DriverEvents {
  outlined(): void;
  /** These cells have new values, or their "was" has changed. */
  changed(cells: ReadonlySet<CellId>): void;
  settled(): void;
  progress(cell: CellId, words: string, fraction: number | undefined): void;
  /** The room gives no sign, or does again; `cell` is what it was starting last. */
  silent(cell: CellId | undefined, silent: boolean): void;
  /** The room was ended; where it is not `over`, it was started again without the cell. */
  ended(end: RoomEnd): void;
}

/** Why a room was ended: by the reader, after 15 s without a sign, by the browser, or because it broke. */
export interface RoomEnd {
  readonly why: "stopped" | "no sign" | "died" | "broke";
  readonly cell: CellId | undefined;
  /** Nothing runs until the reader starts it again. */
  readonly over: boolean;
  readonly message?: string;
}

export interface DriverOptions {
  readonly book: Book;
  readonly today: string;
  readonly extras: readonly string[];
  readonly events: DriverEvents;
  units: Units;
  keep(id: CellId, value: EnteredValue | undefined): void;
}

/** Drives the closed room for one open notebook: what is entered goes in, what changed comes out. */
export class Driver {
  readonly history = new History();
  readonly moves: Moves;
  /** Cells that never came to an end and were stopped. */
  readonly stopped = new Set<CellId>();
  units: Units;
  /** What is wrong with the documents and belongs to no cell. */
  documentProblems: readonly DocumentProblem[] = [];
  private readonly options: DriverOptions;
  private link: RoomLink | undefined;
  private session = 0;
  private starting: CellId | undefined;
  private readonly turns: Turns;
  private readonly watchdog: Watchdog;
  private readonly restarts = new Restarts();

  constructor(options: DriverOptions) {
    this.options = options;
    this.units = options.units;
    this.moves = new Moves(options.book.states);
    this.turns = new Turns((message) => this.link?.send(message));
    this.watchdog = new Watchdog({
      ping: () => this.link?.send({ kind: "ping" }),
      silent: () => options.events.silent(this.starting, true),
      back: () => options.events.silent(undefined, false),
      gone: () => void this.restart("no sign"),
      now: () => performance.now(),
      every(milliseconds, tick) {
        const timer = setInterval(tick, milliseconds);
        return () => clearInterval(timer);
      },
    });
  }

  /** Opens the notebook in a new room. */
  async open(link: RoomLink): Promise<void> {
    this.link = link;
    this.session += 1;
    this.starting = undefined;
    this.turns.restart(this.session);
    const { book, today, extras } = this.options;
    const opening: ToRoom = {
      kind: "open",
      session: this.session,
      main: book.main.file,
      documents: Object.fromEntries(book.documents),
      entered: Object.fromEntries(book.entered),
      surroundings: { units: this.units, today },
      stopped: [...this.stopped],
    };
    await link.start(extras, [opening]);
    this.watchdog.start();
  }

  /** Enters new texts or rows; undefined puts a cell's default back. */
  enter(values: ReadonlyMap<CellId, EnteredValue | undefined>): void {
    const { book } = this.options;
    const before = new Map([...values.keys()].map((id) => [id, book.entered.get(id)] as const));
    const begins = this.history.note(before, performance.now());
    this.put(values, begins);
  }

  /** Undoes the last change; gives the cells it put back. */
  undo(): readonly CellId[] {
    const change = this.history.take();
    if (!change) return [];
    this.put(change.before, true);
    return [...change.before.keys()];
  }

  setUnits(units: Units): void {
    this.units = units;
    this.moves.clear();
    this.turns.units(units);
  }

  /** Ends the room though it is busy, marks the cell it was at, and starts again without it. */
  async stop(): Promise<void> {
    await this.restart("stopped");
  }

  /** The browser ended the room, as it does where memory runs out. */
  died(): void {
    void this.restart("died");
  }

  /** Starts the room again after it was ended for good. */
  async startAgain(link: RoomLink): Promise<void> {
    this.restarts.clear();
    await this.open(link);
  }

  /** Starts a stopped cell once more. */
  async tryAgain(id: CellId): Promise<void> {
    this.stopped.delete(id);
    this.restarts.clear();
    if (this.link) await this.open(this.link);
  }

  /** Ends all long work under way; what it had found by then stands. */
  stopLongWork(): void {
    this.link?.stopLongWork();
  }

  /** Starts the long work of a cell once more, after it was stopped. */
  workAgain(id: CellId): void {
    this.turns.again(id);
  }

  received(message: FromRoom): void {
    this.watchdog.sign();
    if ("session" in message && message.session !== this.session) return;
    const { book, events } = this.options;
    if (message.kind === "outline") {
      book.outline.clear();
      for (const cell of message.cells) book.outline.set(cell.id, cell);
      this.documentProblems = message.problems ?? [];
      events.outlined();
    } else if (message.kind === "starting") this.starting = message.cell;
    else if (message.kind === "values") {
      for (const state of message.cells) book.states.set(state.id, state);
      events.changed(new Set(message.cells.map(({ id }) => id)));
    } else if (message.kind === "progress")
      events.progress(message.cell, message.words, message.fraction);
    else if (message.kind === "settled") {
      book.working = new Set(message.working);
      this.starting = undefined;
      this.turns.settled(message.turn);
      events.settled();
    }
  }

  /** The room's script broke or it flooded the page. */
  broke(why: string): void {
    this.watchdog.stop();
    const { starting: cell } = this;
    this.options.events.ended({ why: "broke", cell, over: true, message: why });
  }

  private put(values: ReadonlyMap<CellId, EnteredValue | undefined>, begins: boolean): void {
    const { book, keep, events } = this.options;
    if (begins) {
      const moved = this.moves.moved();
      this.moves.begin();
      if (moved.length > 0) events.changed(new Set(moved));
    }
    for (const [id, value] of values) {
      if (value === undefined) book.entered.delete(id);
      else book.entered.set(id, value);
      keep(id, value);
    }
    this.turns.enter(values);
  }

  private async restart(why: "stopped" | "no sign" | "died"): Promise<void> {
    const cell = this.suspect();
    this.watchdog.stop();
    this.link?.end();
    if (cell !== undefined) this.stopped.add(cell);
    const over = !this.restarts.admits(cell !== undefined);
    this.options.events.ended({ why, cell, over });
    if (this.link && !over) await this.open(this.link);
  }

  /** The cell the room hangs at, where that is known: not one that has been stopped before. */
  private suspect(): CellId | undefined {
    const { working } = this.options.book;
    const [only] = working.size === 1 ? working : [];
    const cell = this.starting ?? only;
    return cell === undefined || this.stopped.has(cell) ? undefined : cell;
  }
}
