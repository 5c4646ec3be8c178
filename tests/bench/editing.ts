import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { needChromium } from "../../build/chromium.ts";
import { serveFolder } from "../../build/serve.ts";
import { ms, spread } from "./statistics.ts";

const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"];

/** A pinned answer, its formula, and the answers that follow from it. */
const edited = "mulch";
const keys = "1 2 3 4 5 6 7 8 9".split(" ");
const rounds = 5;

/**
 * From a key pressed in the editor of a formula of the main notebook, the whole demonstration garden
 * in it, to the cell's new value on the page: what a person sees as they type.
 */
export async function editing(): Promise<void> {
  const { server, address } = await serveFolder(join(process.cwd(), "build/out/site"), 0);
  const browser = await chromium.launch({ executablePath: needChromium(), args: flags });
  try {
    const page = await (await browser.newContext()).newPage();
    await openOwn(page, address);
    const opened = performance.now();
    await page.locator(`.cell[id$="-${edited}"] > .cellname`).click();
    await page.locator(".own-slip .cm-content").waitFor();
    console.log("editing: in a formula of the main notebook, in Chromium");
    console.log(`  the editor fetched and opened: ${ms(performance.now() - opened)}`);
    const times = await typeFigures(page);
    const { median, p95 } = spread(times);
    console.log(
      `  a key to the new value on the page: median ${ms(median)}, p95 ${ms(p95)} (${times.length} keys)`,
    );
  } finally {
    await browser.close();
    server.close();
  }
}

async function openOwn(page: Page, address: string): Promise<void> {
  await page.goto(`${address}?notebook=rebuild.md`);
  await page.locator("details.acts > summary").click();
  await page.locator("details.acts").getByRole("button", { name: "Make it mine" }).click();
  const pane = page.getByRole("dialog", { name: "Make it mine" });
  await pane.getByLabel("What is it called?").fill("My own");
  await pane.getByRole("button", { name: "Make it mine" }).click();
  await page.locator("h1", { hasText: "My own" }).waitFor();
  await page.locator(".top label", { hasText: "Write" }).click();
  // Once the long work has come to its end, nothing but the typing is measured.
  await page.waitForFunction(() => !document.querySelector(".cell.busy, .tl .busy"), undefined, {
    timeout: 120_000,
  });
}

/** Types figures behind `* ` and takes them away again; milliseconds from each key to what it changed. */
async function typeFigures(page: Page): Promise<readonly number[]> {
  await page.keyboard.press("Control+End");
  await page.keyboard.type(" * 1");
  await page.waitForTimeout(1_000);
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1)
    for (const key of keys) {
      times.push(await timed(page, key));
      times.push(await timed(page, "Backspace"));
    }
  return times;
}

async function timed(page: Page, key: string): Promise<number> {
  const time = page.evaluate((name) => {
    const answer = document.querySelector(`.cell[id$="-${name}"] > .held`);
    if (!answer) throw new Error("the cell is not on the page");
    return new Promise<number>((resolve) => {
      let pressed = 0;
      addEventListener(
        "keydown",
        () => {
          pressed = performance.now();
        },
        { once: true, capture: true },
      );
      const before = answer.textContent;
      const seen = new MutationObserver(() => {
        if (answer.textContent === before) return;
        seen.disconnect();
        resolve(performance.now() - pressed);
      });
      seen.observe(answer, { childList: true, subtree: true, characterData: true });
      document.documentElement.dataset.ready = "yes";
    });
  }, edited);
  await page.locator("html[data-ready]").waitFor({ state: "attached" });
  await page.keyboard.press(key);
  const took = await time;
  await page.evaluate(() => {
    delete document.documentElement.dataset.ready;
  });
  return took;
}
