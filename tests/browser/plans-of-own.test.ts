import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { formula, openCell, openOwn, own, write } from "./editing.ts";
import { again, answer, useSite } from "./harness.ts";
import { keep, openSheet, row, shop } from "./shop.ts";

const site = useSite();

const act = (page: Page, name: string, words: string) =>
  own(page, name).getByRole("button", { name: words, exact: true }).click();

describe("plans of a notebook that is written", again, () => {
  it("works every plan out anew with the formulas as they are now", async () => {
    const page = await site.page({ notebooks: { "shop.md": shop } });
    await openOwn(page, site, "shop.md");
    await own(page, "boards").locator("input[type=text]").first().fill("5");
    await expect.poll(() => answer(page, "pay").textContent()).toBe("$143.00");
    await keep(page, "Five boards");
    await own(page, "boards").locator("input[type=text]").first().fill("2");
    await openCell(page, "pay");
    await write(page, "pay", "boards * board");
    await page.keyboard.press("ControlOrMeta+Enter");
    await expect.poll(() => answer(page, "pay").textContent()).toBe("$40.00");
    await openSheet(page);
    expect(await row(page, "To pay")).toEqual(["$40.00", "$100.00"]);
    await page.context().close();
  }, 60_000);

  it("follows a cell to its new name", async () => {
    const page = await site.page({ notebooks: { "shop.md": shop } });
    await openOwn(page, site, "shop.md");
    await own(page, "boards").locator("input[type=text]").first().fill("5");
    await own(page, "bags").locator("input[type=text]").first().fill("2");
    await expect.poll(() => answer(page, "pay").textContent()).toBe("$121.00");
    await keep(page, "Five boards");
    await openCell(page, "boards");
    await act(page, "boards", "Rename");
    const form = own(page, "boards").locator(".rename");
    await form.getByRole("textbox").fill("planks");
    await form.getByRole("button", { name: "Rename it everywhere" }).click();
    await formula(page, "planks").waitFor();
    await own(page, "planks").locator(".val input[type=text]").first().fill("3");
    await expect.poll(() => answer(page, "pay").textContent()).toBe("$77.00");
    await openSheet(page);
    // 1.1 x (5 x 20 + 2 x 5): what was kept for boards counts for planks.
    expect(await row(page, "To pay")).toEqual(["$77.00", "$121.00"]);
    await page.context().close();
  }, 60_000);

  it("keeps what it holds for a cell that was taken out, and says so", async () => {
    const page = await site.page({ notebooks: { "shop.md": shop } });
    await openOwn(page, site, "shop.md");
    await own(page, "colour").getByLabel("red").check();
    await keep(page);
    await openCell(page, "colour");
    await act(page, "colour", "Take out");
    await openSheet(page);
    await page
      .getByText("Plan A also holds what this notebook has no cell for: colour (red).")
      .waitFor();
    await page.context().close();
  }, 60_000);
});
