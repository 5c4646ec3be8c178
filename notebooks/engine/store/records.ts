import type { TableText, Units } from "../types/index.ts";

/** What was typed into one notebook's entries and tables, by the cell's name. */
export interface EnteredRecord {
  readonly kind: "entered";
  readonly version: 1;
  readonly file: string;
  readonly cells: Readonly<Record<string, string | TableText>>;
}

export interface SettingsRecord {
  readonly kind: "settings";
  readonly version: 1;
  readonly units: Units;
}

export type KeptRecord = EnteredRecord | SettingsRecord;

const newest = { entered: 1, settings: 1 } as const;

/**
 * What a stored value turned out to be. `newer` was written by a later version of this program:
 * it must be neither used nor overwritten. `broken` is nothing we wrote.
 */
export type ReadRecord<R> =
  | { readonly is: "record"; readonly record: R }
  | { readonly is: "absent" }
  | { readonly is: "newer"; readonly version: number }
  | { readonly is: "broken" };

/** Reads a stored value of the kind, bringing older versions up to the present one. */
export function readRecord<K extends KeptRecord["kind"]>(
  kind: K,
  stored: unknown,
): ReadRecord<Extract<KeptRecord, { readonly kind: K }>> {
  if (stored === undefined) return { is: "absent" };
  if (typeof stored !== "object" || stored === null) return { is: "broken" };
  const { kind: of, version } = stored as { kind?: unknown; version?: unknown };
  if (of !== kind || typeof version !== "number" || !Number.isInteger(version) || version < 1)
    return { is: "broken" };
  if (version > newest[kind]) return { is: "newer", version };
  // Version 1 is the first; migrations of older ones go here, one step a version.
  return shapes[kind](stored)
    ? { is: "record", record: stored as Extract<KeptRecord, { readonly kind: K }> }
    : { is: "broken" };
}

const isText = (value: unknown) => typeof value === "string";

function isTable(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  const { kind, name, columns, rows, decimal } = value as Partial<TableText>;
  return (
    kind === "table" &&
    isText(name) &&
    (decimal === "." || decimal === ",") &&
    Array.isArray(columns) &&
    columns.every(isText) &&
    Array.isArray(rows) &&
    rows.every((row) => Array.isArray(row) && row.length === columns.length && row.every(isText))
  );
}

const shapes: Record<KeptRecord["kind"], (stored: object) => boolean> = {
  entered(stored) {
    const { file, cells } = stored as Partial<EnteredRecord>;
    return (
      isText(file) &&
      typeof cells === "object" &&
      cells !== null &&
      Object.values(cells).every((value) => isText(value) || isTable(value))
    );
  },
  settings: (stored) => ["us", "metric"].includes(String((stored as SettingsRecord).units)),
};
