import type { CellId } from "../types/index.ts";
import { keyOf, readKey } from "./keys.ts";
import { movedPlace } from "./place.ts";
import type { EnteredValue, KeptRecord, Plan, StateRecord } from "./record-types.ts";
import { readRecord } from "./records.ts";

/** From one name of a notebook to another. */
export interface Move {
  readonly from: string;
  readonly to: string;
}

/**
 * A record of a notebook as it is under the notebook's new name: its key, and all that names the
 * notebook in it. Undefined where the record can't be read, so that it must not be moved.
 */
export function movedRecord(
  key: string,
  stored: unknown,
  move: Move,
): readonly [key: string, record: KeptRecord] | undefined {
  const parts = readKey(key);
  if (parts === undefined) return undefined;
  const read = readRecord(parts.kind, stored);
  if (read.is !== "record") return undefined;
  const place = movedPlace(parts.place, move);
  return [keyOf({ ...parts, place }), moved(read.record, move)];
}

function moved(record: KeptRecord, move: Move): KeptRecord {
  const { to } = move;
  switch (record.kind) {
    case "document":
      return { ...record, place: movedPlace(record.place, move) };
    case "entered":
      return { ...record, file: movedPlace(record.file, move) };
    case "plans":
      return { ...record, main: to, plans: record.plans.map((plan) => movedPlan(plan, move)) };
    case "states":
      return { ...record, main: to };
    case "state":
      return movedState(record, move);
    case "settings":
      return record;
  }
}

/** A plan of a notebook under another name. */
export function movedPlan(plan: Plan, move: Move): Plan {
  return { ...plan, entered: movedEntered(plan.entered, move) };
}

function movedState(record: StateRecord, move: Move): StateRecord {
  const { files, texts, entered, whole, ...rest } = record;
  const named = (file: string) => (file === move.from ? move.to : file);
  const state = {
    ...rest,
    main: move.to,
    files: files.map(named),
    texts: Object.fromEntries(Object.entries(texts).map(([file, text]) => [named(file), text])),
    entered: movedEntered(entered, move),
  };
  if (whole === undefined) return state;
  const parts = Object.entries(whole).map(
    ([key, stored]) => movedRecord(key, stored, move) ?? ([key, stored] as const),
  );
  return { ...state, whole: Object.fromEntries(parts) };
}

function movedEntered(
  entered: Readonly<Record<CellId, EnteredValue>>,
  { from, to }: Move,
): Readonly<Record<CellId, EnteredValue>> {
  const own = `${from}#`;
  return Object.fromEntries(
    Object.entries(entered).map(([id, value]) => [
      id.startsWith(own) ? `${to}#${id.slice(own.length)}` : id,
      value,
    ]),
  );
}
