import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openCell, openOwn, own, sums, toWriting, write } from "./editing.ts";
import { again, answer, field, openNotebook, useSite } from "./harness.ts";
import { diary, keptUnder, putKept } from "./kept.ts";

const site = useSite();
const notebooks = { "diary.md": diary, "sums.md": sums };

const line = (page: Page) => field(page, "line", "diary.md");
const troubles = (page: Page, words: string) =>
  page.locator(".troubles", { hasText: words }).first();

interface FullWindow {
  isFull: boolean;
}

/** The disk is full as long as the page says so. */
async function makeFull(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (...record) {
      if ((window as unknown as FullWindow).isFull)
        throw new DOMException("The disk is full.", "QuotaExceededError");
      return put.apply(this, record);
    };
    (window as unknown as FullWindow).isFull = true;
  });
}

const room = (page: Page) =>
  page.evaluate(() => {
    (window as unknown as FullWindow).isFull = false;
  });

describe("a disk that is full", again, () => {
  it("is said, nothing is lost, and it is kept when there is room again", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "diary.md");
    await line(page).fill("before");
    await expect
      .poll(() => keptUnder(page, "entered:diary.md"))
      .toMatchObject({
        cells: { line: "before" },
      });
    await makeFull(page);
    await page.reload();
    await line(page).fill("while it was full");
    await troubles(page, "There is no room left").waitFor();
    expect(await troubles(page, "save the notebook as a file").count()).toBe(1);
    expect(await keptUnder(page, "entered:diary.md")).toMatchObject({ cells: { line: "before" } });
    // The page goes on as if nothing were: 17 letters.
    await answer(page, "letters").filter({ hasText: "17" }).waitFor();
    await page.reload();
    await expect.poll(() => line(page).inputValue()).toBe("while it was full");
    await troubles(page, "There is no room left").waitFor();
    await room(page);
    await expect
      .poll(() => keptUnder(page, "entered:diary.md"), { timeout: 15_000 })
      .toMatchObject({ cells: { line: "while it was full" } });
    await troubles(page, "There is no room left").waitFor({ state: "detached" });
    await page.context().close();
  });

  it("does not lose what is written in a notebook of one's own", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await makeFull(page);
    await page.reload();
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    await toWriting(page);
    await openCell(page, "twice");
    await write(page, "twice", "side * 3");
    await own(page, "total").locator(".n", { hasText: "32" }).first().waitFor();
    await troubles(page, "There is no room left").waitFor();
    await page.reload();
    await own(page, "total").locator(".n", { hasText: "32" }).first().waitFor();
    await room(page);
    const file = new URL(page.url()).searchParams.get("notebook");
    await expect
      .poll(() => keptUnder(page, `document:${file}`), { timeout: 15_000 })
      .toMatchObject({ text: expect.stringContaining("side * 3") });
    await page.context().close();
  });
});

describe("what a newer version keeps", again, () => {
  it("is not written over, entry or document, and that is said", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "diary.md");
    const newer = { kind: "entered", version: 2, file: "diary.md", rooms: [] };
    await putKept(page, "entered:diary.md", newer);
    await page.reload();
    await troubles(page, "written by a newer version").waitFor();
    await line(page).fill("mine");
    await answer(page, "letters").filter({ hasText: "4" }).waitFor();
    await page.waitForTimeout(300);
    expect(await keptUnder(page, "entered:diary.md")).toEqual(newer);
    // It waits for the day when it can be written.
    await page.reload();
    await expect.poll(() => line(page).inputValue()).toBe("mine");
    await page.context().close();
  });

  it("instead of a shipped notebook is said, and left as it is", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "diary.md");
    const newer = { kind: "document", version: 2, place: "diary.md", pages: [] };
    await putKept(page, "document:diary.md", newer);
    await page.reload();
    await troubles(page, "What is kept for diary.md was written by a newer version").waitFor();
    expect(await keptUnder(page, "document:diary.md")).toEqual(newer);
    await page.context().close();
  });

  it("in another tab has the whole store to itself: this page says so and writes nothing", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "diary.md");
    const other = await page.context().newPage();
    await other.goto(`${site.address}engine.html`);
    await other.evaluate(
      () =>
        new Promise<void>((done, failed) => {
          const opening = indexedDB.open("bedwright", 99);
          opening.onerror = () => failed(opening.error);
          opening.onsuccess = () => done();
        }),
    );
    await line(page).fill("mine");
    await troubles(page, "A newer version of this workbook").waitFor();
    expect(await line(page).inputValue()).toBe("mine");
    await page.reload();
    await troubles(page, "A newer version of this workbook").waitFor();
    await page.context().close();
  });
});

describe("a browser that keeps nothing", again, () => {
  it("says so at once; the page works all the same", async () => {
    const page = await site.page({ notebooks });
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("not here", "SecurityError");
      };
    });
    await openNotebook(page, site, "diary.md");
    await troubles(page, "keeps nothing for this page").waitFor();
    await line(page).fill("mine");
    await answer(page, "letters").filter({ hasText: "4" }).waitFor();
    await page.context().close();
  });

  it("or lets go of it half way: that is said, and it is kept once it can be", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "diary.md");
    await page.evaluate(() => {
      const { transaction } = IDBDatabase.prototype;
      IDBDatabase.prototype.transaction = function (...given) {
        if (!(window as unknown as FullWindow).isFull) return transaction.apply(this, given);
        throw new DOMException("The connection is closing.", "InvalidStateError");
      };
      (window as unknown as FullWindow).isFull = true;
    });
    await line(page).fill("mine");
    await troubles(page, "could not write what it keeps").waitFor();
    await room(page);
    await expect
      .poll(() => keptUnder(page, "entered:diary.md"), { timeout: 15_000 })
      .toMatchObject({ cells: { line: "mine" } });
    await page.context().close();
  });
});
