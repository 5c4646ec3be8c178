import { describe, expect, it } from "vitest";
import { again, field, openNotebook, settled, useSite } from "./harness.ts";

const site = useSite();

describe("what is typed", again, () => {
  it("is there again after the page was closed", async () => {
    const first = await site.page();
    await openNotebook(first, site, "rebuild.md");
    await settled(first);
    await field(first, "kerf").fill("3/16 in");
    await first
      .locator("details.fold", { hasText: "Boards kept" })
      .first()
      .locator("summary")
      .click();
    await first.getByLabel("Row 1, count").fill("9 and a bit");
    await first.getByRole("radio", { name: "metric" }).check();
    await first.waitForTimeout(1_000);
    await first.close();

    const second = await first.context().newPage();
    await openNotebook(second, site, "rebuild.md");
    expect(await field(second, "kerf").inputValue()).toBe("3/16 in");
    await second
      .locator("details.fold", { hasText: "Boards kept" })
      .first()
      .locator("summary")
      .click();
    expect(await second.getByLabel("Row 1, count").inputValue()).toBe("9 and a bit");
    expect(await second.getByLabel("metric").isChecked()).toBe(true);
    await second.context().close();
  });

  it("is kept though the page is closed at once", async () => {
    const first = await site.page();
    await openNotebook(first, site, "one-bed.md");
    const entry = first.locator(".row.entry input[type=text]").first();
    await entry.fill("10 ft");
    await first.reload();
    const again = first.locator(".row.entry input[type=text]").first();
    await expect.poll(() => again.inputValue()).toBe("10 ft");
    await first.context().close();
  });

  it("is kept as it was typed, whatever the room says of it", async () => {
    const forged = `# Forged

\`\`\`js cell size
({
  entry: "text",
  initial: "a",
  unit: "miles",
  read: (text) => ({ ok: true, value: text, complete: "what nobody typed" }),
})
\`\`\`

\`\`\`js cell out pinned
size
\`\`\`
`;
    const page = await site.page({ notebooks: { "forged.md": forged } });
    await openNotebook(page, site, "forged.md");
    const entry = page.locator("#cell-forged-md-size input");
    await entry.fill("mine");
    await page.locator("#cell-forged-md-out", { hasText: "mine" }).waitFor();
    await page.waitForTimeout(1_200);
    const kept = await page.evaluate(
      () =>
        new Promise<string>((done, failed) => {
          const opening = indexedDB.open("bedwright");
          opening.onerror = () => failed(opening.error);
          opening.onsuccess = () => {
            const reading = opening.result.transaction("kept").objectStore("kept").getAll();
            reading.onsuccess = () => done(JSON.stringify(reading.result));
          };
        }),
    );
    expect(kept).toContain('"mine"');
    expect(kept).not.toContain("nobody typed");
    expect(kept).not.toContain("answer");
    await page.reload();
    await expect.poll(() => entry.inputValue()).toBe("mine");
    await page.context().close();
  });

  it("belongs to the garden: another notebook that uses its tables has it too", async () => {
    const page = await site.page();
    await openNotebook(page, site, "garden.md");
    await page.getByLabel("Row 1, bed").first().fill("By the gate");
    await page.waitForTimeout(600);
    await openNotebook(page, site, "rebuild.md");
    await page.locator("details.fold", { hasText: "Beds" }).first().locator("summary").click();
    expect(await page.getByLabel("Row 1, bed").inputValue()).toBe("By the gate");
    await page.context().close();
  });

  it("shows on the shelf as the notebook's first answer", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    const first = await page.locator(".tl dl > div").first().locator(".n").textContent();
    await page.goto(site.address);
    const line = page.locator(".books li", { hasText: "Spring rebuild" });
    await expect
      .poll(() => line.locator(".last").textContent(), { timeout: 15_000 })
      .toContain(first?.trim());
    expect(await line.locator(".last small").textContent()).toContain("today");
    await page.context().close();
  });
});
