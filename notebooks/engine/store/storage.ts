/**
 * What keeping needs of the world: texts and plain records by key. The page passes one made over
 * IndexedDB; tests pass one made over a map.
 */
export interface Storage extends Reading {
  /** Reads, changes and writes in one step that nobody else can come between; undefined leaves it as it is. */
  change(key: string, update: (before: unknown) => unknown): Promise<void>;
  /**
   * Several records in one step: all of it is written or, where `act` fails, nothing. `act` may wait
   * for the step's own promises only.
   */
  together<T>(act: (step: Step) => Promise<T>): Promise<T>;
  /** Asks that what is kept is not cleared away when room runs short; absent where nobody can be asked. */
  last?(): void;
}

/** What only reads needs of a storage, or of one step. */
export interface Reading {
  get(key: string): Promise<unknown>;
  keys(): Promise<readonly string[]>;
}

/** What may be done in one step. */
export interface Step extends Reading {
  put(key: string, record: unknown): Promise<void>;
  remove(key: string): Promise<void>;
}

/** A storage that lasts as long as the page: where nothing better can be had, and in tests. */
export function memoryStorage(held = new Map<string, unknown>()): Storage {
  let last: Promise<unknown> = Promise.resolve();
  const together = <T>(act: (step: Step) => Promise<T>): Promise<T> => {
    const made = last.then(async () => {
      const draft = new Map(held);
      const result = await act({
        get: async (key) => draft.get(key),
        put: async (key, record) => void draft.set(key, structuredClone(record)),
        remove: async (key) => void draft.delete(key),
        keys: async () => [...draft.keys()],
      });
      held.clear();
      for (const [key, record] of draft) held.set(key, record);
      return result;
    });
    last = made.catch(() => undefined);
    return made;
  };
  return {
    get: async (key) => held.get(key),
    change: (key, update) =>
      together(async (step) => {
        const after = update(await step.get(key));
        if (after !== undefined) await step.put(key, after);
      }),
    together,
    keys: async () => [...held.keys()],
  };
}
