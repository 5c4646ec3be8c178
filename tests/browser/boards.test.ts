import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, answer, cell, openNotebook, settled, useSite } from "./harness.ts";

const site = useSite();
const file = "boards.md";

const pieces = [
  ["piece", "section", "length", "count", "timber"],
  ["plank", "2x8", "7 ft", "3", "larch"],
  ["short", "2x8", "3 ft 5 in", "2", "larch"],
];
const prices = [
  ["yard", "item", "size", "price", "form"],
  ["Hazel", "2x8 larch", "7 ft", "10", "board"],
  ["Hazel", "2x8 larch", "14 ft", "30", "board"],
];

/** Puts rows in place of a table's, through the clipboard as a spreadsheet leaves them there. */
async function paste(page: Page, table: string, rows: readonly (readonly string[])[]) {
  await page.getByRole("button", { name: `Paste rows of ${table}` }).click();
  const text = rows.map((row) => row.join("\t")).join("\n");
  const field = page.getByLabel("Rows copied from a spreadsheet").filter({ visible: true });
  await field.fill(text);
  const put = page.getByRole("button", { name: "Put them in place of all rows" });
  await put.filter({ visible: true }).click();
  await expect.poll(() => field.count()).toBe(0);
}

describe("the notebook of boards", again, () => {
  it("takes a pasted list of pieces and a price list, and plans them", async () => {
    const page = await site.page();
    await openNotebook(page, site, file);
    await settled(page);
    await paste(page, "Pieces", pieces);
    await paste(page, "Prices", prices);
    await paste(page, "Boards kept", [["section", "length"]]);
    // By hand: three planks are whole boards, both shorts come off a fourth; four at $10, 6 % tax, and
    // a trip of $5.
    await expect
      .poll(() => answer(page, "total").textContent(), { timeout: 30_000 })
      .toBe("$47.40");
    await settled(page);
    expect(await answer(page, "boardCount").textContent()).toBe("4");
    expect(await answer(page, "proof").textContent()).toBe("No cheaper plan exists");
    const sheet = cell(page, file, "sheet").locator("tbody tr");
    const rows = (await sheet.allTextContents()).join("\n");
    expect(rows).toContain("plank (3); the whole board, no cut");
    // The second mark counts the kerf of the first cut: 41 + 1/8 + 41 in.
    expect(rows.replace(/\s/g, "")).toMatch(/26′101⁄8″|26′10⅛″/);
    expect(await cell(page, file, "cutsDrawn").locator("svg .order").count()).toBe(2);
    await page.context().close();
  }, 90_000);

  it("says that a wide table goes on to the side, as long as it does", async () => {
    const page = await site.page({ viewport: { width: 360, height: 740 } });
    await openNotebook(page, site, file);
    await settled(page);
    const table = cell(page, file, "boardWorths");
    const sign = table.locator(".aside-more");
    const holder = table.locator(".scroll");
    await expect.poll(() => sign.textContent()).toContain("goes on to the right");
    await holder.evaluate((one) => one.scrollTo({ left: one.scrollWidth }));
    await expect.poll(() => sign.textContent()).toContain("begins at the left");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await page.setViewportSize({ width: 1280, height: 900 });
    await expect.poll(() => sign.isVisible()).toBe(false);
    await page.context().close();
  }, 60_000);

  it("has a box to tick for every board on paper, and none on the screen", async () => {
    const page = await site.page();
    await openNotebook(page, site, file);
    await settled(page);
    const drawing = cell(page, file, "cutsDrawn");
    const ticks = drawing.locator("svg .tick");
    const labels = await drawing.locator("svg .label.strong").allTextContents();
    const boards = labels.reduce((sum, text) => sum + Number(/^(\d+) at/.exec(text)?.[1] ?? 0), 0);
    expect(boards).toBeGreaterThan(20);
    expect(await ticks.count()).toBe(boards);
    const shown = () => ticks.first().evaluate((one) => getComputedStyle(one).display);
    expect(await shown()).toBe("none");
    await page.emulateMedia({ media: "print" });
    expect(await shown()).not.toBe("none");
    await page.context().close();
  }, 60_000);
});
