import { partsOfPlace } from "./place.ts";
import type { KindOfRecord } from "./record-types.ts";

const kinds: readonly KindOfRecord[] = [
  "document",
  "entered",
  "plans",
  "states",
  "state",
  "settings",
];

/** What a key says of its record: the kind, the place, and a state's number. */
export interface KeyParts {
  readonly kind: KindOfRecord;
  /** Empty for the settings. */
  readonly place: string;
  /** The notebook it belongs to. */
  readonly main: string;
  readonly number?: number;
}

/** Reads a key; undefined where it is none of ours. */
export function readKey(key: string): KeyParts | undefined {
  if (key === "settings") return { kind: "settings", place: "", main: "" };
  const at = key.indexOf(":");
  const kind = kinds.find((known) => known === key.slice(0, at));
  if (kind === undefined || kind === "settings") return undefined;
  const rest = key.slice(at + 1);
  if (kind !== "state") return { kind, place: rest, main: partsOfPlace(rest).main };
  const [, main, number] = /^(.+):(\d+)$/.exec(rest) ?? [];
  if (main === undefined) return undefined;
  return { kind, place: main, main, number: Number(number) };
}

/** The key of a record of the kind at the place. */
export function keyOf({ kind, place, number }: Omit<KeyParts, "main">): string {
  if (kind === "settings") return kind;
  return number === undefined ? `${kind}:${place}` : `${kind}:${place}:${number}`;
}
