import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { again, field, openNotebook, settled, useSite } from "./harness.ts";
import { openShare } from "./share-pane.ts";
import { violations } from "./violations.ts";

const site = useSite();
const folder = mkdtempSync(join(tmpdir(), "one-page-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Saves the notebook that is open as one page; gives the file. */
async function savedPage(page: Page, name: string): Promise<string> {
  await openShare(page);
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as one page (HTML)" }).click();
  const file = join(folder, name);
  await (await coming).saveAs(file);
  await page.keyboard.press("Escape");
  return file;
}

const answers = (page: Page) => page.locator(".tl dd .n").allTextContents();

/** Opens a file from the disk; gives what it asked for besides itself. */
async function opened(file: string, javaScriptEnabled: boolean) {
  const page = await site.page({ javaScriptEnabled });
  const asked: string[] = [];
  const address = pathToFileURL(file).href;
  page.on("request", (request) => {
    const url = request.url();
    if (url !== address && !url.startsWith("data:")) asked.push(url);
  });
  const said: string[] = [];
  page.on("console", (message) => said.push(message.text()));
  await page.goto(address);
  return { page, asked, said };
}

const hostile = `# <script>alert(1)</script> & "words"

A [link](https://example.org/a), [another](http://example.org/b), [a third](javascript:alert(1)) and
[one here](#part). It is \`fig note\`, with \`fig size\`.

## Part

\`\`\`js cell note "A note"
textEntry("nothing")
\`\`\`

\`\`\`js cell size "Its <b>size</b>"
countEntry("3", { min: 1, max: 9 })
\`\`\`

\`\`\`js cell said pinned "</style><script>"
size * 2
\`\`\`
`;

describe("a notebook as one page", again, () => {
  it("shows the same answers from the disk without script, and prints", async () => {
    const page = await site.page();
    await openNotebook(page, site, "rebuild.md");
    await settled(page);
    await field(page, "kerf").fill("3/32 in");
    await settled(page);
    const before = await answers(page);
    const drawings = await page.locator(".page .pic svg").count();
    const file = await savedPage(page, "rebuild.html");
    // The page itself is as it was.
    expect(await page.locator(".page .pic svg").count()).toBe(drawings);
    expect(await field(page, "kerf").inputValue()).toBe("3/32 in");
    await page.context().close();

    const text = readFileSync(file, "utf8");
    expect(text.length).toBeLessThan(600_000);
    expect(text).not.toMatch(/<script|<iframe|<link\b|<button|<input|<select|<textarea/i);
    expect(text).not.toMatch(/<[a-z][^>]*\son[a-z]+\s*=/i);
    const { page: one, asked, said } = await opened(file, false);
    expect(await answers(one)).toEqual(before);
    expect(await one.locator("#cell-rebuild-md-kerf .typed").textContent()).toBe("3/32 in");
    expect(await one.locator(".asof").textContent()).toContain("As of ");
    expect(await one.locator(".page .pic svg").count()).toBeGreaterThanOrEqual(drawings);
    const working = one.locator("#cell-rebuild-md-total details.working");
    await working.locator("summary").click();
    expect(await working.locator("dl").isVisible()).toBe(true);
    await one.locator("details.fold summary").first().click();
    expect(await one.locator("details.fold[open] tbody tr").count()).toBeGreaterThan(10);
    expect((await one.pdf()).length).toBeGreaterThan(100_000);
    expect(asked).toEqual([]);
    expect(said).toEqual([]);
    await one.context().close();
  }, 90_000);

  it("has nothing for axe to mend, at any width", async () => {
    const page = await site.page();
    await openNotebook(page, site, "one-bed.md");
    await settled(page);
    const file = await savedPage(page, "one-bed.html");
    await page.context().close();
    const { page: one } = await opened(file, true);
    expect(await violations(one)).toEqual([]);
    await one.setViewportSize({ width: 360, height: 800 });
    expect(await violations(one)).toEqual([]);
    const wide = await one.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(360);
    await one.context().close();
  }, 60_000);

  it("keeps hostile names and texts what they are: text", async () => {
    const page = await site.page({ notebooks: { "odd.md": hostile } });
    await openNotebook(page, site, "odd.md");
    await field(page, "note", "odd.md").fill('"><img src=x onerror=alert(1)></style>');
    await settled(page);
    const file = await savedPage(page, "odd.html");
    await page.context().close();
    const { page: one, asked } = await opened(file, true);
    let ran = false;
    one.on("dialog", () => {
      ran = true;
    });
    await one.reload();
    const tags = await one.evaluate(() =>
      [...document.querySelectorAll("script, img, style, meta, b:not(summary b), a")].map(
        (element) => `${element.localName} ${element.getAttribute("href") ?? ""}`.trim(),
      ),
    );
    // Of what is not text: the page's own head, and the one address that is secure, and the place here.
    expect(tags.filter((tag) => tag.startsWith("a"))).toEqual([
      "a https://example.org/a",
      "a #part",
    ]);
    expect(tags.filter((tag) => /^(script|img|b)\b/.test(tag))).toEqual([]);
    expect(tags.filter((tag) => tag === "style")).toHaveLength(1);
    expect(await one.locator("h1").textContent()).toBe('<script>alert(1)</script> & "words"');
    expect(await one.locator(".typed").first().textContent()).toContain("onerror=alert(1)");
    expect(ran).toBe(false);
    expect(asked).toEqual([]);
    await one.context().close();
  }, 60_000);
});
