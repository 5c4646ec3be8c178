/**
 * One call of long work: each better result so far, then the final one. Of results that come faster
 * than they are asked for only the newest counts.
 */
export class Call {
  /** The final result. */
  readonly result: Promise<unknown>;
  #best: { readonly value: unknown } | undefined;
  #count = 0;
  #over = false;
  #wake: () => void = () => {};

  /** @param work begins the work, and gives a promise of the final result */
  constructor(work: (call: Call) => Promise<unknown>) {
    this.result = work(this).finally(() => {
      this.#over = true;
    });
    // Whoever asked hears of a failure; that nobody did is no error.
    this.result.catch(() => undefined);
  }

  /** Takes a better result than those before. What comes after the end is too late. */
  improved(value: unknown): void {
    if (this.#over) return;
    this.#best = { value };
    this.#count += 1;
    this.#wake();
  }

  /** The best result so far; undefined where there is none yet. */
  get best(): { readonly value: unknown } | undefined {
    return this.#best;
  }

  /** How many results there were before the final one. */
  get count(): number {
    return this.#count;
  }

  get over(): boolean {
    return this.#over;
  }

  /** Settles when there is a result newer than the one counted so; fails as the work does. */
  async newerThan(count: number): Promise<void> {
    if (this.#over || this.#count > count) return;
    const better = new Promise<void>((wake) => {
      this.#wake = wake;
    });
    await Promise.race([better, this.result]);
  }
}
