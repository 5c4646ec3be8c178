import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
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
const plans = 12;
const runs = 5;

const cell = (info: string, formula: string) => `\`\`\`js cell ${info}\n${formula}\n\`\`\`\n\n`;

/** Sixty cells: ten entries, and fifty formulas on quantities that rest on them and on each other. */
function sixtyCells(): string {
  const entries = Array.from({ length: 10 }, (_, at) =>
    cell(`e${at} "Entry ${at}"`, `lengthEntry("${at + 1} ft")`),
  );
  const formulas = Array.from({ length: 50 }, (_, at) => {
    const pinned = at >= 44 ? " pinned" : "";
    const before = at === 0 ? "e0" : `f${at - 1}`;
    return cell(`f${at}${pinned} "Sum ${at}"`, `${before} + e${at % 10} * ${1 + (at % 3)}`);
  });
  return `# Sixty cells\n\n${entries.join("")}${formulas.join("")}`;
}

/**
 * Twelve kept plans worked out: from asking for the sheet to the last figure of it, with the room
 * beside the page still to be opened; then all of them once more, printed in the other units.
 */
export async function plansSideBySide(): Promise<void> {
  const { server, address } = await serveFolder(join(process.cwd(), "build/out/site"), 0);
  const browser = await chromium.launch({ executablePath: needChromium(), args: flags });
  try {
    console.log(`plans: ${plans} kept plans worked out in the page (${runs} runs)`);
    for (const [words, file, entry] of [
      ["60 cells, sums of lengths", "sixty.md", "e0"],
      ["one-bed.md, boards planned for each", "one-bed.md", "length"],
    ] as const) {
      const page = await (await browser.newContext()).newPage();
      await page.route("**/notebooks/sixty.md", (route) =>
        route.fulfill({ body: sixtyCells(), contentType: "text/markdown; charset=utf-8" }),
      );
      await page.goto(`${address}?notebook=${file}`);
      await page.locator(".tl dd .n").first().waitFor();
      await keepTwelve(page, `#cell-${file.replace(".", "-")}-${entry} input`);
      const opened: number[] = [];
      const again: number[] = [];
      for (let run = 0; run < runs; run += 1) {
        opened.push(await timed(page, () => choose(page, "Plans side by side")));
        const units = run % 2 === 0 ? "metric" : "ft, in";
        again.push(
          await timed(page, () => page.locator(".tools label", { hasText: units }).click()),
        );
        await page.getByRole("button", { name: "Back to the notebook" }).click();
      }
      const print = (what: string, times: readonly number[]) => {
        const { median, worst } = spread(times);
        console.log(`  ${words}, ${what}: median ${ms(median)}, worst ${ms(worst)}`);
      };
      print("opened", opened);
      print("printed anew", again);
      await page.context().close();
    }
  } finally {
    await browser.close();
    server.close();
  }
}

async function choose(page: Page, words: string): Promise<void> {
  await page.locator("details.acts > summary").click();
  await page.locator("details.acts").getByRole("button", { name: words }).click();
}

async function keepTwelve(page: Page, entry: string): Promise<void> {
  for (let count = 0; count < plans; count += 1) {
    await page
      .locator(entry)
      .first()
      .fill(`${count + 3} ft`);
    await choose(page, "Keep as a plan");
    const pane = page.locator("dialog");
    await pane.getByRole("button", { name: "Keep", exact: true }).click();
    await pane.getByRole("button", { name: "Back to the notebook" }).click();
  }
}

/** Milliseconds from an act to the moment at which the sheet says that all plans stand. */
async function timed(page: Page, act: () => Promise<void>): Promise<number> {
  await page.evaluate(() => {
    for (const line of document.querySelectorAll(".going")) line.textContent = "";
  });
  const started = performance.now();
  await act();
  await page.waitForFunction(
    () => document.querySelector(".going")?.textContent === "All plans are worked out.",
    undefined,
    { polling: 10, timeout: 120_000 },
  );
  return performance.now() - started;
}
