/** One column of a linear programme; it may take any value from zero up. */
export interface LpColumn {
  readonly cost: number;
  readonly rows: readonly number[];
  /** One number for each of `rows`. */
  readonly amounts: readonly number[];
}

/** One row: the sum over all columns is at least, at most or exactly `amount`. */
export interface LpRow {
  readonly is: "least" | "most" | "equal";
  readonly amount: number;
}

interface Own extends LpColumn {
  /** Only there to have a first solution. */
  readonly artificial: boolean;
  /** Place among the columns added; -1 for those of the rows. */
  readonly place: number;
}

const tiny = 1e-9;
const mostPivots = 20_000;

/**
 * The revised simplex method with an explicit inverse, for programmes of few rows to which columns
 * are added again and again: it goes on from the last solution. Dantzig, Linear Programming and
 * Extensions (1963).
 */
export class Simplex {
  readonly #size: number;
  readonly #signs: Float64Array;
  readonly #inverse: Float64Array;
  readonly #levels: Float64Array;
  readonly #prices: Float64Array;
  readonly #ahead: Float64Array;
  readonly #all: Own[] = [];
  readonly #basis: Own[] = [];
  readonly #inBasis = new Set<Own>();
  #added = 0;

  /** @param bigCost more than anything in a row can be worth */
  constructor(rows: readonly LpRow[], bigCost: number) {
    const size = rows.length;
    this.#size = size;
    this.#signs = Float64Array.from(rows, (row) => (row.amount < 0 ? -1 : 1));
    this.#inverse = new Float64Array(size * size);
    this.#prices = new Float64Array(size);
    this.#ahead = new Float64Array(size);
    // A hair on every row keeps the method from going round in circles.
    this.#levels = Float64Array.from(
      rows,
      (row, i) => Math.abs(row.amount) + 1e-7 * (1 + ((i * 7919) % 97) / 97),
    );
    for (const [i, row] of rows.entries()) {
      const sign = this.#signs[i] ?? 1;
      this.#inverse[i * size + i] = 1;
      const slack = row.is === "equal" ? 0 : row.is === "most" ? sign : -sign;
      if (slack !== 0) this.#own({ cost: 0, rows: [i], amounts: [slack] }, false, -1);
      if (slack === 1) this.#enterFirst(this.#all[this.#all.length - 1] as Own);
      else this.#enterFirst(this.#own({ cost: bigCost, rows: [i], amounts: [1] }, true, -1));
    }
    this.#countPrices();
  }

  #own(column: LpColumn, artificial: boolean, place: number): Own {
    const own = { ...column, artificial, place };
    if (!artificial) this.#all.push(own);
    return own;
  }

  #enterFirst(own: Own): void {
    this.#basis.push(own);
    this.#inBasis.add(own);
  }

  /** Adds a column; the next `optimise` counts it in. */
  add(column: LpColumn): void {
    const amounts = column.amounts.map((amount, k) => amount * this.#signOf(column.rows[k]));
    this.#own({ ...column, amounts }, false, this.#added++);
  }

  #signOf(row: number | undefined): number {
    return this.#signs[row ?? 0] ?? 1;
  }

  #countPrices(): void {
    const size = this.#size;
    const prices = this.#prices;
    prices.fill(0);
    for (let i = 0; i < size; i++) {
      const cost = this.#basis[i]?.cost ?? 0;
      if (cost === 0) continue;
      const offset = i * size;
      for (let j = 0; j < size; j++) {
        prices[j] = (prices[j] ?? 0) + cost * (this.#inverse[offset + j] ?? 0);
      }
    }
  }

  #reduced(column: Own): number {
    let value = column.cost;
    const { rows, amounts } = column;
    for (let k = 0; k < rows.length; k++) {
      value -= (this.#prices[rows[k] as number] as number) * (amounts[k] as number);
    }
    return value;
  }

  #mostPromising(): Own | undefined {
    let best: Own | undefined;
    let least = 0;
    for (const column of this.#all) {
      const reduced = this.#reduced(column);
      if (reduced >= least) continue;
      if (reduced >= -tiny * Math.max(1, Math.abs(column.cost))) continue;
      if (this.#inBasis.has(column)) continue;
      best = column;
      least = reduced;
    }
    return best;
  }

  /** Goes on to the least cost; false where it did not get there, or there is no end to it. */
  optimise(): boolean {
    for (let pivot = 0; pivot < mostPivots; pivot++) {
      if (pivot % 50 === 0) this.#countPrices();
      const column = this.#mostPromising();
      if (!column) {
        if (pivot % 50 === 0) return true;
        this.#countPrices();
        if (!this.#mostPromising()) return true;
        continue;
      }
      if (!this.#enter(column)) return false;
    }
    return false;
  }

  #enter(column: Own): boolean {
    const size = this.#size;
    const inverse = this.#inverse;
    const ahead = this.#ahead;
    ahead.fill(0);
    for (let k = 0; k < column.rows.length; k++) {
      const row = column.rows[k] as number;
      const amount = column.amounts[k] as number;
      for (let i = 0; i < size; i++) {
        ahead[i] = (ahead[i] as number) + (inverse[i * size + row] as number) * amount;
      }
    }
    const leaving = this.#leaving();
    if (leaving < 0) return false;
    this.#pivot(column, leaving);
    return true;
  }

  #leaving(): number {
    let at = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#size; i++) {
      const step = this.#ahead[i] as number;
      if (step <= tiny) continue;
      const ratio = (this.#levels[i] as number) / step;
      const closer = ratio < least - 1e-12;
      if (!closer && !(ratio < least + 1e-12 && step > (this.#ahead[at] as number))) continue;
      least = ratio;
      at = i;
    }
    return at;
  }

  #pivot(column: Own, leaving: number): void {
    const size = this.#size;
    const inverse = this.#inverse;
    const reduced = this.#reduced(column);
    const pivot = this.#ahead[leaving] as number;
    const own = leaving * size;
    for (let j = 0; j < size; j++) inverse[own + j] = (inverse[own + j] as number) / pivot;
    const level = (this.#levels[leaving] as number) / pivot;
    this.#levels[leaving] = level;
    for (let i = 0; i < size; i++) {
      const factor = this.#ahead[i] as number;
      if (i === leaving || factor === 0) continue;
      const offset = i * size;
      for (let j = 0; j < size; j++) {
        inverse[offset + j] =
          (inverse[offset + j] as number) - factor * (inverse[own + j] as number);
      }
      const next = (this.#levels[i] as number) - factor * level;
      this.#levels[i] = next < 0 && next > -tiny ? 0 : next;
    }
    for (let j = 0; j < size; j++) {
      this.#prices[j] = (this.#prices[j] as number) + reduced * (inverse[own + j] as number);
    }
    this.#inBasis.delete(this.#basis[leaving] as Own);
    this.#basis[leaving] = column;
    this.#inBasis.add(column);
  }

  /** What one more unit in each row costs. */
  rowWorth(): number[] {
    return Array.from(this.#prices, (price, i) => price * this.#signOf(i));
  }

  worthOf(row: number): number {
    return (this.#prices[row] as number) * this.#signOf(row);
  }

  /** How much of each added column is in the solution, in the order they were added. */
  shares(): number[] {
    const shares = new Array<number>(this.#added).fill(0);
    for (const [i, column] of this.#basis.entries()) {
      if (column.place >= 0) shares[column.place] = Math.max(0, this.#levels[i] as number);
    }
    return shares;
  }

  /** Whether the rows can be met at all with the columns there are. */
  isFeasible(): boolean {
    return this.#basis.every(
      (column, i) => !column.artificial || (this.#levels[i] as number) < 1e-5,
    );
  }

  cost(): number {
    return this.#basis.reduce((sum, { cost }, i) => sum + cost * (this.#levels[i] as number), 0);
  }
}
