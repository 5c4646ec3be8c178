import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, field, openNotebook, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

const site = useSite();

async function openAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
}

describe("axe finds nothing to mend", again, () => {
  it("on the shelf", async () => {
    const page = await site.page();
    await page.goto(site.address);
    await page.locator(".books").waitFor();
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });

  it.each([
    ["wide", { viewport: { width: 1440, height: 900 } }],
    ["narrow", { viewport: { width: 360, height: 740 } }],
    ["dark", { viewport: { width: 1024, height: 800 }, colorScheme: "dark" as const }],
  ])(
    "in the main notebook, %s, everything opened",
    async (_, options) => {
      const page = await site.page({ ...options, reducedMotion: "reduce" });
      await openNotebook(page, site, "rebuild.md");
      await settled(page);
      await openAll(page);
      expect(await violations(page)).toEqual([]);
      await page.context().close();
    },
    90_000,
  );

  it("in the writing view, with something wrong", async () => {
    const page = await site.page({ reducedMotion: "reduce" });
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    await page.getByRole("radio", { name: "Write" }).check();
    await field(page, "kerf").fill("a little");
    await page.locator(".broken, .waits").first().waitFor();
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  }, 60_000);
});

describe("the keyboard alone", again, () => {
  it("reaches everything there is to use, in the page's order, and shows where it is", async () => {
    const page = await site.page({ reducedMotion: "reduce" });
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const expected = await page.evaluate(() => {
      const all = document.querySelectorAll<HTMLElement>(
        "a[href], button, input, select, textarea, summary, [tabindex='0']",
      );
      const groups = new Set<string>();
      let count = 0;
      for (const one of all) {
        if (one.tabIndex < 0 || one.matches(":disabled") || !one.checkVisibility()) continue;
        // Tab stops once at a group of choices; the arrows go on inside it.
        if (one instanceof HTMLInputElement && one.type === "radio") {
          if (groups.has(one.name)) continue;
          groups.add(one.name);
        }
        count += 1;
        one.dataset.expected = "";
      }
      return count;
    });
    const reached = new Set<string>();
    for (let step = 0; step < expected + 20; step += 1) {
      await page.keyboard.press("Tab");
      const at = await page.evaluate((key) => {
        const one = document.activeElement;
        if (!(one instanceof HTMLElement) || one === document.body) return undefined;
        one.dataset.reached ??= key;
        const box = one.matches("input[type=radio]") ? one.nextElementSibling : one;
        const shown = box?.closest(".tray") ?? box;
        const outline = shown ? getComputedStyle(shown).outlineStyle : "none";
        const skips = one.classList.contains("skip");
        return { key: one.dataset.reached, visible: outline !== "none" || skips };
      }, String(step));
      if (!at) break;
      if (reached.has(at.key)) break;
      reached.add(at.key);
      expect(at.visible, `focus shows at step ${step}`).toBe(true);
    }
    const left = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>("[data-expected]:not([data-reached])")]
        .filter((one) => !(one instanceof HTMLInputElement && one.type === "radio"))
        .map((one) => one.outerHTML.slice(0, 120)),
    );
    expect(left).toEqual([]);
    expect(reached.size).toBeGreaterThan(40);
    await page.context().close();
  }, 180_000);

  it("skips to the page, opens a working, changes a choice", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("page");
    const working = page.locator(".row .working > summary").first();
    await working.focus();
    await page.keyboard.press("Enter");
    expect(await page.locator(".row .working[open]").count()).toBe(1);
    await page.locator(".row .working[open] dt", { hasText: "Takes" }).waitFor();
    const sides = page.getByLabel("sides", { exact: true });
    await sides.focus();
    await page.keyboard.press("ArrowRight");
    expect(await page.getByLabel("ends", { exact: true }).isChecked()).toBe(true);
    await page.context().close();
  });
});

describe("a narrow page", again, () => {
  it("scrolls sideways nowhere but in what is marked so", async () => {
    const page = await site.page({ viewport: { width: 360, height: 740 } });
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    await openAll(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      360,
    );
    await page.context().close();
  });

  it("keeps the tally in a strip that opens upward and closes by Escape", async () => {
    const page = await site.page({ viewport: { width: 360, height: 740 } });
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const summary = page.locator(".tallybox > summary");
    const closed = await summary.boundingBox();
    expect((closed?.y ?? 0) + (closed?.height ?? 0)).toBeGreaterThan(700);
    await summary.click();
    expect(await page.locator(".tl dl").isVisible()).toBe(true);
    await page.keyboard.press("Escape");
    expect(await page.locator(".tl dl").isVisible()).toBe(false);
    await page.context().close();
  });
});
