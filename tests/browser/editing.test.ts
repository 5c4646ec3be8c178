import { describe, expect, it } from "vitest";
import { formula, openCell, openOwn, own, sums, write } from "./editing.ts";
import { again, useSite } from "./harness.ts";

const site = useSite();
const notebooks = { "sums.md": sums };

describe("a formula is written in the page", again, () => {
  it("and what rests on it follows, while the rest is left alone", async () => {
    const page = await site.page({ notebooks });
    const troubles: string[] = [];
    page.on("console", (message) => {
      if (message.type() === "error") troubles.push(message.text());
    });
    await openOwn(page, site);
    await own(page, "apart").evaluate((element) => {
      element.querySelector(".held > *")?.setAttribute("data-mark", "as it was");
    });
    await openCell(page, "twice");
    await page.keyboard.press("Backspace");
    await page.keyboard.type("3");
    // 3 x 8 ft and 8 ft more; sums checked by hand.
    await own(page, "total").locator(".n", { hasText: "32" }).first().waitFor();
    await own(page, "twice").locator(".slipfoot .n", { hasText: "24" }).waitFor();
    await page.locator(".lede .fig", { hasText: "32" }).waitFor();
    expect(await own(page, "apart").locator("[data-mark]").textContent()).toContain("42");
    // The editor keeps its caret through all of this.
    await page.keyboard.type("0");
    await own(page, "total").locator(".n", { hasText: "248" }).first().waitFor();
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  it("an error is said under it, with its line, and only what takes the cell waits", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await openCell(page, "twice");
    await write(page, "twice", "sied * 2");
    const foot = own(page, "twice").locator(".slipfoot .now");
    await foot.getByText("sied is not known").waitFor();
    expect(await foot.textContent()).toContain("Line 12");
    expect(await own(page, "twice").locator(".cm-content .bw-wrong").textContent()).toBe("sied");
    await own(page, "total").locator(".waits").waitFor();
    expect(await own(page, "apart").locator(".n").textContent()).toBe("42");
    await page.locator('p[role="status"]', { hasText: "sied is not known" }).waitFor({
      state: "attached",
    });
    // Closed, the error stands at the cell; from there it opens again to be mended.
    await page.keyboard.press("ControlOrMeta+Enter");
    await own(page, "twice").getByRole("button", { name: "Open the cell" }).click();
    await formula(page, "twice").waitFor();
    await write(page, "twice", "side *");
    await foot.getByText(/line 12/i).waitFor();
    await write(page, "twice", "side * 2");
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    expect(await foot.getAttribute("class")).not.toContain("wrong");
    await page.context().close();
  });

  it("a part of the room that it comes to name is sent, and the entries stay as they are", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await own(page, "side").locator("input[type=text]").first().fill("9 ft");
    await own(page, "total").locator(".n", { hasText: "27" }).first().waitFor();
    await openCell(page, "apart");
    await write(page, "apart", "Plot.dot([[1, 2]]).plot()");
    await own(page, "apart").locator("svg circle").waitFor();
    expect(await own(page, "total").locator(".n").first().textContent()).toContain("27");
    await page.context().close();
  });

  it("a title that cannot be written down is refused in words, and the one before stands", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await openCell(page, "twice");
    const slip = own(page, "twice").locator(".own-slip");
    await slip.locator("summary").click();
    const title = slip.getByRole("textbox", { name: "Its title" });
    await title.fill('The 12" sides');
    await slip.getByText("can’t hold double quotes").waitFor();
    expect(await title.getAttribute("aria-invalid")).toBe("true");
    expect(await own(page, "twice").textContent()).toContain("Two sides");
    await title.fill("The 12″ sides");
    await own(page, "twice").locator(".row", { hasText: "The 12″ sides" }).waitFor();
    expect(await title.getAttribute("aria-invalid")).toBeNull();
    await page.context().close();
  });

  it("names of cells are offered with their values, and options of what is called", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await openCell(page, "apart");
    await page.keyboard.type(" + twi");
    const list = own(page, "apart").locator("[role=listbox]");
    await list.waitFor();
    expect(await list.textContent()).toContain("16′");
    const field = formula(page, "apart");
    await page.waitForTimeout(150);
    expect(await field.getAttribute("aria-activedescendant")).not.toBeNull();
    await page.keyboard.press("Enter");
    expect(await field.textContent()).toContain("6 * 7 + twice");
    // Its own name would make a circle, so it is not offered.
    await write(page, "apart", "1 + ");
    await page.keyboard.press("Control+Space");
    await list.waitFor();
    expect(await list.textContent()).not.toContain("apart");
    await page.keyboard.press("Escape");
    await list.waitFor({ state: "detached" });
    // Functions come from the reference, with what they take.
    await write(page, "apart", "");
    await page.keyboard.type('lengthEntry("8 ft", { mi');
    await list.getByText("min", { exact: true }).waitFor();
    const help = own(page, "apart").locator(".callhelp");
    expect(await help.textContent()).toMatch(/^lengthEntry\(initial, \{ .*min/);
    await page.waitForTimeout(150);
    await page.keyboard.press("Enter");
    await page.keyboard.type('"1 ft" })');
    expect(await field.textContent()).toBe('lengthEntry("8 ft", { min: "1 ft" })');
    await own(page, "apart").locator(".held input[type=text]").waitFor();
    await page.context().close();
  });

  it("is worked by the keyboard alone: kept, put back, left", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    await own(page, "twice").locator(".cellname").focus();
    await page.keyboard.press("Enter");
    await formula(page, "twice").waitFor();
    await page.keyboard.press("ControlOrMeta+End");
    await page.keyboard.type(" + side");
    await own(page, "total").locator(".n", { hasText: "32" }).first().waitFor();
    // Tab moves in; after Escape it leaves.
    await page.keyboard.press("Tab");
    expect(await formula(page, "twice").textContent()).toBe("side * 2 + side  ");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("BUTTON");
    await page.keyboard.press("Shift+Tab");
    // Escape twice puts back what was there and closes.
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    await formula(page, "twice").waitFor({ state: "detached" });
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    expect(await page.evaluate(() => document.activeElement?.className)).toBe("cellname");
    await page.keyboard.press("Enter");
    await formula(page, "twice").waitFor();
    await write(page, "twice", "side * 5");
    await page.keyboard.press("ControlOrMeta+Enter");
    await formula(page, "twice").waitFor({ state: "detached" });
    await own(page, "twice").locator(".n", { hasText: "40" }).waitFor();
    await page.context().close();
  });
});

describe("undoing goes through the whole notebook", again, () => {
  it("from within a formula too, entries and formulas alike", async () => {
    const page = await site.page({ notebooks });
    await openOwn(page, site);
    const entry = own(page, "side").locator("input[type=text]").first();
    await entry.fill("10 ft");
    await own(page, "total").locator(".n", { hasText: "30" }).first().waitFor();
    await openCell(page, "twice");
    await write(page, "twice", "side * 3");
    await own(page, "total").locator(".n", { hasText: "40" }).first().waitFor();
    await page.keyboard.press("ControlOrMeta+z");
    await own(page, "total").locator(".n", { hasText: "30" }).first().waitFor();
    expect(await formula(page, "twice").textContent()).toBe("side * 2");
    await page.keyboard.press("ControlOrMeta+z");
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    expect(await entry.inputValue()).toBe("8 ft");
    await page.keyboard.press("ControlOrMeta+y");
    await page.keyboard.press("ControlOrMeta+Shift+Z");
    await own(page, "total").locator(".n", { hasText: "40" }).first().waitFor();
    expect(await formula(page, "twice").textContent()).toBe("side * 3");
    // What changes behind the caret leaves it where it is.
    await page.keyboard.press("Home");
    for (let step = 0; step < 4; step += 1) await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ControlOrMeta+z");
    await own(page, "total").locator(".n", { hasText: "30" }).first().waitFor();
    await page.keyboard.type(" * 1");
    expect(await formula(page, "twice").textContent()).toBe("side * 1 * 2");
    await page.context().close();
  });
});
