import type { CellId, Entered, TableText } from "../types/index.ts";

type Value = string | TableText;

/** The name a new plan is offered: "Plan A", or the next letter that is free. */
export function nextName(names: Iterable<string>): string {
  const taken = new Set([...names].map(plain));
  for (let count = 0; ; count += 1) {
    const name = `Plan ${letters(count)}`;
    if (!taken.has(plain(name))) return name;
  }
}

const plain = (name: string) => name.trim().toLowerCase();

/** A to Z, then AA, AB and so on. */
function letters(count: number): string {
  const last = String.fromCharCode(65 + (count % 26));
  return count < 26 ? last : letters(Math.floor(count / 26) - 1) + last;
}

/**
 * What is entered when a plan is worked out: all that it holds, but for the tables that every plan
 * shares, which are as they are now.
 */
export function enteredFor(plan: Entered, now: Entered, shared: ReadonlySet<CellId>): Entered {
  const entered: Record<CellId, Value> = {};
  for (const [id, value] of pairs(plan)) if (!shared.has(id)) entered[id] = value;
  for (const [id, value] of pairs(now)) if (shared.has(id)) entered[id] = value;
  return entered;
}

/** What must be entered, and what gets its default back, to come from one to the other. */
export function stepsBetween(
  from: Entered,
  to: Entered,
): { readonly changes: Entered; readonly reset: readonly CellId[] } {
  const changes = pairs(to).filter(([id, value]) => from[id] !== value);
  const reset = pairs(from).flatMap(([id]) => (to[id] === undefined ? [id] : []));
  return { changes: Object.fromEntries(changes), reset };
}

function pairs(entered: Entered): [CellId, Value][] {
  return Object.entries(entered) as [CellId, Value][];
}
