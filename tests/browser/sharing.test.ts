import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { field, openNotebook, settled, useSite } from "./harness.ts";
import { codeIn } from "./scan.ts";

const site = useSite();
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core"), "utf8");

interface AxeWindow {
  readonly axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const found = await page.evaluate(() => (window as unknown as AxeWindow).axe.run());
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
  );
}

async function openShare(page: Page): Promise<void> {
  await page.getByText("This notebook", { exact: true }).click();
  await page.getByRole("button", { name: "Share" }).click();
  await page.locator("dialog.share").waitFor();
}

const answers = (page: Page) => page.locator(".tl dd .n").allTextContents();

const linkOn = (page: Page) => page.getByLabel("The link").inputValue();

const long = `# Long words

${"`fig note` "}is said here.

\`\`\`js cell note "A note"
textEntry("nothing")
\`\`\`
`;

describe("sharing a notebook", () => {
  it("makes a link that opens as a copy with the same entries and answers", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    const entry = page.locator(".page .row.entry input[type=text]").first();
    const label = await page.locator(".page .row.entry label").first().textContent();
    await entry.fill("7 ft 6 in");
    await settled(page);
    const before = await answers(page);
    await openShare(page);
    const held = page.locator(".held-list");
    expect(await held.locator("dt").allTextContents()).toEqual([label]);
    expect(await held.locator("dd").allTextContents()).toEqual(["7 ft 6 in"]);
    const address = await linkOn(page);
    expect(await page.locator(".letters").textContent()).toBe(`${address.length} letters`);
    expect(await violations(page)).toEqual([]);

    // Somebody else, who keeps nothing here, opens it.
    const other = await site.page();
    await other.goto(address);
    await other.locator(".cell.hasvalue").first().waitFor();
    await settled(other);
    expect(await other.locator(".page .row.entry input[type=text]").first().inputValue()).toBe(
      "7 ft 6 in",
    );
    expect(await answers(other)).toEqual(before);
    await page.context().close();
    await other.context().close();
  }, 90_000);

  it("opens nothing from a link that was cut short, and says so", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    await openShare(page);
    const address = await linkOn(page);
    const other = await site.page();
    await other.goto(address.slice(0, -3));
    await other.getByText("This link is not whole").waitFor();
    await page.context().close();
    await other.context().close();
  });

  it("draws a code of 600 letters that a reader of codes reads from the screen", async () => {
    const page = await site.page({ notebooks: { "long.md": long }, colorScheme: "dark" });
    await openNotebook(page, site, "long.md");
    await openShare(page);
    const empty = (await linkOn(page)).length;
    await page.keyboard.press("Escape");
    // Letters that cannot be packed any smaller, until the link is just short enough.
    let text = noise(600 - empty);
    let address = "";
    for (;;) {
      await field(page, "note", "long.md").fill(text);
      await openShare(page);
      address = await linkOn(page);
      if (address.length <= 600) break;
      await page.getByRole("heading", { name: "As a code to scan" }).waitFor();
      expect(await page.locator(".qr").count()).toBe(0);
      expect(await page.locator("dialog.share").textContent()).toContain("cannot read it");
      text = text.slice(0, -Math.max(1, Math.ceil((address.length - 600) / 2)));
      await page.keyboard.press("Escape");
    }
    expect(address.length).toBeGreaterThan(590);
    expect(codeIn(await page.locator(".share .qr").screenshot())).toBe(address);
    await page.getByRole("button", { name: "Show it large" }).click();
    const large = page.locator(".qrlarge .qr");
    await large.waitFor();
    expect(codeIn(await page.screenshot())).toBe(address);
    const box = await large.boundingBox();
    expect(box?.height).toBeGreaterThan(700);
    await page.context().close();
  }, 60_000);
});

/** Letters as chance would have them, the same each time. */
function noise(count: number): string {
  let state = 12_345;
  return Array.from({ length: count }, () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return String.fromCharCode(33 + (Math.floor(state / 65_536) % 90));
  }).join("");
}
