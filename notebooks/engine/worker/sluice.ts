/** How much of the time sending may take: a tenth. */
const share = 10;

/**
 * Lets values out no faster than whoever takes them can follow, and than they can be sent. Of those
 * held back meanwhile only the newest counts.
 */
export class Sluice<T> {
  readonly #send: (value: T) => void;
  readonly #now: () => number;
  readonly #least: number;
  #held: { readonly value: T } | undefined;
  #from = Number.NEGATIVE_INFINITY;

  /** @param least the least time between two values, in milliseconds */
  constructor(send: (value: T) => void, { least, now }: { least: number; now: () => number }) {
    this.#send = send;
    this.#least = least;
    this.#now = now;
  }

  offer(value: T): void {
    this.#held = { value };
    this.look();
  }

  /** Sends what is held back, where its time has come. */
  look(): void {
    if (this.#now() >= this.#from) this.flush();
  }

  /** Sends what is held back. */
  flush(): void {
    const held = this.#held;
    if (held === undefined) return;
    this.#held = undefined;
    const began = this.#now();
    this.#send(held.value);
    const ended = this.#now();
    this.#from = ended + Math.max(this.#least, share * (ended - began));
  }
}
