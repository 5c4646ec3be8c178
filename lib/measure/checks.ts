import { type Path, type Problem, ProblemError, type Reading } from "../check/index.ts";
import type { Bounds } from "./bounds.ts";
import {
  choiceProblem,
  countProblem,
  numberProblem,
  quantityProblem,
  textProblem,
} from "./guards.ts";
import type { Kind, KindTypes } from "./kinds.ts";
import type { Money, Quantity } from "./quantity.ts";

/**
 * Gathers every problem of an input, so that all come at once:
 *
 *     new Checks()
 *       .quantity(depth, "length", ["depth"], { min: inch, max: yard })
 *       .count(courses, ["courses"], { min: 1 })
 *       .done();
 *
 * Each check allows what the guard of that name (`requireQuantity`, …) allows; `done` throws.
 */
export class Checks {
  readonly #problems: Problem[] = [];

  /** The problems so far. */
  get problems(): readonly Problem[] {
    return this.#problems;
  }

  quantity<K extends Kind>(
    value: unknown,
    kind: K,
    path: Path,
    bounds: Bounds<KindTypes[K]> = {},
  ): this {
    return this.add(quantityProblem(value, kind, path, bounds as Bounds<Quantity>));
  }

  money(value: unknown, path: Path, bounds: Bounds<Money> = {}): this {
    return this.quantity(value, "money", path, bounds);
  }

  number(value: unknown, path: Path, bounds: Bounds<number> = {}): this {
    return this.add(numberProblem(value, path, bounds));
  }

  count(value: unknown, path: Path, bounds: Bounds<number> = {}): this {
    return this.add(countProblem(value, path, bounds));
  }

  text(value: unknown, path: Path): this {
    return this.add(textProblem(value, path));
  }

  choice(value: unknown, choices: readonly unknown[], path: Path): this {
    return this.add(choiceProblem(value, choices, path));
  }

  /** Adds problems found elsewhere; undefined is none. */
  add(...problems: readonly (Problem | undefined)[]): this {
    for (const problem of problems) if (problem !== undefined) this.#problems.push(problem);
    return this;
  }

  /** Adds the problem where something does not hold. */
  unless(holds: boolean, problem: Problem): this {
    return this.add(holds ? undefined : problem);
  }

  /** The value of a reading, or undefined with its problem added. */
  value<T>(reading: Reading<T>): T | undefined {
    if (reading.ok) return reading.value;
    this.add(reading.problem);
    return undefined;
  }

  /** What a calculation gives, or undefined with the problems it throws added. */
  attempt<T>(calculation: () => T): T | undefined {
    try {
      return calculation();
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      this.add(...error.problems);
      return undefined;
    }
  }

  /** Throws a ProblemError with all problems, if there is one. */
  done(): void {
    if (this.#problems.length > 0) throw new ProblemError(this.#problems);
  }
}
