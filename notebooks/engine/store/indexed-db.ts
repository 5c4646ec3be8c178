import { type IDBPDatabase, openDB } from "idb";
import type { Storage } from "./storage.ts";

const name = "bedwright";
const kept = "kept";

/** A storage over the browser's IndexedDB. Refused (private windows, full disks) gives undefined. */
export async function indexedDbStorage(): Promise<Storage | undefined> {
  try {
    return over(await openDB(name, 1, { upgrade: (db) => void db.createObjectStore(kept) }));
  } catch {
    return undefined;
  }
}

function over(db: IDBPDatabase): Storage {
  return {
    get: (key) => db.get(kept, key),
    async change(key, update) {
      const step = db.transaction(kept, "readwrite");
      const after = update(await step.store.get(key));
      if (after !== undefined) await step.store.put(after, key);
      await step.done;
    },
    keys: async () => (await db.getAllKeys(kept)).map(String),
  };
}
