import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { field, openNotebook, useSite } from "./harness.ts";
import { diary, typeAndKill } from "./kept.ts";

const site = useSite();

interface Running {
  readonly page: Page;
  /** Ends the browser with all its processes at once, as a power cut does. */
  kill(): Promise<void>;
}

let profile = "";
let running: ChildProcess | undefined;

beforeAll(() => {
  profile = mkdtempSync(join(tmpdir(), "bedwright-profile-"));
});

afterAll(() => {
  end();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

/** Ends the group of processes that was started here, and no other. */
function end(): void {
  if (running?.pid !== undefined && running.exitCode === null)
    process.kill(-running.pid, "SIGKILL");
  running = undefined;
}

/** Starts a browser that keeps what it keeps in a folder, so that it outlasts the browser. */
async function start(): Promise<Running> {
  const child = spawn(
    needChromium(),
    [
      `--user-data-dir=${profile}`,
      "--remote-debugging-port=0",
      "--headless=new",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "about:blank",
    ],
    { detached: true, stdio: ["ignore", "ignore", "pipe"] },
  );
  running = child;
  const address = await new Promise<string>((found, failed) => {
    let said = "";
    child.stderr.on("data", (more: Buffer) => {
      said += more.toString();
      const [, address] = /DevTools listening on (ws:\S+)/.exec(said) ?? [];
      if (address) found(address);
    });
    child.on("exit", () => failed(new Error(`the browser did not start: ${said}`)));
  });
  const browser: Browser = await chromium.connectOverCDP(address);
  const [context] = browser.contexts();
  if (!context) throw new Error("the browser has no context");
  await context.route("**/notebooks/diary.md", (route) =>
    route.fulfill({ body: diary, contentType: "text/markdown; charset=utf-8" }),
  );
  // A service worker would fetch past the route.
  await context.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  return {
    page,
    async kill() {
      const gone = new Promise((done) => child.on("exit", done));
      end();
      await gone;
      await browser.close().catch(() => undefined);
    },
  };
}

describe("a browser that is killed while one types", () => {
  it("loses at most the last second, ten times", async () => {
    let { page, kill } = await start();
    for (let round = 0; round < 10; round += 1) {
      await openNotebook(page, site, "diary.md");
      const line = field(page, "line", "diary.md");
      await line.fill("");
      await line.focus();
      const { least, most } = await typeAndKill(page, kill, "dug the north bed over ");
      ({ page, kill } = await start());
      await openNotebook(page, site, "diary.md");
      const kept = await field(page, "line", "diary.md").inputValue();
      expect(kept.startsWith(least), `“${kept}” has all of “${least}”`).toBe(true);
      expect(most.startsWith(kept), `“${kept}” is the beginning of “${most}”`).toBe(true);
    }
    await kill();
  }, 180_000);
});
