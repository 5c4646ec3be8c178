import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core"), "utf8");

interface AxeWindow {
  readonly axe: {
    run(options: object): Promise<{
      violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[];
    }>;
  };
}

/** What axe finds against WCAG 2.2 AA and its own good practice, a line each. */
export async function violations(page: Page): Promise<string[]> {
  // Run from outside, axe needs no hole in the page's policy.
  await page.evaluate(axeSource);
  const found = await page.evaluate(() => (window as unknown as AxeWindow).axe.run({}));
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary = "" }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
  );
}
