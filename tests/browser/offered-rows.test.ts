import { describe, expect, it } from "vitest";
import { again, cell, openNotebook, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

const kept = `# Kept

\`\`\`js cell rowCount pinned "Rows"
readOnHand(onHand).rows.length
\`\`\`

\`\`\`csv table onHand "Boards kept"
section,length,count
2x6,4 ft,1
\`\`\`

\`\`\`js cell sound "Sound lengths of bed A"
rowsFor("onHand", [
  { section: "2x12", length: 7 * foot, count: 2 },
  { section: "2x12", length: 5 * foot, count: 1 },
])
\`\`\`

\`\`\`js cell lost "For a table that is not there"
rowsFor("elsewhere", [{ section: "2x12" }])
\`\`\`
`;

describe("rows that a formula offers to a table", () => {
  const site = useSite();

  it("go into it by the reader's button only, once, and come out by undo", again, async () => {
    const page = await site.page({ notebooks: { "kept.md": kept } });
    await openNotebook(page, site, "kept.md");
    await settled(page);
    const offer = cell(page, "kept.md", "sound");
    const rows = cell(page, "kept.md", "onHand").locator("tbody tr");
    const add = offer.getByRole("button", { name: "Add to boards kept" });
    const filled = () =>
      rows.locator("input").evaluateAll((all) =>
        all
          .map((one) => (one as HTMLInputElement).value)
          .join(",")
          .replace(/,+$/, ""),
      );
    expect(await filled()).toBe("2x6,4 ft,1");
    expect(await offer.textContent()).toContain("2 rows to add");
    await add.click();
    await expect.poll(filled).toBe("2x6,4 ft,1,2x12,7 ft,2,2x12,5 ft,1");
    await expect.poll(() => add.isVisible()).toBe(false);
    expect(await offer.textContent()).toContain("All of it stands in boards kept.");

    await page.getByRole("button", { name: "Undo", exact: false }).first().click();
    await expect.poll(filled).toBe("2x6,4 ft,1");
    await expect.poll(() => add.isVisible()).toBe(true);
  });

  it("say where there is no such table, and are read by everyone", again, async () => {
    const page = await site.page({ notebooks: { "kept.md": kept } });
    await openNotebook(page, site, "kept.md");
    await settled(page);
    const lost = cell(page, "kept.md", "lost");
    expect(await lost.textContent()).toContain("This notebook has no table named elsewhere.");
    expect(await lost.getByRole("button", { name: /Add/ }).isVisible()).toBe(false);
    expect(await violations(page)).toEqual([]);
  });
});
