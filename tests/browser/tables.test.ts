import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, answer, openNotebook, settled, useSite } from "./harness.ts";

const site = useSite();

async function openBeds(page: Page) {
  await openNotebook(page, site, "rebuild.md");
  await settled(page);
  await page.locator("details.fold", { hasText: "Beds" }).first().locator("summary").click();
  const table = page.locator("table.edit").first();
  await table.waitFor();
  return table;
}

/** Forty rows as a spreadsheet puts them on the clipboard. */
function fortyRows(): string {
  const lines = Array.from(
    { length: 40 },
    (_, index) => `N${index + 1}\t${6 + (index % 3)} ft\t4 ft`,
  );
  return ["Bed\tLength\tWidth", ...lines].join("\r\n");
}

describe("the table of beds", again, () => {
  it("takes forty rows from a spreadsheet's clipboard", async () => {
    const page = await site.page({ permissions: ["clipboard-read", "clipboard-write"] });
    const table = await openBeds(page);
    const total = await answer(page, "total").textContent();
    await page.evaluate((text) => navigator.clipboard.writeText(text), fortyRows());
    await table.getByLabel("Row 1, bed").focus();
    await page.keyboard.press("Control+v");
    await table.getByLabel("Row 40, bed").waitFor();
    expect(await table.getByLabel("Row 40, bed").inputValue()).toBe("N40");
    expect(await table.getByLabel("Row 2, length").inputValue()).toBe("7 ft");
    expect(await page.locator(".note").first().textContent()).toContain("40 rows, all counted");
    await expect
      .poll(() => answer(page, "total").textContent(), { timeout: 30_000 })
      .not.toBe(total);
    await page.context().close();
  }, 60_000);

  it("marks a bad value at its row and column, and works the rest out", async () => {
    const page = await site.page();
    const table = await openBeds(page);
    const bad = table.getByLabel("Row 3, length");
    await bad.fill("6 fot");
    await expect.poll(() => bad.getAttribute("aria-invalid"), { timeout: 10_000 }).toBe("true");
    const why = page.locator(`#${await bad.getAttribute("aria-describedby")}`);
    expect(await why.textContent()).toMatch(/Row 3, length.*6 fot/);
    expect(await bad.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await page.locator(".note").first().textContent()).toContain("row 3, length not read");
    await settled(page);
    expect(await answer(page, "total").textContent()).toMatch(/^\$/);
    expect(await page.locator(".page").textContent()).toContain("16 of 17");
    await bad.fill("6 ft");
    await expect.poll(() => bad.getAttribute("aria-invalid")).toBeNull();
    await page.context().close();
  }, 60_000);

  it("goes on by Tab, down by Enter, and grows at its end", async () => {
    const page = await site.page();
    const table = await openBeds(page);
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
    await table.getByLabel("Row 1, bed").focus();
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("Row 1, length");
    await page.keyboard.press("Enter");
    expect(await focused()).toBe("Row 2, length");
    await table.getByLabel("Row 17, bed").focus();
    await page.keyboard.press("Enter");
    expect(await focused()).toBe("Row 18, bed");
    await page.keyboard.press("ArrowUp");
    expect(await focused()).toBe("Row 17, bed");
    await page.context().close();
  });

  it("takes a row out and brings it back", async () => {
    const page = await site.page();
    const table = await openBeds(page);
    await table.getByLabel("Row 2, bed").focus();
    await page.getByRole("button", { name: "Take out row 2" }).click();
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(16);
    expect(await table.getByLabel("Row 2, bed").inputValue()).toBe("3");
    await page.getByRole("button", { name: "Undo last change" }).click();
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(17);
    expect(await table.getByLabel("Row 2, bed").inputValue()).toBe("2");
    await page.context().close();
  });

  it("is saved to CSV and opened from it", async () => {
    const page = await site.page();
    const table = await openBeds(page);
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as CSV of Beds" }).click();
    const saved = await (await download).createReadStream();
    let text = "";
    for await (const part of saved) text += String(part);
    expect((await download).suggestedFilename()).toBe("beds.csv");
    expect(text.split(/\r?\n/)[0]).toMatch(/^bed,length,width/);
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a CSV file for Beds" }).click();
    await (await chooser).setFiles({
      name: "mine.csv",
      mimeType: "text/csv",
      buffer: Buffer.from("width;bed;length\n1,2 m;A;2,4 m\n"),
    });
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(1);
    expect(await table.getByLabel("Row 1, bed").inputValue()).toBe("A");
    expect(await table.getByLabel("Row 1, length").inputValue()).toBe("2,4 m");
    await page.context().close();
  });

  it("is not filled from a file that holds no text, and says why; opening is undone", async () => {
    const page = await site.page();
    const table = await openBeds(page);
    const open = async (buffer: Buffer) => {
      const chooser = page.waitForEvent("filechooser");
      await page.getByRole("button", { name: "Open a CSV file for Beds" }).click();
      await (await chooser).setFiles({ name: "mine.csv", mimeType: "text/csv", buffer });
    };
    await open(Buffer.from("bed,length,width\nB\u00fcgel,8 ft,4 ft\n", "latin1"));
    await page.getByText("mine.csv can’t be opened: it is not UTF-8 text").first().waitFor();
    expect(await table.locator("tr[data-row]").count()).toBe(17);
    await open(Buffer.from("bed,length,width\nB\u00fcgel,8 ft,4 ft\n"));
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(1);
    await page.getByRole("button", { name: "Undo last change" }).click();
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(17);
    await page.context().close();
  });

  it("takes rows put in by hand, in place of all or at the end", async () => {
    const page = await site.page();
    const table = await openBeds(page);
    const paste = async (text: string, how: string) => {
      await page.getByRole("button", { name: "Paste rows of Beds" }).click();
      await page.getByLabel("Rows copied from a spreadsheet").fill(text);
      await page.getByRole("button", { name: how }).click();
    };
    await paste("A\t8 ft\t4 ft\nB\t6 ft\t3 ft", "Put them in place of all rows");
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(2);
    await paste("C\t4 ft\t4 ft", "Add them at the end");
    await expect.poll(() => table.locator("tr[data-row]").count()).toBe(3);
    expect(await table.getByLabel("Row 3, bed").inputValue()).toBe("C");
    await page.context().close();
  });

  it("stays quick to type in with 2,000 rows", async () => {
    const page = await site.page({ permissions: ["clipboard-read", "clipboard-write"] });
    const table = await openBeds(page);
    const lines = Array.from({ length: 2_000 }, (_, index) => `L${index + 1}\t8 ft\t4 ft`).join(
      "\n",
    );
    await page.evaluate((text) => navigator.clipboard.writeText(text), lines);
    await table.getByLabel("Row 1, bed").focus();
    await page.keyboard.press("Control+v");
    await table.getByLabel("Row 60, bed").waitFor();
    expect(await page.locator(".note").first().textContent()).toContain("2,000 rows");
    expect(await table.locator("tr[data-row]").count()).toBeLessThanOrEqual(100);
    const entry = table.getByLabel("Row 2, length");
    await entry.focus();
    // What a key costs the page itself: the clock on the wall tells more of the machine's other work.
    await page.evaluate(() => {
      const costs: number[] = [];
      Object.assign(window, { costs });
      let began = 0;
      addEventListener(
        "input",
        () => {
          began = performance.now();
        },
        { capture: true },
      );
      addEventListener("input", () => costs.push(performance.now() - began));
    });
    await page.keyboard.type("123456789");
    expect(await entry.inputValue()).toContain("123456789");
    const costs = await page.evaluate(() => (window as unknown as { costs: number[] }).costs);
    expect(costs).toHaveLength(9);
    expect(costs.sort((a, b) => a - b)[4]).toBeLessThan(100);
    await page.context().close();
  }, 90_000);
});
