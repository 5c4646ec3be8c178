/** What of an `AbortSignal` is needed to stop long work; an `AbortSignal` is one. */
export interface StopSignal {
  readonly aborted: boolean;
}

/** What long work is given so that it can be stopped and does not hold up everything else. */
export interface Pace {
  /** Gives whoever waits a turn; called some fifty times a second. Default: never. */
  readonly pause?: (() => Promise<void>) | undefined;
  readonly signal?: StopSignal | undefined;
}

// About 20 ms of the planner's work on the machine it was measured on.
const workBetween = 6e6;

/** Thrown where work was stopped from outside. */
export function stopped(): Error {
  const stop = new Error("The plan was stopped before it was ready.");
  stop.name = "AbortError";
  return stop;
}

/** Counts work, so that pauses come evenly, and stops where asked. */
export class Pacer {
  readonly #pace: Pace;
  #left = workBetween;
  /** All work so far: the planner has no clock, and the same work gives the same plan everywhere. */
  spent = 0;

  constructor(pace: Pace) {
    this.#pace = pace;
  }

  async spend(work: number): Promise<void> {
    this.spent += work;
    this.#left -= work;
    if (this.#pace.signal?.aborted) throw stopped();
    if (this.#left > 0) return;
    this.#left = workBetween;
    await this.#pace.pause?.();
    if (this.#pace.signal?.aborted) throw stopped();
  }
}
