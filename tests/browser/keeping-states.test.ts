import type { BrowserContextOptions } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openCell, openOwn, own, sums, write } from "./editing.ts";
import { again, choose, field, openNotebook, useSite } from "./harness.ts";
import { area, bench, pageWithHistory, pane } from "./kept-states.ts";
import { violations } from "./violations.ts";

const site = useSite();

const notebooks = { "bench.md": bench, "sums.md": sums };
const withHistory = (options?: BrowserContextOptions) => pageWithHistory(site, options);

describe("a notebook's earlier states", again, () => {
  it("are listed in words, looked at, brought back, and that is undone", async () => {
    const page = await withHistory();
    await choose(page, "Earlier states");
    const lines = pane(page).locator(".states > li");
    await lines.nth(2).waitFor();
    expect(await lines.count()).toBe(3);
    expect(await lines.nth(2).textContent()).toMatch(/today 14:05.*Changed after it: entry Length/);
    expect(await lines.nth(0).textContent()).toContain("Changed after it: entry Depth");
    await lines
      .nth(1)
      .getByRole("button", { name: /^Look at it as it was today 14:0/ })
      .click();
    const inside = lines.nth(1).locator(".differs > li");
    await inside.nth(1).waitFor();
    expect(await inside.allTextContents()).toEqual([
      "LengthThen10 ftNow12 ft",
      "DepthThenas the notebook has itNow2 ft",
    ]);
    await lines.nth(1).getByRole("button", { name: "Bring this back" }).click();
    await area(page, "10");
    expect(await field(page, "long", "bench.md").inputValue()).toBe("10 ft");
    expect(await field(page, "deep", "bench.md").inputValue()).toBe("1 ft");
    await page.getByRole("button", { name: "Undo last change" }).click();
    await area(page, "24");
    expect(await field(page, "deep", "bench.md").inputValue()).toBe("2 ft");
    await choose(page, "Earlier states");
    await pane(page).getByText("Before another state was brought back").waitFor();
    await page.context().close();
  });

  it("are kept when everything is put back", async () => {
    const page = await withHistory();
    await page.getByRole("button", { name: "Put everything back" }).click();
    await area(page, "8");
    await choose(page, "Earlier states");
    const first = pane(page).locator(".states > li").first();
    await first.getByText("Before everything was put back").waitFor();
    await first.getByRole("button", { name: /Look at/ }).click();
    await first.getByRole("button", { name: "Bring this back" }).click();
    await area(page, "24");
    await page.context().close();
  });

  it("hold the formulas of one's own notebook", async () => {
    const page = await site.page({ notebooks });
    await page.clock.install();
    await openOwn(page, site);
    await openCell(page, "twice");
    await write(page, "twice", "side * 3");
    await own(page, "total").locator(".n", { hasText: "32" }).first().waitFor();
    await choose(page, "Earlier states");
    const first = pane(page).locator(".states > li").first();
    await first.getByText("formula of Two sides").waitFor();
    await first.getByRole("button", { name: /Look at/ }).click();
    expect(await first.locator(".differs pre").allTextContents()).toEqual(["side * 2", "side * 3"]);
    await first.getByRole("button", { name: "Bring this back" }).click();
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    await page.reload();
    await own(page, "total").locator(".n", { hasText: "24" }).first().waitFor();
    await page.context().close();
  });

  it("are not read when the notebook is opened", async () => {
    const page = await withHistory();
    await page.addInitScript(() => {
      const read: unknown[] = [];
      const { get } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.get = function (key) {
        read.push(key);
        return get.call(this, key);
      };
      Object.assign(window, { read });
    });
    await page.reload();
    await area(page, "24");
    const read = () => page.evaluate(() => (window as unknown as { read: string[] }).read);
    expect(await read()).toContain("entered:bench.md");
    expect((await read()).filter((key) => key.startsWith("state"))).toEqual([]);
    await choose(page, "Earlier states");
    await pane(page).locator(".states > li").nth(2).waitFor();
    expect((await read()).filter((key) => key.startsWith("state"))).toHaveLength(4);
    await page.context().close();
  });

  it.each([
    ["wide", { viewport: { width: 1280, height: 900 } }],
    ["narrow, by touch", { viewport: { width: 360, height: 740 }, hasTouch: true }],
    ["dark", { viewport: { width: 1024, height: 800 }, colorScheme: "dark" as const }],
  ])("can be used by everyone: %s", async (_, options) => {
    const page = await withHistory({ reducedMotion: "reduce", ...options });
    await choose(page, "Earlier states");
    await pane(page)
      .getByRole("button", { name: /Look at/ })
      .first()
      .click();
    await pane(page).getByRole("button", { name: "Bring this back" }).waitFor();
    expect(await violations(page)).toEqual([]);
    const sideways = await pane(page).evaluate((one) => one.scrollWidth - one.clientWidth);
    expect(sideways).toBe(0);
    await page.keyboard.press("Escape");
    await pane(page).waitFor({ state: "detached" });
    await page.context().close();
  });

  it("says that there are none yet", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "bench.md");
    await choose(page, "Earlier states");
    await pane(page).getByText("There is none yet").waitFor();
    await page.context().close();
  });
});
