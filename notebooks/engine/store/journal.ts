import type { CellId } from "../types/index.ts";
import type { EnteredValue } from "./record-types.ts";
import { isEnteredValue, isRecord } from "./shapes.ts";

/** A document's text on its way into the storage. */
export interface UnsafeText {
  readonly text: string;
  readonly title: string;
  /** The revision it was written over. */
  readonly revision: number;
  readonly changed: string;
}

/** What has been typed and is not safe in the storage yet. */
export interface Unsafe {
  /** By place and name (`plot.md>garden.md#beds`); undefined is a default again. */
  readonly entries: ReadonlyMap<CellId, EnteredValue | undefined>;
  /** By place. */
  readonly texts: ReadonlyMap<string, UnsafeText>;
}

/** What a page that ended left behind. It is forgotten when `done` is called. */
export interface LeftBehind extends Unsafe {
  readonly page: string;
  done(): void;
}

/**
 * Holds what is on its way into the storage. It is written to at once, in one step: a page that is
 * closed or reloaded ends a write into a database halfway, but not this.
 */
export interface Journal {
  /** A name that no other open page has. */
  readonly page: string;
  /** Holds just these from now on. Gives false where there is no room for them. */
  hold(unsafe: Unsafe): boolean;
  /** What other pages hold: those that ended, and what one that is open is just writing. */
  leftBehind(): readonly LeftBehind[];
}

/** What is needed of the browser's `localStorage`. */
export interface TextStore {
  readonly length: number;
  key(at: number): string | null;
  getItem(key: string): string | null;
  setItem(key: string, text: string): void;
  removeItem(key: string): void;
}

const prefix = "bedwright:on-its-way:";

/**
 * A journal over the browser's `localStorage`. Each open page has a key of its own, so that two do
 * not take each other's away.
 *
 * @param page a name that no other open page has
 */
export function textJournal(store: TextStore, page: string): Journal {
  const own = `${prefix}${page}`;
  return {
    page,
    hold(unsafe) {
      try {
        if (unsafe.entries.size === 0 && unsafe.texts.size === 0) store.removeItem(own);
        else store.setItem(own, written(unsafe));
        return true;
      } catch {
        // A full store: what is typed still goes its ordinary way, and that reports its own trouble.
        return false;
      }
    },
    leftBehind: () =>
      keysOf(store)
        .filter((key) => key !== own)
        .flatMap((key) => leftIn(store, key)),
  };
}

function leftIn(store: TextStore, key: string): readonly LeftBehind[] {
  const text = store.getItem(key);
  const unsafe = read(text);
  if (unsafe === undefined) return [];
  return [
    {
      ...unsafe,
      page: key.slice(prefix.length),
      done: () => {
        // A page that is open after all may hold something newer by now: that stays.
        if (store.getItem(key) === text) store.removeItem(key);
      },
    },
  ];
}

function written({ entries, texts }: Unsafe): string {
  return JSON.stringify({
    version: 1,
    entries: [...entries].map(([id, value]) => [id, value ?? null]),
    texts: [...texts],
  });
}

function keysOf(store: TextStore): readonly string[] {
  const keys = Array.from({ length: store.length }, (_, at) => store.key(at) ?? "");
  return keys.filter((key) => key.startsWith(prefix));
}

/** What a journal's text holds; undefined where it is not one of ours, or of a newer version. */
function read(text: string | null): Unsafe | undefined {
  try {
    const held: unknown = JSON.parse(text ?? "");
    // Before texts were held it was the entries alone.
    const { entries, texts } = Array.isArray(held)
      ? { entries: held as unknown, texts: [] as unknown }
      : isRecord(held) && held.version === 1
        ? held
        : {};
    if (!Array.isArray(entries) || !Array.isArray(texts)) return undefined;
    return {
      entries: new Map(entries.filter(isEntry).map(([id, value]) => [id, value ?? undefined])),
      texts: new Map(texts.filter(isUnsafeText)),
    };
  } catch {
    return undefined;
  }
}

function isEntry(pair: unknown): pair is [CellId, EnteredValue | null] {
  if (!Array.isArray(pair) || typeof pair[0] !== "string" || !pair[0].includes("#")) return false;
  return pair[1] === null || isEnteredValue(pair[1]);
}

function isUnsafeText(pair: unknown): pair is [string, UnsafeText] {
  if (!Array.isArray(pair) || typeof pair[0] !== "string" || !isRecord(pair[1])) return false;
  const { text, title, revision, changed } = pair[1];
  return (
    [text, title, changed].every((part) => typeof part === "string") &&
    Number.isSafeInteger(revision)
  );
}
