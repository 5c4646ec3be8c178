import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { SiteServer } from "./ways-out/site-server.ts";

const server = new SiteServer();
const browsers: Browser[] = [];

beforeAll(() => server.listen());
afterAll(async () => {
  for (const browser of browsers) await browser.close();
  server.close();
});

async function newPage(...flags: string[]): Promise<Page> {
  const browser = await chromium.launch({
    executablePath: needChromium(),
    args: ["--no-sandbox", "--disable-gpu", "--no-first-run", ...flags],
  });
  browsers.push(browser);
  const page = await browser.newPage();
  page.setDefaultTimeout(20_000);
  return page;
}

const notebook = (formula: string) => `# Runs away

\`\`\`js cell turns "Turns"
countEntry("1", { max: 100 })
\`\`\`

\`\`\`js cell wild "The wild one"
${formula}
\`\`\`

\`\`\`js cell other "Other"
turns + 1
\`\`\`
`;

async function open(page: Page, formula: string): Promise<void> {
  server.files.set("notebooks/wild.md", notebook(formula));
  await page.goto(`${server.address}?notebook=wild.md`);
  await expect.poll(() => text(page, "other")).toContain("2");
}

const text = (page: Page, name: string) =>
  page.locator(`#cell-wild-md-${name} .held`).textContent();

const turns = (page: Page) => page.locator("#cell-wild-md-turns input");

describe("a cell that hoards objects", () => {
  it("takes its room with it and not the page, which says so and goes on without the cell", async () => {
    // With the least heap the end comes soon. The tool that drives the browser takes the end of any
    // process for the page's, so the page itself tells what it shows.
    const page = await newPage("--js-flags=--max-old-space-size=120");
    await open(
      page,
      "const all = []; while (turns > 5) all.push({ n: all.length }); return all.length",
    );
    await page.evaluate(`setInterval(() => fetch("/report", { method: "POST", body: JSON.stringify({
      notice: document.querySelector(".roomnotice").textContent,
      wild: document.querySelector("#cell-wild-md-wild").textContent,
      other: document.querySelector("#cell-wild-md-other .held").textContent,
      kept: document.querySelector("#cell-wild-md-turns input").value,
    }) }), 250)`);
    // As if typed later, when the tool sees nothing any more: the notebook can still be changed.
    await page.evaluate(`setTimeout(() => {
      const field = document.querySelector("#cell-wild-md-turns input");
      field.value = "3";
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }, 15000)`);
    await turns(page).fill("9");
    const last = () => server.reports.at(-1) as Record<string, string>;
    await expect
      .poll(() => last().notice, { timeout: 14_000 })
      .toContain("The wild one was ended by the browser");
    await expect.poll(() => last().wild, { timeout: 5_000 }).toContain("was stopped");
    await expect.poll(() => last().other, { timeout: 5_000 }).toContain("10");
    expect(last().kept).toBe("9");
    await expect.poll(() => last().other, { timeout: 15_000 }).toContain("4");
  }, 60_000);
});

describe("a formula that gives value after value", () => {
  it("is named where a later step never ends", async () => {
    const page = await newPage();
    await open(page, "yield 1; yield 2; while (turns > 0) {}");
    const notice = page.getByRole("alert");
    await notice.filter({ hasText: "The wild one is still at work" }).waitFor();
    await page.getByRole("button", { name: "Stop it" }).click();
    await page.locator("#cell-wild-md-wild .broken").waitFor();
    await turns(page).fill("5");
    await expect.poll(() => text(page, "other")).toContain("6");
  }, 40_000);
});

describe("a room that hangs where nobody knows the cell", () => {
  it("is started again by itself once, and then waits for the reader", async () => {
    const page = await newPage();
    server.files.set("notebooks/wild.md", notebook("1"));
    server.files.set(
      "room/room.js",
      `onmessage = ({ ports: [port] }) => { if (!port) return; port.postMessage({ kind: "ready" });
        port.onmessage = ({ data }) => { if (data.kind === "open") for (;;) ; }; };`,
    );
    await page.goto(`${server.address}?notebook=wild.md`);
    const stop = page.getByRole("button", { name: "Stop it" });
    await stop.click();
    await page.getByRole("alert").waitFor({ state: "hidden" });
    await stop.click();
    const again = page.getByRole("button", { name: "Start it again" });
    await again.waitFor();
    await page.waitForTimeout(3_000);
    expect(await stop.count()).toBe(0);
    server.files.delete("room/room.js");
    await page.reload();
    await expect.poll(() => text(page, "other")).toContain("2");
  }, 40_000);
});
