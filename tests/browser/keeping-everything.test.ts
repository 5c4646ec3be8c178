import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openOwn, sums } from "./editing.ts";
import { again, choose, field, openNotebook, useSite } from "./harness.ts";
import { area, bench, pageWithHistory, pane } from "./kept-states.ts";

const site = useSite();
const notebooks = { "bench.md": bench, "sums.md": sums };

describe("everything in one file", again, () => {
  it("goes from one browser to another, and writes over nothing there", async () => {
    const page = await pageWithHistory(site);
    const downloading = page.waitForEvent("download");
    await choose(page, "Keep everything in one file");
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
    await choose(other, "Earlier states");
    const theirs = pane(other).locator(".states > li", {
      hasText: "Came with a file of everything",
    });
    await theirs.getByRole("button", { name: /Look at/ }).click();
    await theirs.getByRole("button", { name: "Bring this back" }).click();
    await area(other, "24");
    await page.context().close();
    await other.context().close();
  });

  it("is asked to last once there is something of one's own, and not before", async () => {
    const page = await site.page({ notebooks });
    await page.addInitScript(() => {
      StorageManager.prototype.persist = async () => {
        sessionStorage.setItem("asked", String(Number(sessionStorage.getItem("asked")) + 1));
        return true;
      };
    });
    const asked = () => page.evaluate(() => sessionStorage.getItem("asked"));
    await openNotebook(page, site, "sums.md");
    await field(page, "side", "sums.md").fill("9 ft");
    expect(await asked()).toBeNull();
    await openOwn(page, site);
    expect(await asked()).toBe("1");
    await page.context().close();
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
