import type { Page } from "playwright-core";

/** Opens the sheet from which a notebook is handed on. */
export async function openShare(page: Page): Promise<void> {
  await page.getByText("This notebook", { exact: true }).click();
  await page.getByRole("button", { name: "Share" }).click();
  await page.locator("dialog.share").waitFor();
}
