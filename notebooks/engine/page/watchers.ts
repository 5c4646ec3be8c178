/** Those who want to know that something may have changed. */
export class Watchers {
  readonly #watching = new Set<() => void>();

  /** Gives a function that ends the watching. */
  add(changed: () => void): () => void {
    this.#watching.add(changed);
    return () => void this.#watching.delete(changed);
  }

  tell(): void {
    for (const changed of this.#watching) changed();
  }
}
