import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core"), "utf8");

interface AxeWindow {
  readonly axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
}

/** What axe finds against WCAG 2.2 AA and its own good practice, a line each. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const found = await page.evaluate(() => (window as unknown as AxeWindow).axe.run());
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
  );
}
