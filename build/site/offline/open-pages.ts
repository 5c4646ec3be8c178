/** An open page and the version it began with, which it has until it is closed. */
interface OpenPage {
  readonly id: string;
  readonly version: string;
  /** When it was noted: a page that has only begun is not yet among the open ones. */
  readonly at: number;
}

interface Noted {
  readonly pages: readonly OpenPage[];
  /** Versions that had their time: their files go when their last page is closed. */
  readonly past: readonly string[];
}

const cacheName = "bedwright-pages";
const justBegun = 10_000;

/** Which version each open page has. It outlives the worker, which a browser ends whenever it idles. */
export class OpenPages {
  readonly #address: string;
  #noted: Promise<Noted> | undefined;
  #writing: Promise<void> = Promise.resolve();

  constructor(scope: string) {
    this.#address = new URL("open-pages.json", scope).href;
  }

  async versionOf(id: string): Promise<string | undefined> {
    return (await this.#read()).pages.find((page) => page.id === id)?.version;
  }

  async past(): Promise<readonly string[]> {
    return (await this.#read()).past;
  }

  async add(id: string, version: string): Promise<void> {
    await this.#change(({ pages, past }) => ({
      pages: [...pages.filter((page) => page.id !== id), { id, version, at: Date.now() }],
      past,
    }));
  }

  /** Another version takes over: those before it are past. */
  async takeOver(version: string, kept: readonly string[]): Promise<void> {
    await this.#change(({ pages }) => ({ pages, past: kept.filter((one) => one !== version) }));
  }

  /** Forgets pages that were closed; gives the versions of those that are open. */
  async onlyOpen(ids: ReadonlySet<string>): Promise<ReadonlySet<string>> {
    const earliest = Date.now() - justBegun;
    await this.#change(({ pages, past }) => ({
      pages: pages.filter(({ id, at }) => ids.has(id) || at > earliest),
      past,
    }));
    return new Set((await this.#read()).pages.map(({ version }) => version));
  }

  async #read(): Promise<Noted> {
    this.#noted ??= readNoted(this.#address);
    return this.#noted;
  }

  /** One change after the other, each from what the last one left. */
  #change(change: (noted: Noted) => Noted): Promise<void> {
    this.#writing = this.#writing.then(async () => {
      const noted = change(await readNoted(this.#address));
      this.#noted = Promise.resolve(noted);
      const cache = await caches.open(cacheName);
      await cache.put(this.#address, new Response(JSON.stringify(noted)));
    });
    return this.#writing;
  }
}

async function readNoted(address: string): Promise<Noted> {
  const kept = await caches.match(address, { cacheName });
  return kept ? ((await kept.json()) as Noted) : { pages: [], past: [] };
}
