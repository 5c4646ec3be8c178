/**
 * What keeping needs of the world: texts and plain records by key. The page passes one made over
 * IndexedDB; tests pass one made over a map.
 */
export interface Storage {
  get(key: string): Promise<unknown>;
  /** Reads, changes and writes in one step that nobody else can come between; undefined leaves it as it is. */
  change(key: string, update: (before: unknown) => unknown): Promise<void>;
  keys(): Promise<readonly string[]>;
}

/** A storage that lasts as long as the page: where nothing better can be had, and in tests. */
export function memoryStorage(held = new Map<string, unknown>()): Storage {
  return {
    get: async (key) => held.get(key),
    async change(key, update) {
      const after = update(held.get(key));
      if (after !== undefined) held.set(key, structuredClone(after));
    },
    keys: async () => [...held.keys()],
  };
}
