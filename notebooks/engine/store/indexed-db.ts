import { type IDBPDatabase, openDB } from "idb";
import type { Step, Storage } from "./storage.ts";
import { keepsNothing, notKept } from "./words.ts";

const kept = "kept";

/** A storage, or why there is none, in words for the reader. */
export type OpenedStorage =
  | { readonly storage: Storage; readonly words?: undefined }
  | { readonly storage: undefined; readonly words: string };

/**
 * A storage over the browser's IndexedDB. Where the browser refuses it (private windows, a full
 * disk), or a newer version of the workbook has made it its own, the words say so.
 */
export async function openIndexedDb(name = "bedwright"): Promise<OpenedStorage> {
  const storage = new OverIndexedDb(name);
  try {
    await storage.get("settings");
    return { storage };
  } catch (error) {
    const newer = error instanceof Error && error.name === "VersionError";
    return { storage: undefined, words: newer ? notKept(error) : keepsNothing };
  }
}

/** The same, undefined where there is none. */
export async function indexedDbStorage(): Promise<Storage | undefined> {
  return (await openIndexedDb()).storage;
}

class OverIndexedDb implements Storage {
  readonly #name: string;
  #opening: Promise<IDBPDatabase> | undefined;
  /** A newer version in another tab waits for the database: it has it, and this page has none. */
  #newer = false;
  #asked = false;

  constructor(name: string) {
    this.#name = name;
  }

  get(key: string): Promise<unknown> {
    return this.#use((db) => db.get(kept, key));
  }

  change(key: string, update: (before: unknown) => unknown): Promise<void> {
    return this.together(async (step) => {
      const after = update(await step.get(key));
      if (after !== undefined) await step.put(key, after);
    });
  }

  together<T>(act: (step: Step) => Promise<T>): Promise<T> {
    return this.#use(async (db) => {
      const { store, done, abort } = transactionOf(db);
      try {
        const result = await act({
          get: (key) => store.get(key),
          put: async (key, record) => void (await store.put(record, key)),
          remove: (key) => store.delete(key),
          keys: async () => (await store.getAllKeys()).map(String),
        });
        await done;
        return result;
      } catch (error) {
        abort();
        const end = await done.then(
          () => undefined,
          (reason: unknown) => reason,
        );
        // What `act` failed of is the reason, unless it only heard that the step was given up.
        throw nameOf(error) === "AbortError" && nameOf(end) !== "" ? end : error;
      }
    });
  }

  keys(): Promise<readonly string[]> {
    return this.#use(async (db) => (await db.getAllKeys(kept)).map(String));
  }

  last(): void {
    if (this.#asked) return;
    this.#asked = true;
    // Whether it is granted changes nothing that can be done here.
    navigator.storage?.persist?.().catch(() => undefined);
  }

  /** A connection the browser has closed meanwhile is opened again, once. */
  async #use<T>(act: (db: IDBPDatabase) => Promise<T>): Promise<T> {
    const first = this.#opened();
    try {
      return await act(await first);
    } catch (error) {
      const lost = error instanceof Error && error.name === "InvalidStateError";
      if (!lost || this.#newer) throw this.#newer ? new BlockedByNewer() : error;
      if (this.#opening === first) this.#opening = undefined;
      return act(await this.#opened());
    }
  }

  #opened(): Promise<IDBPDatabase> {
    this.#opening ??= openDB(this.#name, 1, {
      upgrade: (db) => void db.createObjectStore(kept),
      blocking: (_current, _wanted, event) => {
        this.#newer = true;
        (event.target as IDBDatabase).close();
      },
      terminated: () => {
        this.#opening = undefined;
      },
    });
    const opening = this.#opening;
    opening.catch(() => {
      if (this.#opening === opening) this.#opening = undefined;
    });
    return opening;
  }
}

const nameOf = (error: unknown) => (error instanceof Error ? error.name : "");

class BlockedByNewer extends Error {
  override readonly name = "BlockedByNewer";
}

function transactionOf(db: IDBPDatabase) {
  const transaction = db.transaction(kept, "readwrite");
  return {
    store: transaction.store,
    done: transaction.done,
    abort() {
      try {
        transaction.abort();
      } catch {
        // It had ended by itself.
      }
    },
  };
}
