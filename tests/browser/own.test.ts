import { readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, answer, cell, choose, field, openNotebook, settled, useSite } from "./harness.ts";
import { paths } from "./paths.ts";

const site = useSite();

const open = async (page: Page, file: string) => {
  await openNotebook(page, site, file);
  await settled(page);
};

async function makeMine(page: Page, title: string): Promise<void> {
  await choose(page, "Make it mine");
  const pane = page.getByRole("dialog", { name: "Make it mine" });
  await pane.getByLabel("What is it called?").fill(title);
  await pane.getByRole("button", { name: "Make it mine" }).click();
  await page.locator("h1", { hasText: title }).waitFor();
  await settled(page);
}

describe("a notebook of one's own", again, () => {
  it("is a copy with what was entered, on the shelf beside the shipped one, and can be put away", async () => {
    const page = await site.page({ notebooks: paths });
    await open(page, "path.md");
    await field(page, "width", "path.md").fill("3 ft");
    await answer(page, "area").filter({ hasText: "300" }).waitFor();
    await makeMine(page, "Paths behind the shed");
    expect(new URL(page.url()).searchParams.get("notebook")).toBe("paths-behind-the-shed.md");
    expect(await answer(page, "area").textContent()).toBe("300");
    await field(page, "width", "paths-behind-the-shed.md").fill("4 ft");
    await answer(page, "area").filter({ hasText: "400" }).waitFor();
    // The shipped one still has its own.
    await open(page, "path.md");
    expect(await answer(page, "area").textContent()).toBe("300");
    await page.goto(site.address);
    const mine = page.locator(".books li", { hasText: "Paths behind the shed" });
    await mine.locator(".last b", { hasText: "400" }).waitFor();
    await mine.getByRole("link").click();
    await settled(page);
    await choose(page, "Put it away");
    await page.getByRole("dialog").getByRole("button", { name: "Put it away" }).click();
    await page.locator("h1", { hasText: "The shelf" }).waitFor();
    expect(await mine.count()).toBe(0);
    await page.context().close();
  });

  it("stands in for the shipped one where that is wanted, under the name it is given", async () => {
    const page = await site.page();
    await openNotebook(page, site, "garden.md");
    await choose(page, "Make it mine");
    const pane = page.getByRole("dialog", { name: "Make it mine" });
    await pane.getByLabel("What is it called?").fill("Behind the school");
    await pane.getByLabel(/Wherever another notebook takes from this one/).check();
    await pane.getByRole("button", { name: "Make it mine" }).click();
    await page.locator("h1", { hasText: "Behind the school" }).waitFor();
    await page.goto(`${site.address}?notebook=rebuild.md`);
    await page.locator(".uses a", { hasText: "Behind the school" }).waitFor();
    await page.context().close();
  });

  it("says why a file is no notebook, and takes nothing in", async () => {
    const page = await site.page();
    await page.goto(site.address);
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a file" }).click();
    const latin1 = Buffer.from("# Caf\xe9\n", "latin1");
    await (await chooser).setFiles({ name: "cafe.md", mimeType: "text/markdown", buffer: latin1 });
    await page.getByRole("alert").filter({ hasText: "not UTF-8 text" }).waitFor();
    expect(await page.locator(".books li", { hasText: "Caf" }).count()).toBe(0);
    await page.context().close();
  });

  it("saved as a file and opened elsewhere it gives the same answers", async () => {
    const page = await site.page({ notebooks: paths });
    await open(page, "path.md");
    await field(page, "width", "path.md").fill("2 1/2 ft");
    await answer(page, "area").filter({ hasText: "250" }).waitFor();
    const download = page.waitForEvent("download");
    await choose(page, "Save as a file");
    const saved = readFileSync(await (await download).path(), "utf8");
    const path = join(tmpdir(), `bedwright-own-${process.pid}.md`);
    // Whoever opens it elsewhere has another store.
    writeFileSync(path, saved);
    await page.context().close();

    const other = await site.page({
      notebooks: { "store.md": paths["store.md"].replace("oak,6\n", "") },
    });
    await other.goto(site.address);
    const chooser = other.waitForEvent("filechooser");
    await other.getByRole("button", { name: "Open a file" }).click();
    await (await chooser).setFiles(path);
    await other.locator("h1", { hasText: "Paths" }).waitFor();
    await settled(other);
    expect(await answer(other, "area").textContent()).toBe("250");
    expect(await answer(other, "rows").textContent()).toBe("2");
    await other.context().close();
  });

  it("begins with cells that work", async () => {
    const page = await site.page();
    await page.goto(site.address);
    await page.getByRole("button", { name: "New notebook" }).click();
    const pane = page.getByRole("dialog");
    await pane.getByLabel("What is it called?").fill("Compost bays");
    await pane.getByRole("button", { name: "Begin it" }).click();
    await page.locator("h1", { hasText: "Compost bays" }).waitFor();
    await settled(page);
    expect(await answer(page, "area").textContent()).toBe("32");
    expect(await page.locator("body").getAttribute("data-view")).toBe("write");
    await page.context().close();
  });
});

describe("the room", again, () => {
  it("shows one thing at a time, large, with live entries; the arrow keys go on, Escape leaves", async () => {
    const page = await site.page({ notebooks: paths, viewport: { width: 1280, height: 720 } });
    await open(page, "path.md");
    await page.getByRole("radio", { name: "Room" }).check({ force: true });
    const place = page.locator(".wall .place");
    await place.filter({ hasText: "1 of" }).waitFor();
    await cell(page, "path.md", "width").waitFor();
    const smallest = await page.evaluate(() => {
      const sizes = [...document.querySelectorAll<HTMLElement>("#page *, .wall *")]
        .filter((one) => one.offsetParent !== null && (one.textContent ?? "").trim() !== "")
        .map((one) => {
          const { height } = one.getBoundingClientRect();
          const zoom = one.offsetHeight > 0 ? height / one.offsetHeight : 1;
          return Number.parseFloat(getComputedStyle(one).fontSize) * zoom;
        });
      return Math.min(...sizes);
    });
    expect(smallest).toBeGreaterThanOrEqual(1280 * 0.0199);
    await field(page, "width", "path.md").fill("5 ft");
    await answer(page, "area").filter({ hasText: "500" }).waitFor();
    // In a field the arrows are the field's.
    await page.keyboard.press("ArrowRight");
    expect(await place.textContent()).toContain("1 of 2");
    await page.getByRole("button", { name: "Next" }).click();
    await place.filter({ hasText: "2 of 2" }).waitFor();
    await cell(page, "path.md", "rows").waitFor();
    expect(await cell(page, "path.md", "width").isVisible()).toBe(false);
    await page.keyboard.press("ArrowLeft");
    await place.filter({ hasText: "1 of 2" }).waitFor();
    await page.keyboard.press("Escape");
    await page.locator("body[data-view=read]").waitFor();
    await page.context().close();
  });
});
