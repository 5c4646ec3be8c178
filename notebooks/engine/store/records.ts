import type { KindOfRecord, RecordOf } from "./record-types.ts";
import { shapes } from "./shapes.ts";

/**
 * What a stored value turned out to be. `newer` was written by a later version of this program:
 * it must be neither used nor overwritten. `broken` is nothing we wrote.
 */
export type ReadRecord<R> =
  | { readonly is: "record"; readonly record: R }
  | { readonly is: "absent" }
  | { readonly is: "newer"; readonly version: number }
  | { readonly is: "broken" };

/** A stored value of some version, before it is known to be good. */
export type Stored = Readonly<Record<string, unknown>>;

/** How one kind of record is read. */
export interface KindRules {
  /** The version written now. */
  readonly newest: number;
  /** From a version to the next, by the version it starts from. */
  readonly steps: Readonly<Record<number, (old: Stored) => Stored>>;
  /** Whether a value of the newest version has the shape it must have. */
  fits(stored: object): boolean;
}

/**
 * Reads a stored value by the rules of its kind. An older version is brought up to the newest, one
 * step a version; where a step is missing or fails, or the result has not the right shape, it is
 * broken. What is stored is left as it is: the newest version is written with the next change.
 */
export function readByRules(
  kind: string,
  stored: unknown,
  { newest, steps, fits }: KindRules,
): ReadRecord<Stored> {
  if (stored === undefined) return { is: "absent" };
  if (typeof stored !== "object" || stored === null) return { is: "broken" };
  const { kind: of, version } = stored as Stored;
  if (of !== kind || typeof version !== "number" || !Number.isInteger(version))
    return { is: "broken" };
  if (version > newest) return { is: "newer", version };
  let record = stored as Stored;
  for (let at = version; at < newest; at += 1) {
    const step = steps[at];
    if (step === undefined) return { is: "broken" };
    try {
      record = { ...step(record), kind, version: at + 1 };
    } catch {
      return { is: "broken" };
    }
  }
  return fits(record) ? { is: "record", record } : { is: "broken" };
}

/** All kinds are at their first version. A later one goes here with the step that leads to it. */
const rules: Readonly<Record<KindOfRecord, KindRules>> = {
  entered: { newest: 1, steps: {}, fits: shapes.entered },
  settings: { newest: 1, steps: {}, fits: shapes.settings },
  document: { newest: 1, steps: {}, fits: shapes.document },
  plans: { newest: 1, steps: {}, fits: shapes.plans },
  state: { newest: 1, steps: {}, fits: shapes.state },
  states: { newest: 1, steps: {}, fits: shapes.states },
};

/** Reads a stored value of the kind, bringing older versions up to the present one. */
export function readRecord<K extends KindOfRecord>(
  kind: K,
  stored: unknown,
): ReadRecord<RecordOf<K>> {
  return readByRules(kind, stored, rules[kind]) as ReadRecord<RecordOf<K>>;
}
