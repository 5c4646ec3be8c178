import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, answer, cell, field, openNotebook, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

/** What a person does on a phone: each touch and each typing counts. */
class Hand {
  count = 0;
  private readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async fill(name: string, text: string): Promise<void> {
    this.count += 2;
    await field(this.page, name, "soil.md").tap();
    await field(this.page, name, "soil.md").fill(text);
  }

  async follow(words: string): Promise<void> {
    this.count += 1;
    await this.page.getByRole("link", { name: words }).first().tap();
  }
}

describe("the notebook of the soil", () => {
  const site = useSite();
  const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

  it(
    "leads from “two inches low, 4 by 8, seven beds” to a shopping list in at most 12 actions on a phone",
    again,
    async () => {
      const page = await site.page(phone);
      await openNotebook(page, site, "soil.md");
      await settled(page);
      const hand = new Hand(page);
      await hand.follow("Your beds");
      await hand.fill("length", "8 ft");
      await hand.fill("width", "4 ft");
      await hand.fill("count", "7");
      await hand.fill("low", "2 in");
      await hand.follow("This season");
      expect(hand.count).toBeLessThanOrEqual(12);
      // 7 beds of 29.06 sq ft lack 2 in: 33.9 cu ft settled, 1.42 cu yd loose at 11.5 per cent.
      await expect.poll(() => answer(page, "order").textContent()).toContain("1.34–1.56");
      const list = cell(page, "soil.md", "season");
      await expect
        .poll(() => list.textContent())
        .toMatch(/1\.5 cu yd, loose.*112\.00.*39 bags.*193\.05/s);
      await expect.poll(() => list.isVisible()).toBe(true);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        360,
      );
    },
  );

  it("lets the bed settle as the years are moved", again, async () => {
    const page = await site.page();
    await openNotebook(page, site, "soil.md");
    await settled(page);
    const drawn = cell(page, "soil.md", "sectionDrawn");
    const slide = cell(page, "soil.md", "yearShown").locator("input[type=range]");
    const label = () => drawn.locator("svg:visible").first().getAttribute("aria-label");
    await slide.fill("0");
    await expect.poll(label).toContain("as filled");
    const first = await label();
    await slide.fill("15");
    await expect.poll(label).not.toBe(first);
    await expect
      .poll(() => drawn.textContent())
      .toMatch(/as filled, 7⁄8″ higher|as filled, 1″ higher/);
  });

  it("takes the garden's own beds", again, async () => {
    const page = await site.page();
    await openNotebook(page, site, "soil.md");
    await settled(page);
    await field(page, "which", "soil.md").selectOption("garden");
    await expect
      .poll(() => page.locator("#cell-soil-md-area").textContent())
      .toMatch(/\d{3} sq ft|\d{3}/);
    await expect.poll(() => answer(page, "order").textContent()).not.toContain("5.18");
  });

  it("is read by everyone, and fits a phone and a sheet", again, async () => {
    const page = await site.page({ ...phone });
    await openNotebook(page, site, "soil.md");
    await settled(page);
    expect(await violations(page)).toEqual([]);
    expect(await page.locator("[data-kind=error], [data-kind=waits]").count()).toBe(0);
  });
});
