import { existsSync } from "node:fs";
import type { Server } from "node:http";
import { join } from "node:path";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { out } from "../../build/root.ts";
import { serveFolder } from "../../build/serve.ts";

export const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * A test in a browser that fails is made once more: on a machine that is busy with other things a
 * browser may keep a page waiting without anything being wrong. Tests that needed it are named at the
 * end of the run. What fails twice fails.
 */
export const again = { retry: 1 } as const;

/** The built site in a browser: served on a free port for as long as the file's tests run. */
export interface Site {
  readonly address: string;
  /** A page of its own with nothing kept. Pages of one context share what is kept. */
  page(options?: PageOptions): Promise<Page>;
}

export interface PageOptions extends BrowserContextOptions {
  /** Notebooks of the test's own, served as if they were shipped. */
  readonly notebooks?: Readonly<Record<string, string>>;
}

export function useSite(): Site {
  let browser: Browser | undefined;
  let server: Server | undefined;
  let address = "";
  beforeAll(async () => {
    const folder = join(out, "site");
    if (!existsSync(join(folder, "index.html")))
      throw new Error("The site is not built: run `npm run build` first.");
    ({ server, address } = await serveFolder(folder, 0));
    browser = await chromium.launch({ executablePath: needChromium(), args: flags });
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    server?.close();
  });
  return {
    get address() {
      return address;
    },
    async page({ notebooks = {}, ...options } = {}) {
      if (!browser) throw new Error("the browser has not started");
      const context = await browser.newContext({
        viewport: { width: 1280, height: 900 },
        // What a service worker asks for, no test could route; those about it make their own contexts.
        serviceWorkers: "block",
        ...options,
      });
      for (const [file, text] of Object.entries(notebooks))
        await context.route(`**/notebooks/${file}`, (route) =>
          route.fulfill({ body: text, contentType: "text/markdown; charset=utf-8" }),
        );
      const page = await context.newPage();
      page.setDefaultTimeout(20_000);
      return page;
    },
  };
}

/** Opens a notebook and waits until its first answers stand. */
export async function openNotebook(page: Page, site: Site, file: string): Promise<void> {
  await page.goto(`${site.address}?notebook=${file}`);
  await page.locator(".cell.hasvalue").first().waitFor();
}

/** Waits until a pinned answer shows a figure and no long work is under way. */
export async function settled(page: Page): Promise<void> {
  await page.locator(".tl dd .n").first().waitFor({ state: "attached" });
  await page.waitForFunction(
    () => !document.querySelector(".cell.busy, .tl .busy") && !document.querySelector(".tl .none"),
  );
}

/** Chooses an act from the menu of the open notebook. */
export async function choose(page: Page, words: string): Promise<void> {
  await page.locator("details.acts > summary").click();
  await page.locator("details.acts").getByRole("button", { name: words, exact: true }).click();
}

/** What a pinned answer says, by its cell's name. */
export function answer(page: Page, name: string) {
  return page.locator(`.tl dl > div[data-cell$="#${name}"] .n`);
}

/** The place of a cell of a notebook. */
export function cell(page: Page, file: string, name: string) {
  return page.locator(`#cell-${file.replace(".", "-")}-${name}`);
}

/** The field of an entry of the main notebook. */
export function field(page: Page, name: string, file = "rebuild.md") {
  return cell(page, file, name).locator("input[type=text], select").first();
}
