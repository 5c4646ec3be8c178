import type {
  CellId,
  CellState,
  Entered,
  FromRoom,
  Notebook,
  OutlineCell,
  ToRoom,
  Units,
} from "../types/index.ts";
import { wordsNamed } from "./book.ts";
import type { PageOptions } from "./options.ts";
import { RoomLink } from "./room-link.ts";

/** A notebook to be worked out beside the page: its documents with these entries. */
export interface SideNotebook {
  readonly main: string;
  readonly documents: ReadonlyMap<string, Notebook>;
  readonly entered: Entered;
  readonly units: Units;
}

/** What came of it: every cell's state when nothing was being worked out any more. */
export interface SideRun {
  readonly outline: readonly OutlineCell[];
  readonly states: ReadonlyMap<CellId, CellState>;
}

/** A room that gives no sign for so long (milliseconds) is ended. */
const longestSilence = 20_000;

/**
 * A second closed room, in a frame of its own, for what is worked out beside the page: other plans
 * with the same cells, examples of the reference. One run at a time; a new one overtakes the last.
 */
export class SideRoom {
  readonly #options: Pick<PageOptions, "code" | "engineUrl" | "today">;
  #link: RoomLink | undefined;
  #session = 0;
  #turn = 0;
  #outline: readonly OutlineCell[] = [];
  #states = new Map<CellId, CellState>();
  #run: Waiting | undefined;

  constructor(options: Pick<PageOptions, "code" | "engineUrl" | "today">) {
    this.#options = options;
  }

  /**
   * Opens a notebook and gives what came of it, long work included. Rejects where the room breaks,
   * gives no sign for 20 s, or another run overtakes this one.
   *
   * @param heard is told what has come so far, each time something has
   * @param enough whether what is wanted stands, though these cells still wait for long work
   */
  open(notebook: SideNotebook, heard?: (run: SideRun) => void, enough?: Enough): Promise<SideRun> {
    const { main, documents, entered, units } = notebook;
    this.#session += 1;
    this.#turn = 0;
    this.#outline = [];
    this.#states = new Map();
    const extras = wordsNamed(Object.keys(this.#options.code.extras), documents);
    const opening: ToRoom = {
      kind: "open",
      session: this.#session,
      main,
      documents: Object.fromEntries(documents),
      entered,
      surroundings: { units, today: this.#options.today },
    };
    return this.#await({ turn: 0, heard, enough }, () => this.#linked().start(extras, [opening]));
  }

  /** Enters other texts in the open notebook; `reset` names cells that get their default back. */
  enter(
    changes: Entered,
    reset: readonly CellId[] = [],
    heard?: (run: SideRun) => void,
    enough?: Enough,
  ): Promise<SideRun> {
    const session = this.#session;
    this.#turn += 1;
    if (reset.length > 0) {
      this.#linked().send({ kind: "reset", session, turn: this.#turn, cells: reset });
      this.#turn += 1;
    }
    const turn = this.#turn;
    return this.#await({ turn, heard, enough }, async () =>
      this.#linked().send({ kind: "enter", session, turn, changes }),
    );
  }

  /** Ends the long work under way; the best found by then stands, and the run ends with it. */
  stopLongWork(): void {
    this.#link?.stopLongWork();
  }

  /** Ends what runs; the next `open` starts a new room. */
  end(): void {
    this.#run?.fail(new Error("It was stopped."));
    this.#link?.end();
  }

  /** Ends what runs and takes the frame away. */
  remove(): void {
    this.end();
    this.#link?.remove();
    this.#link = undefined;
  }

  #linked(): RoomLink {
    this.#link ??= new RoomLink({
      engineUrl: this.#options.engineUrl,
      code: this.#options.code,
      received: (message) => this.#received(message),
      broke: (why) => this.#run?.fail(new Error(why)),
    });
    return this.#link;
  }

  #await(awaited: ToAwait, begin: () => Promise<void>): Promise<SideRun> {
    this.#run?.fail(new Error("Something newer overtook it."));
    return new Promise((resolve, reject) => {
      const run = new Waiting(awaited, {
        done: resolve,
        failed: reject,
        silent: () => this.#link?.end(),
      });
      this.#run = run;
      begin().catch((error: unknown) => run.fail(error));
    });
  }

  #received(message: FromRoom): void {
    if ("session" in message && message.session !== this.#session) return;
    const run = this.#run;
    run?.sign();
    if (message.kind === "outline") this.#outline = message.cells;
    if (message.kind === "values") {
      for (const state of message.cells) this.#states.set(state.id, state);
      run?.heard?.(this.#soFar());
    }
    if (message.kind === "settled" && run && message.turn >= run.turn)
      if (message.working.length === 0 || run.enough?.(message.working)) run.finish(this.#soFar());
  }

  #soFar(): SideRun {
    return { outline: this.#outline, states: new Map(this.#states) };
  }
}

type Enough = (working: readonly CellId[]) => boolean;

interface ToAwait {
  readonly turn: number;
  readonly heard: ((run: SideRun) => void) | undefined;
  readonly enough: Enough | undefined;
}

/** A run that is waited for. */
class Waiting {
  readonly turn: number;
  readonly heard: ((run: SideRun) => void) | undefined;
  readonly enough: Enough | undefined;
  readonly #ends: Ends;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #over = false;

  constructor({ turn, heard, enough }: ToAwait, ends: Ends) {
    this.turn = turn;
    this.heard = heard;
    this.enough = enough;
    this.#ends = ends;
    this.sign();
  }

  sign(): void {
    clearTimeout(this.#timer);
    if (this.#over) return;
    this.#timer = setTimeout(() => {
      this.#ends.silent();
      this.fail(new Error("It gave no sign for 20 seconds and was ended."));
    }, longestSilence);
  }

  finish(run: SideRun): void {
    this.#over = true;
    clearTimeout(this.#timer);
    this.#ends.done(run);
  }

  fail(error: unknown): void {
    this.#over = true;
    clearTimeout(this.#timer);
    this.#ends.failed(error);
  }
}

interface Ends {
  done(run: SideRun): void;
  failed(error: unknown): void;
  silent(): void;
}
