import type { Problem } from "../check/index.ts";
import { Checks } from "../measure/index.ts";

type Words = Pick<Problem, "allowed" | "received">;

/** Gathers what does not hold of something that is checked by rules stated afresh. */
export class Findings extends Checks {
  readonly #remedy: string;
  readonly #slack: number;

  /** What to do about a contradiction, and how far numbers may be apart that are to be the same. */
  constructor(remedy: string, slack: number) {
    super();
    this.#remedy = remedy;
    this.#slack = slack;
  }

  /** Adds a contradiction where something does not hold. */
  holds(holds: boolean, path: Problem["path"], { allowed, received }: Words): void {
    this.unless(holds, { code: "contradiction", path, allowed, received, remedy: this.#remedy });
  }

  same(expected: number, got: number, path: Problem["path"], slack = this.#slack): void {
    const words = { allowed: String(expected), received: String(got) };
    this.holds(Math.abs(expected - got) <= slack, path, words);
  }
}

/** Things by a key, in the order they come. */
export function grouped<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}
