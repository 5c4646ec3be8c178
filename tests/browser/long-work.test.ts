import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { bundleText } from "../../build/steps/bundle.ts";
import { again, cell, field, openNotebook, useSite } from "./harness.ts";

const site = useSite();

const file = "slow.md";
const notebook = `# Slow

\`\`\`js cell least "Fewest boards"
countEntry("10", { max: 99 })
\`\`\`

\`\`\`js cell then "And then"
textEntry("ends")
\`\`\`

\`\`\`js cell plan quiet "The plan"
planBoards({ boards: least, then })
\`\`\`

\`\`\`js cell boards "Boards" pinned
plan.boards
\`\`\`

\`\`\`js cell twice "Twice as many"
boards * 2
\`\`\`

\`\`\`js cell asked "Asked of this worker"
plan.asked
\`\`\`
`;

/** A value as it was first seen, and whether work went on while it stood. */
interface Seen {
  readonly text: string;
  busy: boolean;
  words: string;
}

let standIn = "";
beforeAll(async () => {
  standIn = await bundleText("tests/browser/stand-in-work.ts");
});

/** Opens the notebook, its long work done by the stand-in, and notes each value of `twice` as it comes. */
async function open(then: string): Promise<Page> {
  const page = await site.page({ notebooks: { [file]: notebook.replace('"ends"', `"${then}"`) } });
  await page
    .context()
    .route("**/room/work.js", (route) =>
      route.fulfill({ body: standIn, contentType: "text/javascript" }),
    );
  await openNotebook(page, site, file);
  await page.evaluate((id) => {
    const seen: Seen[] = [];
    Object.assign(globalThis, { seen });
    const look = () => {
      const text = document.querySelector(`${id} .n`)?.textContent;
      if (!text) return;
      if (text !== seen.at(-1)?.text) seen.push({ text, busy: false, words: "" });
      const last = seen.at(-1) as Seen;
      last.busy ||= document.querySelector(".cell.busy, .tl .busy") !== null;
      last.words += document.querySelector(".sawing:not([hidden])")?.textContent ?? "";
    };
    look();
    new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
  }, "#cell-slow-md-twice");
  return page;
}

const seen = (page: Page) => page.evaluate(() => (globalThis as unknown as { seen: Seen[] }).seen);
/** The values that came; where the machine is busy a step may be passed over, never the last. */
const steps = async (page: Page) => (await seen(page)).map(({ text }) => text);
const value = (page: Page, name: string) => cell(page, file, name).locator(".n").textContent();
const has = (page: Page, name: string, text: string) =>
  cell(page, file, name).locator(".n", { hasText: text }).waitFor();
const stopButton = (page: Page) =>
  cell(page, file, "plan").getByRole("button", { name: "Stop this" });
const busy = (page: Page) => page.locator(".cell.busy, .tl .busy");

/** Presses "Stop this", and gives how long it took until nothing was being worked out. */
async function stop(page: Page): Promise<number> {
  await stopButton(page).waitFor();
  return stopButton(page).evaluate(
    (button) =>
      new Promise<number>((done) => {
        const began = performance.now();
        const look = () => {
          if (document.querySelector(".cell.busy")) requestAnimationFrame(look);
          else done(performance.now() - began);
        };
        (button as HTMLButtonElement).click();
        look();
      }),
  );
}

describe("long work", again, () => {
  it("gives better values while one watches, and says that it still goes on", async () => {
    const page = await open("ends");
    await has(page, "twice", "20");
    await busy(page).first().waitFor({ state: "detached" });
    expect(await cell(page, file, "plan").locator(".sawing").isVisible()).toBe(false);
    const came = await seen(page);
    const texts = came.map(({ text }) => text);
    expect(texts.length).toBeGreaterThan(1);
    expect(texts).toEqual(["26", "24", "22", "20"].filter((step) => texts.includes(step)));
    expect(texts.at(-1)).toBe("20");
    for (const better of came.slice(0, -1)) expect(better.busy).toBe(true);
    expect(came.map(({ words }) => words).join()).toContain("will not do");
    expect(await cell(page, file, "plan").isVisible()).toBe(false);
    await page.context().close();
  });

  it("keeps its best so far when it is stopped, and can be started again", async () => {
    const page = await open("goes on");
    await has(page, "twice", "22");
    expect(await stop(page)).toBeLessThan(500);
    expect(await value(page, "boards")).toBe("11");
    const note = cell(page, file, "plan").locator(".cut-short");
    expect(await note.textContent()).toContain("best found by then");
    await note.getByRole("button", { name: "Start it again" }).click();
    await has(page, "asked", "2");
    await has(page, "twice", "22");
    expect(await note.isVisible()).toBe(false);
    await page.context().close();
  });

  it("is an error that can be read where it is stopped before it found anything", async () => {
    const page = await open("finds nothing");
    expect(await stop(page)).toBeLessThan(500);
    const error = cell(page, file, "plan").locator(".broken");
    await cell(page, file, "plan").locator("summary").click();
    expect(await error.isVisible()).toBe(true);
    expect(await error.textContent()).toContain("It was stopped.");
    await field(page, "then", file).fill("ends");
    await has(page, "twice", "20");
    await page.context().close();
  });

  it("keeps it though the worker hears nothing, within half a second, and goes on in a new one", async () => {
    const page = await open("hangs");
    await has(page, "twice", "22");
    // Until it is as deaf as it can be.
    await page.waitForTimeout(800);
    expect(await stop(page)).toBeLessThan(500);
    expect(await value(page, "twice")).toBe("22");
    await field(page, "then", file).fill("ends");
    await has(page, "twice", "20");
    expect(await value(page, "asked")).toBe("1");
    await busy(page).first().waitFor({ state: "detached" });
    await page.context().close();
  });

  it("is cancelled when it is overtaken: nothing more comes of it, and the same worker goes on", async () => {
    const page = await open("goes on");
    await cell(page, file, "twice").locator(".n").waitFor();
    await field(page, "least", file).fill("40");
    await has(page, "twice", "82");
    expect(await value(page, "asked")).toBe("2");
    const values = await steps(page);
    const since = values.slice(values.findIndex((each) => Number(each) > 80));
    expect(since).toEqual(["86", "84", "82"].filter((step) => since.includes(step)));
    await page.context().close();
  });

  it("is ended where it is overtaken and hears nothing", async () => {
    const page = await open("hangs");
    await has(page, "twice", "22");
    await page.waitForTimeout(800);
    const began = Date.now();
    await field(page, "least", file).fill("40");
    await page.waitForFunction(() =>
      (globalThis as unknown as { seen: Seen[] }).seen.some(({ text }) => Number(text) > 80),
    );
    // The hung worker would never have given it; how soon a new one does is the machine's to say.
    expect(Date.now() - began).toBeLessThan(10_000);
    expect(await value(page, "asked")).toBe("1");
    await page.context().close();
  });
});
