import type { EngineProblem } from "./problem.ts";
import type { Figure, Measure } from "./shown.ts";
import type { TableText } from "./table-text.ts";

export type Units = "us" | "metric";

/** The functions that stand for operators in formulas. `===` and `!==` go through `same`. */
export interface Operators {
  plus(a: unknown, b: unknown): unknown;
  minus(a: unknown, b: unknown): unknown;
  times(a: unknown, b: unknown): unknown;
  over(a: unknown, b: unknown): unknown;
  remainder(a: unknown, b: unknown): unknown;
  power(a: unknown, b: unknown): unknown;
  negative(a: unknown): unknown;
  less(a: unknown, b: unknown): boolean;
  atMost(a: unknown, b: unknown): boolean;
  more(a: unknown, b: unknown): boolean;
  atLeast(a: unknown, b: unknown): boolean;
  same(a: unknown, b: unknown): boolean;
}

/** What a working shows of a name handed to cells, gathered from its doc comment at build time. */
export interface NameDoc {
  readonly name: string;
  readonly rule?: string;
  readonly sources: readonly string[];
}

/**
 * All that the engine does not know itself and is handed: the names cells may use, arithmetic on
 * quantities, printing, CSV. The engine imports no library; whoever starts it passes one of these.
 */
export interface Host {
  readonly names: Readonly<Record<string, unknown>>;
  /**
   * Functions that take long and run apart, by the name cells call them by: a cell's call
   * `planBoards(a, b)` becomes `longWork.planBoards([a, b], control)` and gives a promise. The
   * session cancels through `signal` when the call is superseded. Work that the reader stopped
   * elsewhere fails with an error whose `stopped` is true.
   */
  readonly longWork: Readonly<Record<string, LongWork>>;
  readonly operators: Operators;
  /** Prints a value the library knows (quantity, range, date, money); undefined for any other. */
  print(value: unknown, units: Units): Figure | undefined;
  /** How large a number, quantity or range is; undefined for what has no size. */
  measure?(value: unknown): Measure | undefined;
  /** The same for `--json`; undefined for a value that is not the library's. */
  toJson(value: unknown, units: Units): unknown;
  /** The value `today` has in cells, from an ISO date. */
  dateOf(iso: string): unknown;
  sentence(problem: EngineProblem): string;
  /** The problems an error carries, where it is one of the library's. */
  problemsOf(error: unknown): readonly EngineProblem[] | undefined;
  readCsv(text: string, name: string): TableText;
  writeCsv(table: TableText): string;
  readonly docs: ReadonlyMap<string, NameDoc>;
}

export type LongWork = (data: readonly unknown[], control: LongWorkControl) => Promise<unknown>;

/** What of an `AbortSignal` is needed; an `AbortSignal` is one. */
export interface CancelSignal {
  readonly aborted: boolean;
  addEventListener(type: "abort", listener: () => void): void;
}

export interface LongWorkControl {
  readonly signal: CancelSignal;
  progress(words: string, fraction?: number): void;
  /** Where it must wait its turn: the lower goes before, and takes the place of a higher. Default 0. */
  readonly order?: number;
  /**
   * Takes a better complete result than those before, as plain data that does not change after.
   * Absent where only the last one counts.
   */
  improved?(value: unknown): void;
  /**
   * Gives the event loop a turn, so that a cancelling can come in during long computations. Absent
   * where nobody waits for one. `before` what cannot be interrupted, nothing is held back.
   */
  pause?(before?: "uninterrupted"): Promise<void>;
}

/**
 * What the world around a notebook tells it: `units` and `today` are names every notebook has.
 */
export interface Surroundings {
  readonly units: Units;
  /** ISO date, as `2026-04-25`. */
  readonly today: string;
}
