import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { formula, openCell, openOwn, own, sums } from "./editing.ts";
import { again, useSite } from "./harness.ts";

const site = useSite();
const notebooks = { "sums.md": sums };

/** The names of the cells on the page, in their order. */
function order(page: Page): Promise<string[]> {
  return page
    .locator("main .cellname")
    .evaluateAll((names) => names.map((name) => name.firstChild?.textContent ?? ""));
}

const act = (page: Page, name: string, words: string) =>
  own(page, name).getByRole("button", { name: words, exact: true }).click();

const undo = (page: Page) => page.getByRole("button", { name: "Undo last change" }).first().click();

describe("cells are added, moved, renamed, doubled and taken out", again, () => {
  it("an entry is added after a cell, with a default to begin with, and used at once", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    const tools = page.locator(".cell[id$='-twice'] + .blocktools");
    await tools.getByRole("button", { name: "a figure or entry" }).click();
    await tools.getByRole("button", { name: "An entry for a length" }).click();
    await formula(page, "length").waitFor();
    expect(await order(page)).toEqual(["side", "twice", "length", "total", "apart", "list"]);
    await page.keyboard.press("ControlOrMeta+Enter");
    await openCell(page, "total");
    await page.keyboard.type(" + length");
    await own(page, "total").locator(".n", { hasText: "32" }).first().waitFor();
    await own(page, "length").locator("input[type=text]").first().fill("9 ft");
    await own(page, "total").locator(".n", { hasText: "33" }).first().waitFor();
    await page.context().close();
  });

  it("renaming reaches formulas and sentences, and what was entered goes along", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await own(page, "side").locator("input[type=text]").first().fill("9 ft");
    await own(page, "total").locator(".n", { hasText: "27" }).first().waitFor();
    await openCell(page, "side");
    await act(page, "side", "Rename");
    const form = own(page, "side").locator(".rename");
    expect(await form.textContent()).toContain("2 formulas");
    await form.getByRole("textbox").fill("edge");
    await form.getByRole("button", { name: "Rename it everywhere" }).click();
    await formula(page, "edge").waitFor();
    expect(await order(page)).toEqual(["edge", "twice", "total", "apart", "list"]);
    await own(page, "total").locator(".n", { hasText: "27" }).first().waitFor();
    await openCell(page, "twice");
    expect(await formula(page, "twice").textContent()).toBe("edge * 2");
    await undo(page);
    await page.locator(".cell[id$='-side'].hasvalue").waitFor();
    expect(await formula(page, "twice").textContent()).toBe("side * 2");
    expect(await own(page, "side").locator("input[type=text]").first().inputValue()).toBe("9 ft");
    await page.context().close();
  });

  it("a name that is taken is refused, in words", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await openCell(page, "side");
    await act(page, "side", "Rename");
    const form = own(page, "side").locator(".rename");
    await form.getByRole("textbox").fill("total");
    await form.getByRole("button", { name: "Rename it everywhere" }).click();
    await form.getByRole("alert").getByText("total").waitFor();
    expect(await order(page)).toContain("side");
    await page.context().close();
  });

  it("moved, doubled, taken out, and all of it undone and done again", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await openCell(page, "apart");
    const moveUp = own(page, "apart").getByRole("button", { name: "Move up" });
    await moveUp.click();
    expect(await order(page)).toEqual(["side", "twice", "apart", "total", "list"]);
    // Where it is pressed, focus stays, so that it can be pressed again.
    expect(await moveUp.evaluate((one) => one === document.activeElement)).toBe(true);
    await act(page, "apart", "Duplicate");
    const names = await order(page);
    expect(names).toHaveLength(6);
    const copy = names.find((name) => !["side", "twice", "apart", "total", "list"].includes(name));
    await formula(page, copy ?? "").waitFor();
    expect(await formula(page, copy ?? "").textContent()).toBe("6 * 7");
    await act(page, "apart", "Take out");
    expect(await order(page)).toEqual(["side", "twice", copy, "total", "list"]);
    for (let step = 0; step < 3; step += 1) await undo(page);
    expect(await order(page)).toEqual(["side", "twice", "total", "apart", "list"]);
    const redo = page.getByRole("button", { name: "Do it again" }).first();
    for (let step = 0; step < 3; step += 1) await redo.click();
    expect(await order(page)).toEqual(["side", "twice", copy, "total", "list"]);
    await page.context().close();
  });

  it("its title is changed, and it joins the answers that stay in sight", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await openCell(page, "apart");
    await own(page, "apart").locator(".as-shown > summary").click();
    await own(page, "apart").getByLabel("Its title", { exact: true }).fill("Six by seven");
    await own(page, "apart").locator(".row", { hasText: "Six by seven" }).waitFor();
    await own(page, "apart").getByLabel("Stays in sight").check();
    await page.locator(".tl", { hasText: "Six by seven" }).waitFor({ state: "attached" });
    await page.context().close();
  });

  it("columns of a table are added, renamed and taken out", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await own(page, "list").locator(".cellname").click();
    const form = own(page, "list").locator(".columns-form");
    await form.getByLabel("Another column").fill("where");
    await form.getByRole("button", { name: "Add the column" }).click();
    const heads = own(page, "list").locator("table th[scope=col]");
    await heads.nth(2).getByText("where").waitFor();
    await form.getByLabel("Name of column 1").fill("what");
    await page.keyboard.press("Enter");
    await heads.first().getByText("what").waitFor();
    await form.getByRole("button", { name: "Take out the column count" }).click();
    await heads.nth(1).getByText("where").waitFor();
    expect(await heads.count()).toBe(2);
    await undo(page);
    await heads.first().getByText("thing").waitFor();
    await page.context().close();
  });
});

describe("words are written in the page", again, () => {
  it("and are drawn as they come, with a figure in the sentence", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await page.getByRole("button", { name: "Change these words" }).last().click();
    const field = page.locator(".words-slip .cm-content");
    await field.waitFor();
    await page.keyboard.press("ControlOrMeta+End");
    await page.keyboard.type(" It is *all* of `fig to");
    // The names of cells are offered where a figure is put in.
    await page.locator(".words-slip [role=listbox]", { hasText: "24" }).waitFor();
    await page.waitForTimeout(150);
    await page.keyboard.press("Enter");
    await page.keyboard.type("`");
    await page.locator("main p .fig", { hasText: "24" }).nth(1).waitFor();
    await page.locator("main p em", { hasText: "all" }).waitFor();
    // Focus and caret stand all this.
    await page.keyboard.type(".");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter");
    await page.keyboard.type("More.");
    await page.locator("main p", { hasText: /^More\.$/ }).waitFor();
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    await page.locator("main p em").waitFor({ state: "detached" });
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(
      "Change these words",
    );
    await page.context().close();
  });

  it("new words are added between two cells, and can be taken out", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    const tools = page.locator(".cell[id$='-twice'] + .blocktools");
    await tools.getByRole("button", { name: "words", exact: true }).click();
    await page.locator(".words-slip .cm-content").waitFor();
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type("Between them.");
    await page.locator(".cell[id$='-twice'] ~ p", { hasText: "Between them." }).waitFor();
    await page.locator(".words-slip").getByRole("button", { name: "Take out" }).click();
    await page.locator("main p", { hasText: "Between them." }).waitFor({ state: "detached" });
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    await page.context().close();
  });

  it("a cell written into words comes to stand on the page", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await page.getByRole("button", { name: "Change these words" }).last().click();
    await page.locator(".words-slip .cm-content").waitFor();
    await page.keyboard.press("ControlOrMeta+End");
    await page.keyboard.insertText("\n\n```js cell more\ntotal * 2\n```\n\nAfter.");
    await own(page, "more").locator(".n", { hasText: "48" }).waitFor();
    // Still one field, with all of it.
    expect(await page.locator(".words-slip .cm-content").textContent()).toContain("total * 2");
    await page.context().close();
  });
});
