import type { StateReason } from "./record-types.ts";
import { type NewState, noteState } from "./states.ts";
import type { Storage } from "./storage.ts";
import { notKept } from "./words.ts";

/** While changes follow each other within so long (milliseconds), one state stands before them all. */
const pause = 10_000;

/** What a state is taken of: called only where one is taken. */
export type TakeState = () => Omit<NewState, "at" | "why">;

/**
 * Takes a notebook's states before it changes: before the first change after a pause, and always
 * before what changes much at once.
 */
export class StateKeeper {
  readonly #storage: Storage;
  readonly #trouble: (words: string) => void;
  #last = Number.NEGATIVE_INFINITY;
  #waiting: NewState[] = [];
  #writing: Promise<void> | undefined;

  /** @param trouble is told, in words for the reader, where a state could not be kept */
  constructor(storage: Storage, trouble: (words: string) => void) {
    this.#storage = storage;
    this.#trouble = trouble;
  }

  /**
   * To be called before each change, with what it is about to change. The promise ends when the
   * state is kept or it was said that it can't be; nobody needs to wait for it.
   *
   * @param at the ISO instant now
   */
  note(take: TakeState, { at, why }: { at: string; why: StateReason }): Promise<void> {
    const now = Date.parse(at);
    const goesOn = (why === "typing" || why === "editing") && now - this.#last < pause;
    this.#last = now;
    if (!goesOn) this.#waiting.push({ ...structuredClone(take()), at, why });
    return this.flush();
  }

  /** The promise ends when all states so far are kept, or it was said that they can't be. */
  flush(): Promise<void> {
    this.#writing ??= this.#write().finally(() => {
      this.#writing = undefined;
    });
    return this.#writing;
  }

  async #write(): Promise<void> {
    for (let state = this.#waiting[0]; state !== undefined; state = this.#waiting[0]) {
      try {
        await noteState(this.#storage, state);
        this.#waiting.shift();
      } catch (error) {
        // It is tried again with the next; more than a few would only eat memory.
        this.#waiting = this.#waiting.slice(-5);
        this.#trouble(notKept(error));
        return;
      }
    }
  }
}
