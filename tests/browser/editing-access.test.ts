import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { formula, openCell, openOwn, own, sums, toWriting, write } from "./editing.ts";
import { again, openNotebook, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

const site = useSite();
const notebooks = { "sums.md": sums };
const sidewaysBy = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Opens whatever can be opened in the writing view: a slip with an error, a table, words, the list to add from. */
async function openEverything(page: Page): Promise<void> {
  await openCell(page, "twice");
  await own(page, "twice").getByRole("button", { name: "Rename", exact: true }).click();
  await own(page, "twice").locator(".as-shown > summary").click();
  await own(page, "list").locator(".cellname").click();
  await own(page, "list").locator(".columns-form").waitFor();
  await page.getByRole("button", { name: "Change these words" }).last().click();
  await page.locator(".words-slip").waitFor();
  await page.getByRole("button", { name: "a figure or entry" }).last().click();
  await write(page, "twice", "side * tot");
  await own(page, "twice").locator(".now.wrong").waitFor();
  await own(page, "twice").locator("[role=listbox]").waitFor();
}

describe("the editor can be used by everyone", again, () => {
  it.each([
    ["wide", { viewport: { width: 1280, height: 900 } }],
    ["narrow, by touch", { viewport: { width: 360, height: 740 }, hasTouch: true }],
    ["dark", { viewport: { width: 1024, height: 800 }, colorScheme: "dark" as const }],
  ])(
    "axe finds nothing to mend, and nothing stands out at the side: %s",
    async (_, options) => {
      const page = await site.page({ notebooks, reducedMotion: "reduce", ...options });
      await openOwn(page, site);
      await openEverything(page);
      expect(await violations(page)).toEqual([]);
      expect(await sidewaysBy(page)).toBe(0);
      await page.context().close();
    },
    60_000,
  );

  it("by touch every word that can be chosen is large enough", async () => {
    const page = await site.page({
      notebooks,
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    });
    await openOwn(page, site);
    await openCell(page, "twice");
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>(".own-slip button, .blocktools button, .cellname")]
        .filter((one) => one.offsetParent !== null && one.getBoundingClientRect().height < 44)
        .map((one) => one.textContent),
    );
    expect(small).toEqual([]);
    // The slip takes the whole width there is.
    const box = await own(page, "twice").locator(".own-slip").boundingBox();
    expect(box?.width).toBeGreaterThan(340);
    await page.context().close();
  });

  it("in forced colours what is wrong has a frame, and the field one of its own", async () => {
    const page = await site.page({ notebooks, forcedColors: "active" });
    await openOwn(page, site);
    await openCell(page, "twice");
    await write(page, "twice", "sied");
    const wrong = own(page, "twice").locator(".now.wrong");
    await wrong.waitFor();
    const widths = await own(page, "twice").evaluate((slot) => {
      const of = (selector: string) => getComputedStyle(slot.querySelector(selector) as Element);
      return [of(".now.wrong").borderTopWidth, of(".pad-tray").borderBottomWidth];
    });
    expect(widths).toEqual(["2px", "2px"]);
    await page.context().close();
  });

  it("at 400 % of the size everything stands within the width", async () => {
    // 1280 px wide at 400 % is 320 px.
    const page = await site.page({ notebooks, viewport: { width: 320, height: 256 } });
    await openOwn(page, site);
    await openCell(page, "twice");
    expect(await sidewaysBy(page)).toBe(0);
    await page.context().close();
  });
});

describe("who only reads never meets the editor", again, () => {
  it("a shipped notebook is shown, and says how to make it one's own", async () => {
    const page = await site.page({ notebooks });
    const fetched: string[] = [];
    page.on("request", (request) => fetched.push(new URL(request.url()).pathname));
    await openNotebook(page, site, "sums.md");
    await settled(page);
    expect(await page.locator(".cellname:visible, .blocktools:visible").count()).toBe(0);
    expect(fetched.filter((path) => /slip|writing/.test(path))).toEqual([]);
    await toWriting(page);
    await own(page, "twice").locator(".cellname").click();
    await own(page, "twice").locator(".opened .slip").waitFor();
    expect(await formula(page, "twice").count()).toBe(0);
    expect(await page.getByRole("button", { name: "a figure or entry" }).count()).toBe(0);
    await own(page, "twice").getByRole("button", { name: "Make it mine to change this" }).click();
    await page.getByRole("dialog", { name: "Make it mine" }).waitFor();
    // The formula editor is large; it comes when a cell of one's own is opened, not before.
    expect(fetched.filter((path) => /cell-slip|words-slip/.test(path))).toEqual([]);
    await page.context().close();
  });
});
