import { readFileSync } from "node:fs";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { SiteServer } from "./ways-out/site-server.ts";
import { Watch } from "./ways-out/watch.ts";

const server = new SiteServer();
const near = (file: string) => readFileSync(new URL(`ways-out/${file}`, import.meta.url), "utf8");
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
  await server.listen();
  browser = await chromium.launch({
    executablePath: needChromium(),
    args: ["--no-sandbox", "--disable-gpu", "--no-first-run"],
  });
  // A service worker would answer with the files it knows, and not with those of this test.
  context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    serviceWorkers: "block",
  });
});
afterAll(async () => {
  await browser?.close();
  server.close();
});

const cellOf = (page: Page, file: string, name: string) =>
  page.locator(`#cell-${file.replace(".", "-")}-${name}`);

describe("values made to do harm", () => {
  it("end in their own places, and the page goes on", async () => {
    const watch = new Watch(server);
    const page = await watch.page(context);
    await watch.plantCanary(page);
    server.files.set("notebooks/values.md", near("values.md"));
    await watch.open(page, "values.md");
    const shown = async (name: string) =>
      (await cellOf(page, "values.md", name).locator(".held").textContent()) ?? "";
    await expect.poll(() => shown("alive"), { timeout: 20_000 }).toContain("2");

    expect(await shown("hugeTyped")).toContain("more memory than a notebook has");
    expect(await shown("hoardsTyped")).toContain("more memory than a notebook has");
    expect(await shown("recursion")).toContain("it calls itself without end");
    expect(await shown("longWorkFunctions")).toContain("a function, at [0].pieces[0].price");
    expect(await shown("keyCaller")).toMatch(/nobody/i);
    expect(await shown("throwsNothing")).toContain("can’t be worked out");

    // The page answers, and what is entered is still worked out.
    await cellOf(page, "values.md", "number").locator("input").fill("41");
    await expect.poll(() => shown("alive"), { timeout: 20_000 }).toContain("42");
    expect(await page.evaluate("window.taken")).toEqual([]);
    expect(
      await page.locator("main script, main iframe, main img, main a[href^=javascript]").count(),
    ).toBe(0);

    // A drawing stays within its place: what is over it on the page can still be pressed.
    await cellOf(page, "values.md", "overThePage").scrollIntoViewIfNeeded();
    const over = (await page.evaluate(`(() => {
      const drawn = document.querySelector("#cell-values-md-overThePage .drawn").getBoundingClientRect();
      const inside = (element) => element?.closest("#cell-values-md-overThePage svg") !== null && element !== null;
      return [[5, 5], [innerWidth - 5, 5], [drawn.left + 5, drawn.top - 9], [drawn.left + 5, drawn.bottom + 9]].filter(([x, y]) => inside(document.elementFromPoint(x, y)));
    })()`)) as unknown[];
    expect(over).toEqual([]);
    expect(await page.locator("[role=alert]:not(.roomnotice)").count()).toBe(0);
    await watch.whole(page, "values.md");
    await watch.canaryIsThere(page);
    expect(watch.odd).toEqual([]);
    await page.close();
  }, 90_000);
});

const rooms = near("rooms.md")
  .split(/^### /m)
  .slice(1)
  .map((text) => {
    const [name = "", head = "", ...code] = text.trim().split("\n");
    const [outcome = "", does = ""] = head.split(" | ");
    return { name, outcome, does, code: code.join("\n") };
  });

const roomScript = (code: string) => `onmessage = ({ data, ports: [port] }) => {
  if (!port) return;
  const send = (message) => port.postMessage(message);
  const frame = (message) => postMessage(message);
  send({ kind: "ready" });
  port.onmessage = ({ data: { kind, session } }) => {
    if (kind === "ping") send({ kind: "alive" });
    if (kind === "open") { ${code} }
  };
};`;

const roomNotebook = `# A room

\`\`\`js cell a "A cell"
1
\`\`\`

\`\`\`js cell b
a + 1
\`\`\`
`;

describe("a room that is somebody else's from the start", () => {
  const watch = new Watch(server);
  let page: Page;
  beforeAll(async () => {
    page = await watch.page(context);
    server.files.set("notebooks/room.md", roomNotebook);
    await watch.plantCanary(page);
  });
  afterAll(async () => {
    server.files.delete("room/room.js");
    await watch.canaryIsThere(page);
    await page.close();
    if (watch.odd.length > 0) throw new Error(watch.odd.join("; "));
  });

  it.each(rooms)("$name: $does", async ({ outcome, code }) => {
    server.files.set("room/room.js", roomScript(code));
    await page.goto(`${server.address}?notebook=room.md`);
    const notice = page
      .getByRole("alert")
      .filter({ hasText: "Nothing can be worked out any more" });
    if (outcome === "ended") await notice.waitFor();
    else await page.waitForTimeout(800);
    expect(await notice.count()).toBe(outcome === "ended" ? 1 : 0);

    // The page hears what is done in it at once.
    const started = Date.now();
    await page.evaluate("new Promise((done) => requestAnimationFrame(done))");
    expect(Date.now() - started).toBeLessThan(3_000);
    expect(await page.evaluate("window.taken")).toEqual([]);
    expect(await page.locator("main img, main script").count()).toBe(0);
    await watch.whole(page, "room.md");
    await watch.keptIsSame(page);
    expect(watch.odd).toEqual([]);
  });
});
