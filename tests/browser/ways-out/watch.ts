import type { BrowserContext, Page } from "playwright-core";
import type { SiteServer } from "./site-server.ts";

const canary = "4 cu yd";

/** Watches that a page stays as it was, whatever is opened in it. */
export class Watch {
  /** Everything that should not have happened. */
  readonly odd: string[] = [];
  readonly #server: SiteServer;
  #kept = "";

  constructor(server: SiteServer) {
    this.#server = server;
  }

  async page(context: BrowserContext): Promise<Page> {
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.addInitScript("window.taken = []");
    context.on("page", (other) => {
      if (other !== page) this.odd.push(`a page was opened: ${other.url()}`);
    });
    page.on("dialog", (dialog) => {
      this.odd.push(`a dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on("download", (download) => this.odd.push(`a download: ${download.url()}`));
    page.on("pageerror", (error) => this.odd.push(`the page's script failed: ${error.message}`));
    page.on("console", (message) => {
      const { url } = message.location();
      if (message.type() === "error" && url.startsWith(this.#server.address) && url.endsWith(".js"))
        this.odd.push(`the page's script complains: ${message.text()}`);
    });
    return page;
  }

  /** Enters something in a notebook of ours, and remembers all that is kept. */
  async plantCanary(page: Page): Promise<void> {
    await page.goto(`${this.#server.address}?notebook=one-bed.md`);
    const field = page.locator(".cell input[type=text]").first();
    await field.waitFor();
    await field.fill(canary);
    await page.waitForTimeout(1_500);
    this.#kept = await kept(page);
    if (!this.#kept.includes(canary)) this.odd.push("the canary was not kept");
  }

  /** All that was kept is as it was, and nothing was kept by a way out. */
  async keptIsSame(page: Page): Promise<void> {
    const now = await kept(page);
    const before = JSON.parse(this.#kept) as Record<string, string>;
    const after = JSON.parse(now) as Record<string, string>;
    for (const [key, value] of Object.entries(before))
      if (after[key] !== value) this.odd.push(`what was kept has changed: ${key}`);
    for (const key of Object.keys(after))
      if (key.includes("way-out") || after[key]?.includes("planted"))
        this.odd.push(`something was kept: ${key}`);
  }

  async canaryIsThere(page: Page): Promise<void> {
    await this.keptIsSame(page);
    await page.goto(`${this.#server.address}?notebook=one-bed.md`);
    const field = page.locator(".cell input[type=text]").first();
    await field.waitFor();
    if ((await field.inputValue()) !== canary) this.odd.push("the canary is gone");
  }

  /** Opens a hostile notebook and waits until all its cells have been tried. */
  async open(page: Page, file: string): Promise<void> {
    await page.goto(`${this.#server.address}?notebook=${file}`);
    await page.locator(`#cell-${file.replace(".", "-")}-last.hasvalue`).waitFor();
    await page.waitForTimeout(1_000);
  }

  /** The page answers, and its address, title and frame are its own. */
  async whole(page: Page, file: string): Promise<void> {
    const { address, title, frames } = (await page.evaluate(
      `({ address: location.href, title: document.title, frames: document.querySelectorAll("iframe").length })`,
    )) as { address: string; title: string; frames: number };
    if (address.split("#")[0] !== `${this.#server.address}?notebook=${file}`)
      this.odd.push(`the address is ${address}`);
    if (!title.endsWith(" · Bedwright")) this.odd.push(`the title is ${title}`);
    if (frames !== 1) this.odd.push(`there are ${frames} frames`);
  }
}

/** All that is kept in the browser for the site, as text by place and key. */
async function kept(page: Page): Promise<string> {
  return (await page.evaluate(`(async () => {
    const all = {};
    for (const { name } of await indexedDB.databases()) {
      const db = await new Promise((done, failed) => {
        const asked = indexedDB.open(name);
        asked.onsuccess = () => done(asked.result);
        asked.onerror = failed;
      });
      for (const store of db.objectStoreNames) {
        const read = db.transaction(store).objectStore(store);
        const [keys, values] = await Promise.all([read.getAllKeys(), read.getAll()].map(
          (asked) => new Promise((done) => { asked.onsuccess = () => done(asked.result); })));
        keys.forEach((key, index) => { all[name + " " + store + " " + key] = JSON.stringify(values[index]); });
      }
      db.close();
    }
    for (const [key, value] of Object.entries(localStorage)) all["local " + key] = value;
    return JSON.stringify(all);
  })()`)) as string;
}
