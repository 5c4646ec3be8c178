import type { Locator } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, answer, cell, field, openNotebook, settled, useSite } from "./harness.ts";

const site = useSite();

/** Where in the window something stands: what a reader notices when the page jumps. */
const placeOf = (one: Locator) => one.evaluate((element) => element.getBoundingClientRect().top);

describe("changing an entry", again, () => {
  it("moves every figure and drawing that rests on it, and neither focus nor scroll", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const entry = field(page, "dressingDepth");
    await entry.scrollIntoViewIfNeeded();
    await entry.focus();
    const section = cell(page, "rebuild.md", "sectionDrawn").locator(".drawn");
    const before = {
      place: await placeOf(entry),
      compost: await answer(page, "topDressing").textContent(),
      total: await answer(page, "total").textContent(),
      drawing: await section.innerHTML(),
    };
    await entry.press("Control+a");
    await page.keyboard.type("2 1/2 in", { delay: 15 });
    await expect
      .poll(() => answer(page, "topDressing").textContent(), { timeout: 10_000 })
      .not.toBe(before.compost);
    await settled(page);
    expect(await answer(page, "total").textContent()).not.toBe(before.total);
    await expect.poll(() => section.innerHTML()).not.toBe(before.drawing);
    expect(await entry.inputValue()).toBe("2 1/2 in");
    expect(await entry.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(Math.abs((await placeOf(entry)) - before.place)).toBeLessThan(2);
    expect(await page.locator(".tl .was").first().textContent()).toContain("was");
    await page.context().close();
  });

  it("says what is wrong at the entry, keeps what was typed, and goes on with the rest", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const fill = await answer(page, "fill").textContent();
    const entry = field(page, "kerf");
    await entry.fill("a little");
    await expect.poll(() => entry.getAttribute("aria-invalid")).toBe("true");
    const described = await entry.getAttribute("aria-describedby");
    expect(await page.locator(`#${described}`).textContent()).toContain("a little");
    expect(await entry.inputValue()).toBe("a little");
    expect(await answer(page, "fill").textContent()).toBe(fill);
    await entry.fill("1/8 in");
    await expect.poll(() => entry.getAttribute("aria-invalid")).toBeNull();
    await page.context().close();
  });

  it("is undone, and put back", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const pine = await answer(page, "mulch").textContent();
    const entry = field(page, "mulchDepth");
    await entry.fill("4 in");
    await expect.poll(() => answer(page, "mulch").textContent()).not.toBe(pine);
    await page.getByRole("button", { name: "Undo last change" }).click();
    await expect.poll(() => answer(page, "mulch").textContent()).toBe(pine);
    expect(await entry.inputValue()).toBe("1 in");
    await entry.fill("3 in");
    await cell(page, "rebuild.md", "mulchDepth").getByRole("button", { name: "Put back" }).click();
    await expect.poll(() => entry.inputValue()).toBe("1 in");
    await expect.poll(() => answer(page, "mulch").textContent()).toBe(pine);
    await page.context().close();
  });

  it("prints in other units without touching what was typed", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const entry = field(page, "kerf");
    const typed = await entry.inputValue();
    await page.getByRole("radio", { name: "metric" }).check();
    await expect
      .poll(() => page.locator(".tl dd", { hasText: "m³" }).first().locator(".unit").textContent())
      .toContain("m³");
    expect(await entry.inputValue()).toBe(typed);
    await page.context().close();
  });
});
