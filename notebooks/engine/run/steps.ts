import type { Call } from "./call.ts";

/** Work that is done within so many milliseconds has no steps: what rests on it is spared them. */
const patience = 120;

/** The least time between two results of one call, in milliseconds. */
const least = 250;

/** What working out everything that rests on a result may take of the time, at most: a fourth. */
const rest = 3;

/**
 * The results of a call as a cell's values, one after another, no faster than what rests on them
 * can be worked out. The final one waits for nobody.
 */
export class Steps {
  readonly #call: Call;
  readonly #wait: (ms: number) => Promise<void>;
  #seen = 0;
  #gave = 0;
  #ended = false;

  constructor(call: Call, wait: (ms: number) => Promise<void>) {
    this.#call = call;
    this.#wait = wait;
  }

  /** Whether the final result, or the failure in its place, has been given. */
  get ended(): boolean {
    return this.#ended;
  }

  async next(): Promise<IteratorResult<unknown>> {
    if (this.#ended) return { done: true, value: undefined };
    try {
      await Promise.race([this.#seen > 0 ? this.#pace() : this.#wait(patience), this.#call.result]);
      await this.#call.newerThan(this.#seen);
      const value = await this.#newest();
      this.#gave = Date.now();
      return { done: false, value };
    } catch (error) {
      this.#ended = true;
      throw error;
    }
  }

  return(): void {
    this.#ended = true;
  }

  #newest(): unknown {
    const { over, best, count, result } = this.#call;
    this.#seen = count;
    if (!over && best !== undefined) return best.value;
    this.#ended = true;
    return result;
  }

  /** What rests on the last result is worked out before a timer can ring, so its time is known. */
  async #pace(): Promise<void> {
    await this.#wait(0);
    await this.#wait(Math.max(least, rest * (Date.now() - this.#gave)));
  }
}
