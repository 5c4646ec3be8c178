import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, openNotebook, settled, useSite } from "./harness.ts";
import { openShare } from "./share-pane.ts";
import { violations } from "./violations.ts";

const site = useSite();

const answers = (page: Page) => page.locator(".tl dd .n").allTextContents();

const linkOn = (page: Page) => page.getByLabel("The link").inputValue();

describe("sharing a notebook", again, () => {
  it("makes a link that opens as a copy with the same entries and answers", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    const entry = page.locator(".page .row.entry input[type=text]").first();
    const label = await page.locator(".page .row.entry label").first().textContent();
    await entry.fill("7 ft 6 in");
    await settled(page);
    const before = await answers(page);
    await openShare(page);
    const held = page.locator(".held-list");
    expect(await held.locator("dt").allTextContents()).toEqual([label]);
    expect(await held.locator("dd").allTextContents()).toEqual(["7 ft 6 in"]);
    const address = await linkOn(page);
    expect(await page.locator(".letters").textContent()).toBe(`${address.length} letters`);
    expect(await violations(page)).toEqual([]);

    // Somebody else, who keeps nothing here, opens it.
    const other = await site.page();
    await other.goto(address);
    await other.locator(".cell.hasvalue").first().waitFor();
    await settled(other);
    expect(await other.locator(".page .row.entry input[type=text]").first().inputValue()).toBe(
      "7 ft 6 in",
    );
    expect(await answers(other)).toEqual(before);
    await page.context().close();
    await other.context().close();
  }, 90_000);

  it("writes over nothing that is kept, and opens the same copy again", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    const entry = page.locator(".page .row.entry input[type=text]").first();
    await entry.fill("7 ft 6 in");
    await settled(page);
    await openShare(page);
    const address = await linkOn(page);
    await page.keyboard.press("Escape");
    // The same reader has gone on to other entries of their own when the link comes back.
    await entry.fill("5 ft");
    await settled(page);
    const copy = await page.context().newPage();
    await copy.goto(address);
    const copied = copy.locator(".page .row.entry input[type=text]").first();
    await copied.waitFor();
    expect(await copied.inputValue()).toBe("7 ft 6 in");
    const place = new URL(copy.url()).searchParams.get("notebook");
    expect(place).not.toBe("one-bed.md");
    await copied.fill("9 ft");
    await settled(copy);
    await copy.close();
    await page.reload();
    await entry.waitFor();
    expect(await entry.inputValue()).toBe("5 ft");
    const again = await page.context().newPage();
    await again.goto(address);
    const third = again.locator(".page .row.entry input[type=text]").first();
    await third.waitFor();
    expect(new URL(again.url()).searchParams.get("notebook")).toBe(place);
    expect(await third.inputValue()).toBe("9 ft");
    await page.context().close();
  }, 60_000);

  it("opens nothing from a link that was cut short, and says so", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    await openShare(page);
    const address = await linkOn(page);
    const other = await site.page();
    await other.goto(address.slice(0, -3));
    await other.getByText("This link is not whole").waitFor();
    await page.context().close();
    await other.context().close();
  });
});
