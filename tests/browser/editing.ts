import type { Page } from "playwright-core";
import { choose, openNotebook, type Site, settled } from "./harness.ts";

const fence = (info: string, content: string) => `\`\`\`${info}\n${content}\n\`\`\`\n`;

/** A notebook small enough that every figure of it can be checked in the head. */
export const sums = [
  "# Sums\n\nThe sides come to `fig total`.\n\n## Sides\n\n",
  fence('js cell side "One side"', 'lengthEntry("8 ft", { min: "1 ft" })'),
  "\n",
  fence('js cell twice "Two sides"', "side * 2"),
  "\n",
  fence('js cell total pinned "All of it"', "twice + side"),
  "\n",
  fence('js cell apart "Apart"', "6 * 7"),
  "\n## A list\n\nWhat is in it stands below.\n\n",
  fence('csv table list "The list"', "thing,count\nfirst,1\nsecond,2"),
].join("");

/** The place of a cell of the notebook that is written. */
export function own(page: Page, name: string) {
  return page.locator(`.cell[id$="-${name}"]`);
}

/** The field of an opened cell. */
export function formula(page: Page, name: string) {
  return own(page, name).locator(".own-slip .cm-content");
}

/** Makes a copy of a shipped notebook that is the reader's own, and opens it in the writing view. */
export async function openOwn(page: Page, site: Site, file = "sums.md"): Promise<void> {
  await openNotebook(page, site, file);
  await settled(page);
  await choose(page, "Make it mine");
  const pane = page.getByRole("dialog", { name: "Make it mine" });
  await pane.getByLabel("What is it called?").fill("My own");
  await pane.getByRole("button", { name: "Make it mine" }).click();
  await page.locator("h1", { hasText: "My own" }).waitFor();
  await settled(page);
  await toWriting(page);
}

/** Goes to the writing view, and waits until what stands between blocks there has come. */
export async function toWriting(page: Page): Promise<void> {
  await page.locator(".top label", { hasText: "Write" }).click();
  await page.locator(".blocktools").first().waitFor();
}

/** Opens the slip of a cell, with the caret at the end of its formula. */
export async function openCell(page: Page, name: string): Promise<void> {
  await own(page, name).locator(".cellname").click();
  await formula(page, name).waitFor();
  await page.keyboard.press("ControlOrMeta+End");
}

/** Writes another formula into an opened cell. */
export async function write(page: Page, name: string, text: string): Promise<void> {
  await formula(page, name).click();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.insertText(text);
}
