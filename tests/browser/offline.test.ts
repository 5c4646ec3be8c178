import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { again, answer, field, flags, settled } from "./harness.ts";
import { Builds, gotBy } from "./two-builds.ts";

let browser: Browser;
const builds = new Builds();

beforeAll(async () => {
  await builds.make("first");
  await builds.make("second");
  await builds.make("spoilt");
  builds.spoil("spoilt", "room/work.js");
  await builds.make("partial");
  builds.leaveOut("partial", "room/facts.js");
  browser = await chromium.launch({ executablePath: needChromium(), args: flags });
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await builds.remove();
});

/** Opens a notebook and waits until a service worker is in charge of the page. */
async function visit(context: BrowserContext, file: string): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(`${builds.address}?notebook=${file}`);
  await page.locator(".cell.hasvalue").first().waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return page;
}

const versionOf = (page: Page) =>
  page.evaluate(() => document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content);

const cachesOf = (page: Page) =>
  page.evaluate(async () => (await caches.keys()).filter((name) => name.includes("files")));

const lookForNewer = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });

/** Looks for a newer version, and waits until that is ready or given up. */
const endOfUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const ended = new Promise<string>((done) => {
      registration.addEventListener("updatefound", () => {
        const { installing } = registration;
        installing?.addEventListener("statechange", () => {
          if (installing.state !== "installing") done(installing.state);
        });
      });
    });
    await registration.update().catch(() => undefined);
    return ended;
  });

describe("without a network", again, () => {
  it("works after the first visit: notebooks, solver, parts that were never opened", async () => {
    await builds.serve("first");
    const context = await browser.newContext();
    const page = await visit(context, "rebuild.md");
    await settled(page);
    const total = await answer(page, "total").textContent();
    await builds.stop();
    await context.setOffline(true);
    await page.reload();
    await page.locator(".cell.hasvalue").first().waitFor();
    await settled(page);
    expect(await answer(page, "total").textContent()).toBe(total);
    // The closed frame comes from the service worker now, and is closed by its own answer.
    const frame = page.frames().find((one) => one.url().includes("engine.html"));
    expect(frame?.url()).toContain("sealed");
    expect(await frame?.evaluate(() => self.origin)).toBe("null");
    expect(
      await frame?.evaluate(() =>
        fetch("notebooks/list.json").then(
          () => "got",
          () => "refused",
        ),
      ),
    ).toBe("refused");
    // Spare boards are another plan: the solver, too, is there.
    await field(page, "spareBoards").fill("1");
    await page.waitForFunction((before) => {
      const now = document.querySelector('.tl [data-cell$="#total"] .n')?.textContent;
      return now !== before && !document.querySelector(".cell.busy");
    }, total);
    await page.getByText("This notebook", { exact: true }).click();
    await page.getByRole("button", { name: "Share" }).click();
    await page.locator("dialog.share").waitFor();
    await page.goto(`${builds.address}?notebook=one-bed.md`);
    await page.locator(".cell.hasvalue").first().waitFor();
    const files = Object.keys(builds.hashes("first"));
    expect(await gotBy(page, files)).toEqual(builds.hashes("first"));
    await context.close();
  }, 120_000);
});

describe("a newer version", again, () => {
  it("is never mixed with the one before: a page keeps its own until it is closed", async () => {
    await builds.serve("first");
    const first = builds.hashes("first");
    const second = builds.hashes("second");
    expect(Object.keys(first).filter((path) => first[path] !== second[path])).toHaveLength(5);
    const context = await browser.newContext();
    const old = await visit(context, "one-bed.md");
    const firstVersion = await versionOf(old);
    await builds.serve("second");
    await lookForNewer(old);
    await old.getByText("A newer version of the workbook is ready").waitFor();
    expect(await gotBy(old, Object.keys(first))).toEqual(first);
    // Another page still begins with the old version, whole, while the newer one waits.
    const other = await visit(context, "one-bed.md");
    expect(await versionOf(other)).toBe(firstVersion);
    expect(await gotBy(other, Object.keys(first))).toEqual(first);

    await other.getByText("A newer version of the workbook is ready").waitFor();
    const text = other.locator(".page input[type=text]").first();
    await text.fill("7 ft");
    await other.getByRole("button", { name: "Use it" }).click();
    await other.waitForFunction(
      (before) =>
        document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content !== before &&
        document.querySelector(".cell.hasvalue"),
      firstVersion,
    );
    expect(await text.inputValue()).toBe("7 ft");
    expect(await gotBy(other, Object.keys(second))).toEqual(second);
    // The page that was open goes on with what it had, also after the worker was ended meanwhile.
    expect(await gotBy(old, Object.keys(first))).toEqual(first);
    const cdp = await context.newCDPSession(other);
    await cdp.send("ServiceWorker.enable");
    await cdp.send("ServiceWorker.stopAllWorkers");
    expect(await gotBy(old, Object.keys(first))).toEqual(first);
    expect(await cachesOf(old)).toHaveLength(2);

    await old.close();
    await expect
      .poll(
        async () => {
          await other.reload();
          return cachesOf(other);
        },
        { timeout: 40_000, interval: 2_000 },
      )
      .toEqual([`bedwright-files-${await versionOf(other)}`]);
    await context.close();
  }, 150_000);

  for (const name of ["spoilt", "partial"])
    it(`that is ${name} is refused, and the one before stays whole`, async () => {
      await builds.serve("first");
      const context = await browser.newContext();
      const page = await visit(context, "one-bed.md");
      const before = await cachesOf(page);
      await builds.serve(name);
      expect(await endOfUpdate(page)).toBe("redundant");
      expect(await page.locator(".newer").count()).toBe(0);
      expect(await cachesOf(page)).toEqual(before);
      await builds.stop();
      await context.setOffline(true);
      await page.reload();
      await page.locator(".cell.hasvalue").first().waitFor();
      expect(await gotBy(page, Object.keys(builds.hashes("first")))).toEqual(
        builds.hashes("first"),
      );
      await context.close();
    }, 90_000);
});
