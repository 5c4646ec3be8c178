import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, choose, openNotebook, settled, useSite } from "./harness.ts";
import { paths } from "./paths.ts";
import { violations } from "./violations.ts";

const site = useSite();

const sizes = [
  ["wide", { viewport: { width: 1280, height: 800 } }],
  ["on a phone", { viewport: { width: 360, height: 740 }, hasTouch: true }],
  ["dark", { viewport: { width: 1024, height: 800 }, colorScheme: "dark" as const }],
] as const;

async function menu(page: Page): Promise<void> {
  await page.locator("details.acts > summary").click();
}

/** How far anything but what may scroll by itself reaches past the window. */
async function overflow(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
}

describe("screens of a notebook of one's own", again, () => {
  it.each(sizes)(
    "hold nothing for axe to mend, %s",
    async (_, options) => {
      const page = await site.page({ notebooks: paths, reducedMotion: "reduce", ...options });
      await openNotebook(page, site, "path.md");
      await settled(page);
      await menu(page);
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press("Escape");
      await choose(page, "Make it mine");
      expect(await violations(page)).toEqual([]);
      const pane = page.getByRole("dialog");
      await pane.getByLabel("What is it called?").fill("Mine");
      await pane.getByRole("button", { name: "Make it mine" }).click();
      await page.locator("h1", { hasText: "Mine" }).waitFor();
      await settled(page);
      await choose(page, "Put it away");
      expect(await violations(page)).toEqual([]);
      await page.getByRole("dialog").getByRole("button", { name: "Put it away" }).click();
      await page.locator(".putaway summary").click();
      expect(await violations(page)).toEqual([]);
      await page.getByRole("button", { name: /Bring it back.*Mine/ }).click();
      await page.locator(".books", { hasText: "Mine" }).waitFor();
      expect(await violations(page)).toEqual([]);
      await page.context().close();
    },
    90_000,
  );

  it("hold nothing for axe to mend in the room", async () => {
    const page = await site.page({ notebooks: paths });
    await openNotebook(page, site, "path.md");
    await settled(page);
    await page.getByRole("radio", { name: "Room" }).check({ force: true });
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });
});

describe("without a mouse", again, () => {
  it("the menu opens, closes and gives its focus back", async () => {
    const page = await site.page({ notebooks: paths });
    await openNotebook(page, site, "path.md");
    await settled(page);
    const summary = page.locator("details.acts > summary");
    await summary.focus();
    await page.keyboard.press("Enter");
    const first = page.locator("details.acts button").first();
    await first.waitFor();
    await page.keyboard.press("Tab");
    expect(await first.evaluate((one) => one === document.activeElement)).toBe(true);
    const outline = await first.evaluate((one) => getComputedStyle(one).outlineWidth);
    expect(Number.parseFloat(outline)).toBeGreaterThanOrEqual(2);
    await page.keyboard.press("Escape");
    expect(await summary.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await first.isVisible()).toBe(false);
    // A sheet gives focus back to where it was opened from, though the menu has closed.
    await page.keyboard.press("Enter");
    await first.waitFor();
    await first.press("Enter");
    await page.getByRole("dialog").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true);
    await page.context().close();
  });
});

describe("enlarged four times", again, () => {
  // A window of 1280 pixels enlarged to 400 % is 320 wide.
  it.each(["shelf", "read", "write", "room"])("%s needs no scrolling sideways", async (view) => {
    const page = await site.page({ notebooks: paths, viewport: { width: 320, height: 256 } });
    if (view === "shelf") {
      await page.goto(site.address);
      await page.locator(".books").waitFor();
    } else {
      await openNotebook(page, site, "path.md");
      await settled(page);
      if (view !== "read")
        await page
          .getByRole("radio", { name: view === "write" ? "Write" : "Room" })
          .check({ force: true });
    }
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    await page.context().close();
  });
});
