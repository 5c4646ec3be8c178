import {
  createDocument,
  type DocumentRecord,
  type Keeper,
  memoryStorage,
  type NewDocument,
  type OtherTabs,
  otherTabs,
  type Storage,
  type TabNews,
  type TextStore,
} from "../../../notebooks/engine/store/index.ts";

/** An instant on a spring day, so many seconds after two o'clock. */
export function at(seconds: number): string {
  return new Date(Date.UTC(2026, 3, 25, 14, 0, seconds)).toISOString();
}

export const now = () => at(0);

/** A `localStorage` over a map; once `full`, it refuses to take more. */
export function textStore(): TextStore & { readonly held: Map<string, string>; full: boolean } {
  const held = new Map<string, string>();
  return {
    held,
    full: false,
    get length() {
      return held.size;
    },
    key: (index) => [...held.keys()][index] ?? null,
    getItem: (key) => held.get(key) ?? null,
    setItem(key, text) {
      if (this.full) throw new DOMException("no room", "QuotaExceededError");
      held.set(key, text);
    },
    removeItem: (key) => void held.delete(key),
  };
}

/** A storage whose writes fail with what `why` gives, as long as it gives something. */
export function failing(storage: Storage, why: () => Error | undefined): Storage {
  const write = async <T>(act: () => Promise<T>): Promise<T> => {
    const error = why();
    if (error) throw error;
    return act();
  };
  return {
    ...storage,
    change: (key, update) => write(() => storage.change(key, update)),
    together: (act) => write(() => storage.together(act)),
  };
}

/** A storage whose writes never end, as when the page is closed meanwhile. */
export function neverWrites(): Storage {
  const never = () => new Promise<never>(() => undefined);
  return { ...memoryStorage(), change: never, together: never };
}

export const full = () => new DOMException("The disk is full.", "QuotaExceededError");

/** Everything a storage holds. */
export async function allOf(storage: Storage): Promise<Readonly<Record<string, unknown>>> {
  const keys = (await storage.keys()).toSorted();
  const records: [string, unknown][] = [];
  for (const key of keys) records.push([key, await storage.get(key)]);
  return Object.fromEntries(records);
}

/** A new own document, in its record. */
export async function made(
  storage: Storage,
  file: string,
  more: Partial<NewDocument> = {},
): Promise<DocumentRecord> {
  const outcome = await createDocument(storage, {
    file,
    text: `# ${file}\n`,
    title: file,
    origin: { from: "new" },
    changed: at(0),
    ...more,
  });
  if (!outcome.good) throw new Error(outcome.words);
  return outcome.value;
}

/** Pages of one browser: what one tells, the others hear. */
export function tabs(count: number): readonly OtherTabs[] {
  const heard: ((data: unknown) => void)[][] = [];
  return Array.from({ length: count }, (_, own) => {
    heard[own] = [];
    return otherTabs({
      postMessage(message) {
        const data = structuredClone(message);
        heard.forEach((listeners, other) => {
          if (other !== own) for (const listener of listeners) listener(data);
        });
      },
      addEventListener: (_type, listener) => void heard[own]?.push((data) => listener({ data })),
    });
  });
}

/** The news one tab hears, in their order. */
export function newsOf(others: OtherTabs): TabNews[] {
  const news: TabNews[] = [];
  others.heard((one) => news.push(one));
  return news;
}

/** Writes a text as a page does that last saw the revision. */
export function write(keeper: Keeper, text: string, revision: number, place = "plot.md"): void {
  keeper.keepText(place, text, { revision, title: "Plot", changed: at(1) });
}
