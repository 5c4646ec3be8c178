import { join } from "node:path";
import { type BrowserContext, chromium } from "playwright-core";
import { needChromium } from "../../build/chromium.ts";
import { serveFolder } from "../../build/serve.ts";
import { ms, spread } from "./statistics.ts";

const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run"];
const rounds = 8;

/**
 * Opening a notebook in a browser where 50 earlier states of it are kept, and where none is: its
 * states are not read on opening, so it must take the same time.
 */
export async function keeping(): Promise<void> {
  const { server, address } = await serveFolder(join(process.cwd(), "build/out/site"), 0);
  const browser = await chromium.launch({ executablePath: needChromium(), args: flags });
  try {
    const contexts = [await browser.newContext(), await browser.newContext()] as const;
    const times = contexts.map((): number[] => []);
    for (const context of contexts) await opening(context, address);
    await keepStates(contexts[1], address);
    // Taken in turn, so that what else the machine does falls on both alike.
    for (let round = 0; round < rounds; round += 1)
      for (const [index, context] of contexts.entries())
        times[index]?.push(await opening(context, address));
    console.log("keeping: opening the main notebook, to its first answer");
    for (const [index, words] of ["no earlier states", "50 earlier states"].entries()) {
      const { median, p95 } = spread(times[index] ?? []);
      console.log(`  ${words}: median ${ms(median)}, p95 ${ms(p95)} (${rounds} runs)`);
    }
  } finally {
    await browser.close();
    server.close();
  }
}

async function opening(context: BrowserContext, address: string): Promise<number> {
  const page = await context.newPage();
  const started = performance.now();
  await page.goto(`${address}?notebook=rebuild.md`);
  await page.waitForFunction(
    () => /\d/.test(document.querySelector("#cell-rebuild-md-fill")?.textContent ?? ""),
    undefined,
    { polling: 10, timeout: 20_000 },
  );
  const took = performance.now() - started;
  await page.close();
  return took;
}

/** Keeps 50 states, each with a table of forty beds, as many years of changes would. */
async function keepStates(context: BrowserContext, address: string): Promise<void> {
  const page = await context.newPage();
  await page.goto(`${address}engine.html`);
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const main = "rebuild.md";
        const at = "2026-04-25T14:00:00.000Z";
        const row = ["1", "8 ft", "4 ft", "2", "2x12", "treated"];
        const opening = indexedDB.open("bedwright");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const step = opening.result.transaction("kept", "readwrite");
          const store = step.objectStore("kept");
          const numbers = Array.from({ length: 50 }, (_, index) => index + 1);
          for (const number of numbers) {
            const beds = {
              kind: "table",
              name: "beds",
              columns: ["bed", "length", "width", "courses", "section", "timber"],
              rows: Array.from({ length: 40 }, () => [...row.slice(0, -1), `treated ${number}`]),
              decimal: ".",
            };
            const entered = { "garden.md#beds": beds, "rebuild.md#kerf": `${number}/64 in` };
            const files = [main, "garden.md"];
            const state = { kind: "state", version: 1, main, number, at, why: "typing" };
            store.put(
              { ...state, apart: false, files, texts: {}, entered },
              `state:${main}:${number}`,
            );
          }
          const states = numbers.map((number) => ({ number, at, why: "typing" }));
          store.put({ kind: "states", version: 1, main, next: 51, states }, `states:${main}`);
          step.onerror = () => failed(step.error);
          step.oncomplete = () => done();
        };
      }),
  );
  await page.close();
}
