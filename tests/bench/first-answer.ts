import { join } from "node:path";
import { chromium } from "playwright-core";
import { needChromium } from "../../build/chromium.ts";
import { serveFolder } from "../../build/serve.ts";
import { ms, spread } from "./statistics.ts";

const flags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * First load, nothing cached, to the first answer of the main notebook that needs no solver (how
 * much fill), and to the total, which does; then from typing in an entry to the answer on the page.
 */
export async function firstAnswer(): Promise<void> {
  const { server, address } = await serveFolder(join(process.cwd(), "build/out/site"), 0);
  const browser = await chromium.launch({ executablePath: needChromium(), args: flags });
  const answers: number[] = [];
  const totals: number[] = [];
  const typed: number[] = [];
  try {
    for (let run = 0; run < 6; run += 1) {
      const context = await browser.newContext();
      const page = await context.newPage();
      const started = performance.now();
      await page.goto(`${address}?notebook=rebuild.md`);
      await shows(page, "fill", /\d/);
      if (run > 0) answers.push(performance.now() - started);
      await shows(page, "total", /\d/);
      if (run > 0) totals.push(performance.now() - started);
      typed.push(...(await typeDepths(page)));
      await context.close();
    }
  } finally {
    await browser.close();
    server.close();
  }
  console.log("firstAnswer: from an empty browser to the first answer, and to the total");
  const print = (name: string, times: readonly number[]) => {
    const { median, p95 } = spread(times);
    console.log(`  ${name}: median ${ms(median)}, p95 ${ms(p95)} (${times.length} runs)`);
  };
  print("fill, without the solver", answers);
  print("total, with the solver", totals);
  print("typing in an entry to the answer on the page", typed);
}

type Page = import("playwright-core").Page;

async function shows(page: Page, cell: string, pattern: RegExp): Promise<void> {
  await page.waitForFunction(
    ([id, source]) => {
      const element = document.querySelector(`#${id}`);
      return new RegExp(source as string).test(element?.textContent ?? "");
    },
    [`cell-rebuild-md-${cell}`, pattern.source] as const,
    { polling: 10, timeout: 20_000 },
  );
}

/** Types depths of mulch; milliseconds from each to the change of the answer, seen in the page. */
function typeDepths(page: Page): Promise<readonly number[]> {
  return page.evaluate(async () => {
    const field = document.querySelector<HTMLInputElement>("#cell-rebuild-md-mulchDepth input");
    const answer = document.querySelector("#cell-rebuild-md-mulch");
    if (!field || !answer) throw new Error("the entry or its answer is not on the page");
    const times: number[] = [];
    for (let run = 0; run < 20; run += 1) {
      const before = answer.textContent;
      const started = performance.now();
      field.value = `${1 + ((run % 9) + 1) / 8} in`;
      field.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise<void>((changed) => {
        const observer = new MutationObserver(() => {
          if (answer.textContent === before) return;
          observer.disconnect();
          changed();
        });
        observer.observe(answer, { subtree: true, childList: true, characterData: true });
      });
      times.push(performance.now() - started);
    }
    return times;
  });
}
