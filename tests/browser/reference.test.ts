import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, choose, openNotebook, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

const site = useSite();
async function open(page: Page, rest = ""): Promise<void> {
  await page.goto(`${site.address}?reference${rest}`);
  await page.locator(".refbody > *").first().waitFor();
}

const search = (page: Page) => page.getByRole("searchbox");
const found = (page: Page) => page.locator(".refbody .namelist > li > a");
const examples = (page: Page) => page.locator(".example");

describe("the reference", again, () => {
  it("finds by name, rule and option as one types, and says how many", async () => {
    const page = await site.page();
    await open(page);
    expect(await found(page).count()).toBeGreaterThan(200);
    await search(page).fill("kerf shortfall");
    await page.locator(".count", { hasText: /\d+ names have all these words/ }).waitFor();
    const names = await found(page).allTextContents();
    expect(names).toContain("planBoards");
    expect(names.length).toBeLessThan(60);
    const said = await page.locator(".count").textContent();
    expect(said).toContain(`${names.length} names`);
    expect(new URL(page.url()).searchParams.get("find")).toBe("kerf shortfall");
    await search(page).fill("kerf zzz");
    await page.locator(".count", { hasText: "Nothing has all these words" }).waitFor();
    await page.context().close();
  });

  it("is gone through by keys: from the field along what was found, into a name and back", async () => {
    const page = await site.page();
    await open(page, "&find=settled+volume");
    expect(await search(page).inputValue()).toBe("settled volume");
    await search(page).focus();
    await page.keyboard.press("ArrowDown");
    const first = await page.evaluate(() => document.activeElement?.textContent);
    expect(first).toBe(await found(page).first().textContent());
    await page.keyboard.press("ArrowUp");
    expect(await search(page).evaluate((field) => field === document.activeElement)).toBe(true);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.locator(".named").waitFor();
    const heading = page.locator(".named h2");
    await heading.and(page.locator(":focus")).waitFor();
    expect(new URL(page.url()).searchParams.get("reference")).toBe(first);
    await page.goBack();
    await found(page).first().waitFor();
    expect(await search(page).inputValue()).toBe("settled volume");
    await page.context().close();
  });

  it("shows a function with its options, rule, source, refusals and an example worked out just now", async () => {
    const page = await site.page();
    await open(page, "=bedFill");
    const named = page.locator('.named[data-name="bedFill"]');
    await named.locator(".example[data-state=done]").waitFor();
    expect(await named.locator(".state").textContent()).toBe("Worked out just now");
    const given = await named.locator(".gives b").allTextContents();
    expect(given.map((text) => text.replace(/\s/g, " "))).toEqual([
      "2″",
      "1.26 cu yd",
      "1.44 cu yd",
    ]);
    const text = (await named.textContent()) ?? "";
    for (const words of ["options.depth", "may be left out", "inside area ×", "common practice"])
      expect(text).toContain(words);
    await page.locator(".top label", { hasText: "metric" }).click();
    await named.locator(".gives b", { hasText: /^960\sL$/ }).waitFor();
    await page.context().close();
  });

  it("works long examples out only when asked", async () => {
    const page = await site.page();
    await open(page, "=planBoards");
    const example = examples(page).first();
    await example.scrollIntoViewIfNeeded();
    expect(await example.getAttribute("data-state")).toBe("waits");
    await example.getByRole("button", { name: "Work it out" }).click();
    await example.and(page.locator("[data-state=done]")).waitFor();
    expect(await example.locator(".gives").textContent()).toMatch(/11\s?7⁄8″/);
    await page.context().close();
  }, 60_000);

  it("works examples out as they come into sight, and each gives what its comment says", async () => {
    const page = await site.page({ viewport: { width: 1280, height: 2400 } });
    let walked = 0;
    for (const part of ["soil", "entries", "measure"]) {
      await open(page, `&part=${part}`);
      const shown = examples(page).filter({ hasNot: page.getByRole("button") });
      const count = await shown.count();
      expect(await page.locator(".example[data-state=waits]").count()).toBeGreaterThan(0);
      for (let at = 0; at < count; at += 6) await shown.nth(at).scrollIntoViewIfNeeded();
      for (let at = 0; at < count; at += 1) {
        const example = shown.nth(at);
        await example.scrollIntoViewIfNeeded();
        await example.and(page.locator("[data-state=done]")).waitFor();
      }
      const wrong = await page.locator(".example.failed, .example:has(.broken)").allTextContents();
      expect(wrong).toEqual([]);
      walked += count;
    }
    expect(walked).toBeGreaterThanOrEqual(60);
    await page.context().close();
  }, 120_000);

  it("says so where there is no such name", async () => {
    const page = await site.page();
    await open(page, "=noSuchName");
    await page.getByText("There is no noSuchName in the reference.").waitFor();
    await page.getByRole("link", { name: "All names" }).click();
    await found(page).first().waitFor();
    await page.context().close();
  });

  it("opens beside a notebook, from its menu and from a working", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    await settled(page);
    await page.locator(".cell[id$='-fill'] .working summary").first().click();
    const link = page.locator(".cell[id$='-fill'] .working .fnlink").first();
    const name = await link.textContent();
    await link.click();
    const pane = page.getByRole("dialog", { name: "Reference" });
    await pane.locator(`.named[data-name="${name}"]`).waitFor();
    await page.keyboard.press("Escape");
    await pane.waitFor({ state: "detached" });
    expect(await link.evaluate((one) => one === document.activeElement)).toBe(true);
    await choose(page, "Reference");
    await pane.locator(".namelist").first().waitFor();
    expect(page.url()).toContain("notebook=one-bed.md");
    await page.context().close();
  }, 60_000);

  it.each([
    ["wide", { viewport: { width: 1280, height: 900 } }],
    ["narrow", { viewport: { width: 360, height: 740 } }],
    ["dark", { viewport: { width: 1024, height: 800 }, colorScheme: "dark" as const }],
  ])(
    "has nothing for axe to mend, and nothing to scroll sideways, %s",
    async (_, options) => {
      const page = await site.page({ ...options, reducedMotion: "reduce" });
      for (const rest of ["", "&find=board", "=planBoards", "=toBed", "=published.materials"]) {
        await open(page, rest);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll("details")) details.open = true;
        });
        expect(await violations(page), rest).toEqual([]);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over, rest).toBeLessThanOrEqual(0);
      }
      await page.context().close();
    },
    90_000,
  );

  it("prints without its controls", async () => {
    const page = await site.page();
    await open(page, "=bedFill");
    await page.locator(".example[data-state=done]").waitFor();
    await page.emulateMedia({ media: "print" });
    expect(await search(page).isVisible()).toBe(false);
    expect(await page.locator(".top").isVisible()).toBe(false);
    expect(await page.locator(".gives b").first().isVisible()).toBe(true);
    await page.context().close();
  });
});
