import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, choose, useSite } from "./harness.ts";
import { enter, openShop } from "./shop.ts";
import { violations } from "./violations.ts";

const site = useSite();

describe("what matters most", again, () => {
  const order = (page: Page) =>
    page.locator(".rangeled").first().locator("tbody th .name").allTextContents();

  it("orders the entries by how far they move the answer, worked by hand", async () => {
    const page = await openShop(site);
    await choose(page, "What matters most");
    await page.getByText("All 10 are tried.", { exact: true }).first().waitFor();
    // Of $121: boards 3 to 5 move it by $44, a board's price by $35.20, bags 5 to 7 by $11 (4.8 is
    // no count), a bag's price by $13.20, the tax by $4.40.
    expect(await order(page)).toEqual(["Boards", "A board", "A bag", "Bags", "Tax"]);
    const first = page.locator(".rangeled").first().locator("tbody tr").first();
    expect(await first.locator(".goes").textContent()).toBe("from $99.00 to $143.00");
    expect(await page.getByLabel("Boards, low").inputValue()).toBe("3");
    const drawn = page.locator(".bars svg");
    expect(await drawn.locator("text").allTextContents()).toEqual(
      expect.arrayContaining(["now $121.00", "Boards", "3", "5", "$16.00", "$24.00"]),
    );
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  }, 60_000);

  it("takes the reader's own bounds, refuses in words, and follows what is entered", async () => {
    const page = await openShop(site);
    await choose(page, "What matters most");
    await page.getByText("All 10 are tried.", { exact: true }).first().waitFor();
    await page.getByLabel("Tax, high").fill("60 %");
    await page.getByLabel("Tax, high").press("Enter");
    // From 8 % to 60 % of $110 is $57.20: the largest now.
    await page.getByLabel("Tax, high").blur();
    await expect.poll(() => order(page)).toEqual(["Tax", "Boards", "A board", "A bag", "Bags"]);
    await page.getByLabel("Boards, high").fill("lots");
    await page.getByLabel("Boards, high").blur();
    await page.locator(".rangeled .tray.wrong").waitFor();
    expect(await page.getByLabel("Boards, high").inputValue()).toBe("lots");
    await page.getByRole("button", { name: "Back to the notebook" }).click();
    await enter(page, "bags", "0", "$88.00");
    await choose(page, "What matters most");
    await expect.poll(() => order(page), { timeout: 20_000 }).not.toContain("A bag");
    await page.context().close();
  }, 60_000);
});
