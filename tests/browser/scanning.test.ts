import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, field, openNotebook, useSite } from "./harness.ts";
import { codeIn } from "./scan.ts";
import { openShare } from "./share-pane.ts";

const site = useSite();

const linkOn = (page: Page) => page.getByLabel("The link").inputValue();

const long = `# Long words

${"`fig note` "}is said here.

\`\`\`js cell note "A note"
textEntry("nothing")
\`\`\`
`;

describe("a code to scan", again, () => {
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
