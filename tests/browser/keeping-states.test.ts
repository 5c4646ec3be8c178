import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openCell, openOwn, own, sums, write } from "./editing.ts";
import { answer, field, openNotebook, settled, useSite } from "./harness.ts";

const site = useSite();

const bench = `# Bench

\`\`\`js cell long "Length"
lengthEntry("8 ft", { min: "1 ft" })
\`\`\`

\`\`\`js cell deep "Depth"
lengthEntry("1 ft")
\`\`\`

\`\`\`js cell area pinned "Area"
long * deep
\`\`\`
`;
const notebooks = { "bench.md": bench, "sums.md": sums };

async function act(page: Page, words: string): Promise<void> {
  await page.locator("details.acts > summary").click();
  await page.locator("details.acts").getByRole("button", { name: words }).click();
}

/** Enters a text as if more than the pause had gone by since the last. */
async function enterLater(page: Page, name: string, text: string): Promise<void> {
  await page.clock.fastForward(20_000);
  await field(page, name, "bench.md").fill(text);
  await page.keyboard.press("Tab");
}

const area = (page: Page, text: string) => answer(page, "area").filter({ hasText: text }).waitFor();
const pane = (page: Page) => page.getByRole("dialog", { name: "Earlier states" });

async function withHistory() {
  const page = await site.page({ notebooks });
  await page.clock.install({ time: new Date("2026-04-25T14:05:00") });
  await openNotebook(page, site, "bench.md");
  await settled(page);
  await enterLater(page, "long", "10 ft");
  await area(page, "10");
  await enterLater(page, "long", "12 ft");
  await area(page, "12");
  await enterLater(page, "deep", "2 ft");
  await area(page, "24");
  return page;
}

describe("a notebook's earlier states", () => {
  it("are listed in words, looked at, brought back, and that is undone", async () => {
    const page = await withHistory();
    await act(page, "Earlier states");
    const lines = pane(page).locator(".states > li");
    await lines.nth(2).waitFor();
    expect(await lines.count()).toBe(3);
    expect(await lines.nth(2).textContent()).toMatch(/today 14:05.*Changed after it: entry Length/);
    expect(await lines.nth(0).textContent()).toContain("Changed after it: entry Depth");
    await lines
      .nth(1)
      .getByRole("button", { name: /Look at the state of today/ })
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
    await act(page, "Earlier states");
    await pane(page).getByText("Before another state was brought back").waitFor();
    await page.context().close();
  });

  it("are kept when everything is put back", async () => {
    const page = await withHistory();
    await page.getByRole("button", { name: "Put everything back" }).click();
    await area(page, "8");
    await act(page, "Earlier states");
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
    await act(page, "Earlier states");
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

  it("says that there are none yet", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "bench.md");
    await act(page, "Earlier states");
    await pane(page).getByText("There is none yet").waitFor();
    await page.context().close();
  });
});

describe("everything in one file", () => {
  it("goes from one browser to another, and writes over nothing there", async () => {
    const page = await withHistory();
    const downloading = page.waitForEvent("download");
    await act(page, "Keep everything in one file");
    const download = await downloading;
    expect(download.suggestedFilename()).toBe("bedwright-everything-2026-04-25.json");
    const path = await download.path();
    expect(JSON.parse(readFileSync(path, "utf8")).kind).toBe("bedwright-all");

    const other = await site.page({ notebooks });
    await openNotebook(other, site, "bench.md");
    await field(other, "long", "bench.md").fill("20 ft");
    await area(other, "20");
    await other.goto(site.address);
    const choosing = other.waitForEvent("filechooser");
    await other.getByRole("button", { name: "Take everything from a file" }).click();
    await (await choosing).setFiles(path);
    const report = other.getByRole("dialog");
    await report.getByText("What is entered in bench.md differs: yours stays").waitFor();
    await openNotebook(other, site, "bench.md");
    await area(other, "20");
    await act(other, "Earlier states");
    const theirs = pane(other).locator(".states > li", {
      hasText: "Came with a file of everything",
    });
    await theirs.getByRole("button", { name: /Look at/ }).click();
    await theirs.getByRole("button", { name: "Bring this back" }).click();
    await area(other, "24");
    await page.context().close();
    await other.context().close();
  });

  it("is refused in words where it is none", async () => {
    const page = await site.page({ notebooks });
    await page.goto(site.address);
    const choosing = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Take everything from a file" }).click();
    await (await choosing).setFiles({
      name: "shopping.json",
      mimeType: "application/json",
      buffer: Buffer.from("[]"),
    });
    await page.getByRole("dialog").getByText("This is not a file of everything").waitFor();
    await page.context().close();
  });
});
