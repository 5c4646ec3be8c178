import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, answer, cell, choose, field, settled, useSite } from "./harness.ts";
import { enter, heads, keep, openSheet, openShop, row } from "./shop.ts";
import { violations } from "./violations.ts";

const site = useSite();

/** Three plans: as it is, $126.50; five boards, $143; two bags and red, $99. */
async function keepThree(page: Page): Promise<void> {
  await keep(page);
  await enter(page, "boards", "5", "$143.00");
  await keep(page, "Five boards");
  await enter(page, "boards", "4", "$121.00");
  await enter(page, "bags", "2", "$99.00");
  await keep(page);
}

async function printed(page: Page, format: "A4" | "Letter"): Promise<string> {
  const file = join(mkdtempSync(join(tmpdir(), "bedwright-")), "sheets.pdf");
  writeFileSync(file, await page.pdf({ format, preferCSSPageSize: true }));
  return execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
}

describe("keeping a plan", again, () => {
  it("offers the next name, refuses one that is taken in words, and keeps what was typed", async () => {
    const page = await openShop(site);
    await keep(page);
    await choose(page, "Keep as a plan");
    const pane = page.getByRole("dialog", { name: "Keep as a plan" });
    const name = pane.getByLabel("Its name");
    expect(await name.inputValue()).toBe("Plan B");
    await name.fill("Plan A");
    await pane.getByRole("button", { name: "Keep", exact: true }).click();
    await pane.getByRole("alert").getByText("There is a plan called “Plan A” already").waitFor();
    expect(await name.inputValue()).toBe("Plan A");
    expect(await name.getAttribute("aria-invalid")).toBe("true");
    await name.fill("Another");
    await name.press("Enter");
    await pane.getByText("is kept").waitFor();
    await page.context().close();
  });
});

describe("plans side by side", again, () => {
  it("shows what each comes to, what differs, and the least that is to be paid", async () => {
    const page = await openShop(site);
    await keepThree(page);
    await openSheet(page);
    expect(await heads(page)).toEqual(["Now", "Plan A", "Five boards", "Plan B"]);
    // 1.1 x (4 x 20 + 6 x 5), then with 5 boards, then with 2 bags.
    expect(await row(page, "To pay")).toEqual(["$99.00", "$121.00", "$143.00", "$99.00"]);
    expect(await row(page, "Pieces")).toEqual(["6", "10", "11", "6"]);
    expect(await page.locator(".planled .least .n").allTextContents()).toEqual([
      "$99.00",
      "$99.00",
    ]);
    const differing = page.locator(".differences tbody tr");
    expect(await differing.getByRole("rowheader").allTextContents()).toEqual(["Boards", "Bags"]);
    expect(await differing.nth(1).locator(".typed").allTextContents()).toEqual([
      "2",
      "6",
      "6",
      "2",
    ]);
    expect(await page.locator(".bars svg").getAttribute("aria-label")).toContain(
      "Five boards $143.00",
    );
    await page.context().close();
  }, 60_000);

  it("adds rows and remembers them; all rows or those that differ", async () => {
    const page = await openShop(site);
    await keepThree(page);
    // Kept after one that holds more: what that entered must not stay in the room.
    await page.getByRole("button", { name: "Put everything back" }).click();
    await expect.poll(() => answer(page, "pay").textContent()).toBe("$121.00");
    await keep(page, "Bare");
    await openSheet(page);
    await page.getByLabel("Another answer").selectOption({ label: "Goods" });
    expect(await row(page, "Goods")).toEqual([
      "$110.00",
      "$110.00",
      "$130.00",
      "$90.00",
      "$110.00",
    ]);
    await page.reload();
    await settled(page);
    await openSheet(page);
    await expect.poll(() => row(page, "Goods")).toHaveLength(5);
    await page.getByRole("button", { name: "Leave out Goods" }).click();
    expect(await row(page, "Goods")).toEqual([]);
    await page.context().close();
  }, 60_000);

  it("uses a plan as one change that undo takes back", async () => {
    const page = await openShop(site);
    await keepThree(page);
    await enter(page, "board", "$30.00", "$143.00");
    await openSheet(page);
    await page.getByRole("button", { name: "Use this: Five boards" }).click();
    await expect.poll(async () => (await row(page, "To pay"))[0]).toBe("$143.00");
    await expect
      .poll(() => page.getByRole("button", { name: "Use this: Five boards" }).count())
      .toBe(0);
    await page.locator(".noted").getByRole("button", { name: "Undo" }).click();
    await page.getByRole("button", { name: "Use this: Five boards" }).waitFor();
    await page.getByRole("button", { name: "Back to the notebook" }).click();
    expect(await field(page, "board", "shop.md").inputValue()).toBe("$30.00");
    expect(await field(page, "bags", "shop.md").inputValue()).toBe("2");
    await page.context().close();
  }, 60_000);

  it("says in a column what is wrong with it, and goes on with the others", async () => {
    const page = await openShop(site);
    await keep(page);
    await field(page, "boards", "shop.md").fill("a lot");
    await page.locator(".refused:visible").first().waitFor();
    await keep(page, "Mistyped");
    await field(page, "boards", "shop.md").fill("5");
    await expect.poll(() => answer(page, "pay").textContent()).toBe("$143.00");
    await keep(page);
    await openSheet(page);
    expect(await heads(page)).toEqual(["Now", "Plan A", "Mistyped", "Plan B"]);
    expect(await row(page, "To pay")).toEqual(["$143.00", "$121.00", "$143.00"]);
    const cells = page.locator(".planled:not(.differences) tbody tr").first().locator("td");
    expect(await cells.nth(2).textContent()).toContain("can’t be worked out");
    expect(await page.locator(".planled .least .n").allTextContents()).toEqual(["$121.00"]);
    await page.context().close();
  }, 60_000);

  it("renames, puts away and brings back where it stood", async () => {
    const page = await openShop(site);
    await keepThree(page);
    await openSheet(page);
    await page.getByRole("button", { name: "Rename: Plan A" }).click();
    const pane = page.getByRole("dialog", { name: "Another name for Plan A" });
    await pane.getByLabel("Its name").fill("As it was");
    await pane.getByRole("button", { name: "Rename" }).click();
    await expect.poll(() => heads(page)).toEqual(["Now", "As it was", "Five boards", "Plan B"]);
    expect(await row(page, "To pay")).toEqual(["$99.00", "$121.00", "$143.00", "$99.00"]);
    await page.getByRole("button", { name: "Put away: Five boards" }).click();
    await expect.poll(() => heads(page)).toEqual(["Now", "As it was", "Plan B"]);
    await page.locator(".noted").getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => heads(page)).toEqual(["Now", "As it was", "Five boards", "Plan B"]);
    await page.context().close();
  }, 60_000);

  it("takes a table as it is now for all plans where it is asked to", async () => {
    const page = await openShop(site);
    await keep(page);
    await cell(page, "shop.md", "yards").locator(".edit input").nth(1).fill("9.00");
    await openSheet(page);
    const differing = page.locator(".differences tbody tr");
    await differing.getByText("1 row differs: North").waitFor();
    await page.getByRole("checkbox", { name: "Yards" }).check();
    await page.getByText("The same is entered in all of them.").waitFor();
    await page.context().close();
  }, 60_000);

  it("shows three columns at most on a phone, and scrolls the page sideways nowhere", async () => {
    const page = await openShop(site, { viewport: { width: 360, height: 740 } });
    await keepThree(page);
    await openSheet(page);
    expect(await heads(page)).toEqual(["Now", "Five boards", "Plan B"]);
    await page.getByRole("checkbox", { name: "Plan B" }).uncheck();
    await page.getByRole("checkbox", { name: "Plan A" }).check();
    await expect.poll(() => heads(page)).toEqual(["Now", "Plan A", "Five boards"]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      360,
    );
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  }, 60_000);

  it.each(["A4", "Letter"] as const)(
    "prints all columns and what a plan holds on %s",
    async (format) => {
      const page = await openShop(site);
      await keepThree(page);
      await openSheet(page);
      expect(await violations(page)).toEqual([]);
      const text = await printed(page, format);
      for (const words of [
        "Plans side by side",
        "Five boards",
        "Plan A",
        "Plan B",
        "$143.00",
        "$121.00",
        "A plan holds",
      ])
        expect(text).toContain(words);
      for (const control of ["Use this", "Put away", "Back to the notebook", "Add a row"])
        expect(text).not.toContain(control);
      expect(text).toContain("1 of 1");
      await page.context().close();
    },
    60_000,
  );
});
