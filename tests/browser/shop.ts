import type { Page } from "playwright-core";
import { expect } from "vitest";
import {
  answer,
  choose,
  field,
  openNotebook,
  type PageOptions,
  type Site,
  settled,
} from "./harness.ts";

/** 1.1 x (4 boards at $20 + 6 bags at $5) = $121; what stands in it is easily worked out by hand. */
export const shop = `# Shop

\`\`\`js cell pay pinned "To pay"
(1 + tax) * (boards * board + bags * bag)
\`\`\`

\`\`\`js cell pieces pinned "Pieces"
boards + bags
\`\`\`

\`\`\`js cell goods quiet "Goods"
boards * board + bags * bag
\`\`\`

\`\`\`js cell board "A board"
moneyEntry("$20.00")
\`\`\`

\`\`\`js cell boards "Boards"
countEntry("4", { min: 1, max: 9 })
\`\`\`

\`\`\`js cell bag "A bag"
moneyEntry("$5.00")
\`\`\`

\`\`\`js cell bags "Bags"
countEntry("6")
\`\`\`

\`\`\`js cell tax "Tax"
percentEntry("10 %")
\`\`\`

\`\`\`js cell colour "Colour"
choiceEntry("grey", { choices: ["grey", "red"] })
\`\`\`

\`\`\`csv table yards "Yards"
yard,trip_cost
North,6.00
South,7.00
\`\`\`
`;

/** A notebook small enough to be worked out by hand, opened on a page of its own. */
export async function openShop(site: Site, options: PageOptions = {}): Promise<Page> {
  const page = await site.page({ ...options, notebooks: { "shop.md": shop } });
  await openNotebook(page, site, "shop.md");
  await settled(page);
  return page;
}

/** Types into an entry and waits for what is to pay then. */
export async function enter(page: Page, name: string, text: string, pay: string): Promise<void> {
  await field(page, name, "shop.md").fill(text);
  await expect.poll(() => answer(page, "pay").textContent()).toBe(pay);
}

/** Keeps what is entered, under the name that is offered or another. */
export async function keep(page: Page, name?: string): Promise<void> {
  await choose(page, "Keep as a plan");
  const pane = page.getByRole("dialog", { name: "Keep as a plan" });
  if (name !== undefined) await pane.getByLabel("Its name").fill(name);
  await pane.getByRole("button", { name: "Keep", exact: true }).click();
  await pane.getByRole("button", { name: "Back to the notebook" }).click();
}

/** Opens the sheet of plans and waits until all are worked out. */
export async function openSheet(page: Page): Promise<void> {
  await choose(page, "Plans side by side");
  await page.getByRole("heading", { name: "Plans side by side", level: 1 }).waitFor();
  await allWorkedOut(page);
}

const allWorkedOut = (page: Page) =>
  expect.poll(() => page.locator(".planled .stale").count(), { timeout: 20_000 }).toBe(0);

/** The figures of a row of answers, column by column. */
export const row = (page: Page, name: string) =>
  page
    .locator(".planled:not(.differences) tbody tr", {
      has: page.locator(".name").getByText(name, { exact: true }),
    })
    .locator("td .n")
    .allTextContents();

/** The names of the columns. */
export const heads = (page: Page) =>
  page.locator(".planled:not(.differences) thead .planname").allTextContents();
