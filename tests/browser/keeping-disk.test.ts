import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { field, openNotebook, useSite } from "./harness.ts";
import { diary, keptUnder } from "./kept.ts";

const site = useSite();

// A disk of its own that holds 40 MB; only whoever may mount one can run this.
const disk = mkdtempSync(join(tmpdir(), "bedwright-disk-"));
const mounted =
  process.platform === "linux" &&
  spawnSync("mount", ["-t", "tmpfs", "-o", "size=40m", "tmpfs", disk]).status === 0;
let context: BrowserContext | undefined;

afterAll(async () => {
  await context?.close();
  if (mounted) spawnSync("umount", ["-l", disk]);
  rmSync(disk, { recursive: true, force: true });
});

/** Writes until nothing more goes onto the disk. */
function fill(): void {
  const fill = join(disk, "fill");
  for (const size of [1 << 20, 1 << 12])
    try {
      for (;;) writeFileSync(fill, Buffer.alloc(size), { flag: "a" });
    } catch {
      // It is full.
    }
}

describe.skipIf(!mounted)("a disk that is full in truth", () => {
  it("is said, and what was typed is kept once there is room", async () => {
    context = await chromium.launchPersistentContext(join(disk, "profile"), {
      executablePath: needChromium(),
      serviceWorkers: "block",
      args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disk-cache-size=1"],
    });
    await context.route("**/notebooks/diary.md", (route) =>
      route.fulfill({ body: diary, contentType: "text/markdown; charset=utf-8" }),
    );
    const page = await context.newPage();
    await openNotebook(page, site, "diary.md");
    const line = field(page, "line", "diary.md");
    await line.fill("before");
    await expect
      .poll(() => keptUnder(page, "entered:diary.md"))
      .toMatchObject({
        cells: { line: "before" },
      });
    fill();
    expect(existsSync(join(disk, "fill"))).toBe(true);
    const trouble = page.locator(".troubles p").first();
    let typed = "";
    for (let round = 0; round < 20 && !(await trouble.isVisible()); round += 1) {
      typed += "dug the north bed over ".repeat(100);
      await line.fill(typed);
      await page.waitForTimeout(500);
    }
    expect(await trouble.textContent()).toMatch(/is full|may be full/);
    rmSync(join(disk, "fill"));
    await trouble.waitFor({ state: "detached" });
    expect(await keptUnder(page, "entered:diary.md")).toMatchObject({ cells: { line: typed } });
    await page.reload();
    await expect.poll(() => line.inputValue()).toBe(typed);
  }, 60_000);
});
