import type { CellId, TableText } from "../types/index.ts";

/** What has been typed and is not safe in the storage yet; undefined is a default again. */
export type Unsafe = ReadonlyMap<CellId, string | TableText | undefined>;

/**
 * Holds what is on its way into the storage. It is written to at once, in one step: a page that is
 * closed or reloaded ends a write into a database halfway, but not this.
 */
export interface Journal {
  /** Holds just these from now on. */
  hold(unsafe: Unsafe): void;
  /** What pages that ended left behind; they are forgotten when `done` is called. */
  leftBehind(): { readonly unsafe: Unsafe; done(): void };
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
    hold(unsafe) {
      try {
        if (unsafe.size === 0) store.removeItem(own);
        else
          store.setItem(own, JSON.stringify([...unsafe].map(([id, value]) => [id, value ?? null])));
      } catch {
        // A full store: what is typed still goes its ordinary way, and that reports its own trouble.
      }
    },
    leftBehind() {
      const keys = keysOf(store).filter((key) => key !== own);
      const unsafe = new Map(keys.flatMap((key) => [...read(store.getItem(key))]));
      return {
        unsafe,
        done: () => {
          for (const key of keys) store.removeItem(key);
        },
      };
    },
  };
}

function keysOf(store: TextStore): readonly string[] {
  const keys = Array.from({ length: store.length }, (_, at) => store.key(at) ?? "");
  return keys.filter((key) => key.startsWith(prefix));
}

/** The entries of a journal's text; none where it is not one of ours. */
function read(text: string | null): Unsafe {
  try {
    const pairs: unknown = JSON.parse(text ?? "[]");
    if (!Array.isArray(pairs)) return new Map();
    return new Map(pairs.filter(isPair).map(([id, value]) => [id, value ?? undefined]));
  } catch {
    return new Map();
  }
}

function isPair(pair: unknown): pair is [CellId, string | TableText | null] {
  if (!Array.isArray(pair) || typeof pair[0] !== "string" || !pair[0].includes("#")) return false;
  const value: unknown = pair[1];
  return (
    value === null ||
    typeof value === "string" ||
    (typeof value === "object" && "rows" in (value as object))
  );
}
