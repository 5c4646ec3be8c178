/** One column of an integer programme: a decision, what it costs and the rows it counts in. */
export interface ProgramColumn {
  readonly cost: number;
  /** Largest value; `Infinity` where there is none. The least is 0. */
  readonly most: number;
  readonly rows: readonly number[];
  /** One number for each of `rows`. */
  readonly amounts: readonly number[];
}

/** One row: the sum over all columns lies between these; either may be infinite. */
export interface ProgramRow {
  readonly least: number;
  readonly most: number;
}

/** A linear programme in which the sum of costs is to be least. */
export interface IntegerProgram {
  readonly columns: readonly ProgramColumn[];
  readonly rows: readonly ProgramRow[];
  /** Whether every column must be a whole number; false gives the values of the rows as well. */
  readonly whole: boolean;
}

/** When a solver may stop. */
export interface SolveLimits {
  /** Seconds of running. Default: no limit. */
  readonly seconds?: number;
  /** A result this close to the least, in units of cost, counts as the least. Default 0. */
  readonly gap?: number;
  /** Values of the columns of a known solution to start from. */
  readonly start?: readonly number[];
}

/** What a solver found. */
export interface ProgramSolution {
  /** `stopped`: out of time; `values` may then be a solution that is not proven, or empty. */
  readonly state: "optimal" | "infeasible" | "stopped";
  /** One for each column; empty when none was found. */
  readonly values: readonly number[];
  /** No solution costs less than this; `-Infinity` where nothing is known. */
  readonly bound: number;
  /** For a programme without whole columns: what one more unit in each row costs. */
  readonly rowWorth: readonly number[];
}

/**
 * A general-purpose solver of integer programmes, handed in by the caller: the library has none of
 * its own and imports none. It must give the same answer whenever it gets the same programme.
 */
export type Solve = (program: IntegerProgram, limits: SolveLimits) => Promise<ProgramSolution>;
