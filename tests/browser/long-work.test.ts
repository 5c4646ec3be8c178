import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { bundleText } from "../../build/steps/bundle.ts";
import { cell, field, openNotebook, useSite } from "./harness.ts";

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

let standIn = "";
beforeAll(async () => {
  standIn = await bundleText("tests/browser/stand-in-work.ts");
});

/** Opens the notebook, its long work done by the stand-in, and notes each value of `twice`. */
async function open(then: string): Promise<Page> {
  const page = await site.page({ notebooks: { [file]: notebook.replace('"ends"', `"${then}"`) } });
  await page
    .context()
    .route("**/room/work.js", (route) =>
      route.fulfill({ body: standIn, contentType: "text/javascript" }),
    );
  await openNotebook(page, site, file);
  await page.evaluate((id) => {
    const seen: string[] = [];
    Object.assign(globalThis, { seen });
    const look = () => {
      const text = document.querySelector(`${id} .n`)?.textContent;
      if (text && text !== seen.at(-1)) seen.push(text);
    };
    look();
    new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
  }, "#cell-slow-md-twice");
  return page;
}

const seen = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { seen: string[] }).seen);
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

describe("long work", () => {
  it("gives better values while one watches, and says that it still goes on", async () => {
    const page = await open("ends");
    await has(page, "twice", "24");
    expect(await busy(page).count()).toBeGreaterThan(0);
    const words = cell(page, file, "plan").locator(".sawing");
    await words.filter({ hasText: "will not do" }).waitFor();
    await has(page, "twice", "20");
    await busy(page).first().waitFor({ state: "detached" });
    expect(await words.isVisible()).toBe(false);
    // Where the machine is busy a step may be passed over, never the last, and none comes twice or late.
    const steps = await seen(page);
    expect(steps).toEqual(["26", "24", "22", "20"].filter((step) => steps.includes(step)));
    expect(steps.slice(-2)).toEqual(["22", "20"]);
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
    await has(page, "twice", "26");
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
    await has(page, "twice", "26");
    expect(await value(page, "asked")).toBe("1");
    await has(page, "twice", "20");
    await busy(page).first().waitFor({ state: "detached" });
    await page.context().close();
  });

  it("is cancelled when it is overtaken: nothing more comes of it, and the same worker goes on", async () => {
    const page = await open("goes on");
    await has(page, "twice", "24");
    await field(page, "least", file).fill("40");
    await has(page, "twice", "82");
    expect(await value(page, "asked")).toBe("2");
    const values = (await seen(page)).map(Number);
    const since = values.slice(values.findIndex((each) => each > 80));
    expect(since).toEqual([86, 84, 82]);
    await page.context().close();
  });

  it("is ended where it is overtaken and hears nothing", async () => {
    const page = await open("hangs");
    await has(page, "twice", "22");
    await page.waitForTimeout(800);
    const began = Date.now();
    await field(page, "least", file).fill("40");
    await has(page, "twice", "86");
    expect(Date.now() - began).toBeLessThan(3_000);
    expect(await value(page, "asked")).toBe("1");
    await page.context().close();
  });
});
