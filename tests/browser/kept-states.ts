import type { BrowserContextOptions, Page } from "playwright-core";
import { sums } from "./editing.ts";
import { answer, field, openNotebook, type Site, settled } from "./harness.ts";

/** A notebook whose one answer can be worked out in the head. */
export const bench = `# Bench

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

/** Enters a text as if more than the pause had gone by since the last. */
async function enterLater(page: Page, name: string, text: string): Promise<void> {
  await page.clock.fastForward(20_000);
  await field(page, name, "bench.md").fill(text);
  await page.keyboard.press("Tab");
}

export const area = (page: Page, text: string) =>
  answer(page, "area").filter({ hasText: text }).waitFor({ state: "attached" });
export const pane = (page: Page) => page.getByRole("dialog", { name: "Earlier states" });

/** A page on the notebook with three changes, each after a pause: the area is 24 square feet. */
export async function pageWithHistory(
  site: Site,
  options: BrowserContextOptions = {},
): Promise<Page> {
  const notebooks = { "bench.md": bench, "sums.md": sums };
  const page = await site.page({ notebooks, ...options });
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
