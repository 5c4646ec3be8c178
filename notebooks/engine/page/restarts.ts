/** How often a room is started again by itself though nobody knows which cell it hung at. */
const mostUnnamed = 1;

/**
 * Whether a room that had to be ended is started again by itself. Where the cell is known it stays
 * stopped, so the rest can go on; where none is known the same would happen again and again.
 */
export class Restarts {
  #unnamed = 0;

  admits(cellKnown: boolean): boolean {
    if (!cellKnown) this.#unnamed += 1;
    return this.#unnamed <= mostUnnamed;
  }

  /** The reader starts it, or has changed a formula: it is tried anew. */
  clear(): void {
    this.#unnamed = 0;
  }
}
