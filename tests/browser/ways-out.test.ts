import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { needChromium } from "../../build/chromium.ts";
import { controlPage } from "./ways-out/control.ts";
import { type Heard, type Listener, listenFor } from "./ways-out/listeners.ts";
import { namesInNetLog, netLogFlags } from "./ways-out/net-log.ts";
import { cellName, notebookOf, type Probe, readProbes } from "./ways-out/read-probes.ts";
import { SiteServer } from "./ways-out/site-server.ts";
import { keepRuns } from "./ways-out/table.ts";
import { Watch } from "./ways-out/watch.ts";

const probes = readProbes();
const server = new SiteServer();
const log = (run: string) => join(tmpdir(), `ways-out-${process.pid}-${run}.json`);

// No flag here that would keep the browser itself from its network.
const flags = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-component-update"];

/**
 * Runs `act` in a browser of its own; gives what each probe was heard by. The browser has a profile, as
 * a reader's has: one that keeps nothing does not connect in advance either.
 */
async function listening(
  run: string,
  serviceWorkers: "allow" | "block",
  act: (context: BrowserContext, listeners: ReadonlyMap<string, Listener>) => Promise<Said>,
): Promise<ReadonlyMap<string, readonly Heard[]>> {
  const listeners = await listenFor(probes.map(({ name }) => name));
  const profile = mkdtempSync(join(tmpdir(), "ways-out-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: needChromium(),
    serviceWorkers,
    // Given by default, this would keep the browser from its network.
    ignoreDefaultArgs: ["--disable-background-networking"],
    args: [...flags, ...netLogFlags(log(run))],
    viewport: { width: 1280, height: 900 },
  });
  const { taken, got } = await act(context, listeners).finally(() => context.close());
  rmSync(profile, { recursive: true, force: true });
  const looked = namesInNetLog(log(run));
  rmSync(log(run));
  return new Map(
    [...listeners].map(([name, listener]) => {
      listener.close();
      const heard = new Set(listener.heard);
      if (looked.has(name)) heard.add("dns");
      if (taken.has(name)) heard.add("page");
      if (got.has(name)) heard.add("value");
      return [name, [...heard].sort()];
    }),
  );
}

interface Said {
  /** Probes whose script ran in the page. */
  readonly taken: ReadonlySet<string>;
  /** Probes that got hold of something. */
  readonly got: ReadonlySet<string>;
}

const aimsOf = (listeners: ReadonlyMap<string, Listener>) =>
  new Map([...listeners].map(([name, { aim }]) => [name, aim]));

/** What a reader might do with a way out that waits for it. Links to other sites are theirs to take. */
async function useByHand(page: Page, within: string): Promise<void> {
  for (const one of await page.locator(`${within} a[data-address]`).all())
    await one.hover({ timeout: 1_000, force: true }).catch(() => undefined);
  await page.evaluate(`{
    const found = document.querySelectorAll(${JSON.stringify(`:is(${within}) :is(a:not([data-address]), .choose)`)});
    for (const one of found) one.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }));
  }`);
}

let control: ReadonlyMap<string, readonly Heard[]>;

beforeAll(() => server.listen());
afterAll(() => server.close());

describe("with the walls taken down", () => {
  it("nearly every way out is heard", async () => {
    control = await listening("control", "allow", async (context, listeners) => {
      server.files.set("control.html", controlPage(probes, aimsOf(listeners)));
      server.files.set("service.js", "/* nothing */");
      server.files.set("blank.html", "<!doctype html><title>Blank</title><body>");
      const page = await context.newPage();
      page.on("dialog", (dialog) => void dialog.dismiss());
      await page.goto(`${server.address}control.html`, { waitUntil: "commit" });
      await page.waitForFunction("window.done === true");
      await page.waitForTimeout(1_500);
      await page.evaluate(`for (const { contentDocument } of document.querySelectorAll("[data-name]"))
        contentDocument?.querySelector("a:not([href^=http]), .choose")?.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }))`);
      const hovered = page.frameLocator("[data-name=prose-link-hover]").locator("a");
      for (const one of await hovered.all())
        await one.hover({ timeout: 2_000, force: true }).catch(() => 0);
      await page.waitForTimeout(1_500);
      const said = await page.evaluate("[window.taken, window.said]");
      const [taken, values] = said as [string[], Record<string, string>];
      const got = Object.keys(values).filter((name) => values[name]?.includes("got "));
      return { taken: new Set(taken), got: new Set(got) };
    });
    const silent = [...control].filter(([, heard]) => heard.length === 0).map(([name]) => name);
    expect(silent, "too few were shown to work").toSatisfy(() => silent.length <= 20);
  }, 90_000);
});

/** Waits until a service worker answers for the site, which then sandboxes the closed frame itself. */
async function underServiceWorker(page: Page): Promise<void> {
  await page.goto(`${server.address}?notebook=one-bed.md`);
  await page.evaluate("navigator.serviceWorker.ready.then(() => undefined)");
  await page.reload();
  await page.waitForFunction("navigator.serviceWorker.controller !== null");
}

const arrangements = [
  ["the frame sandboxed by its page", "block"],
  ["the frame sandboxed by the answer of the service worker, as without a network", "allow"],
] as const;

/** What was heard in all arrangements. */
const heardUp = new Map<string, readonly Heard[]>();

describe("with the walls up", () => {
  it.each(arrangements)(
    "nothing is heard, and the page is as it was: %s",
    async (_, serviceWorkers) => {
      const watch = new Watch(server);
      const walled = await listening("walled", serviceWorkers, async (context, listeners) => {
        const aims = aimsOf(listeners);
        const page = await watch.page(context);
        if (serviceWorkers === "allow") await underServiceWorker(page);
        await watch.plantCanary(page);
        const got = new Set<string>();
        for (const part of ["Cells", "Drawings", "Prose"] as const) {
          const some = probes.filter((probe) => probe.part === part);
          const file = `way-${part.toLowerCase()}.md`;
          server.files.set(`notebooks/${file}`, notebookOf(some, aims));
          await watch.open(page, file);
          const frame = page.locator("iframe");
          const sealed = (await frame.getAttribute("src"))?.includes("sealed") ?? false;
          expect(sealed).toBe(serviceWorkers === "allow");
          expect(await frame.getAttribute("sandbox")).toBe(sealed ? null : "allow-scripts");
          await watch.whole(page, file);
          // Each was really tried: none was refused before it ran.
          expect(await page.locator(".cell[data-kind=error]").allTextContents()).toEqual([]);
          for (const name of await gotIn(page, some)) got.add(name);
          if (part !== "Cells") await useByHand(page, part === "Prose" ? "main p" : ".drawn");
          await page.waitForTimeout(1_000);
          await watch.whole(page, file);
        }
        const taken = (await page.evaluate("window.taken")) as string[];
        await watch.canaryIsThere(page);
        // What was begun must not go on after the notebook was left.
        await page.waitForTimeout(500);
        return { taken: new Set(taken), got };
      });
      for (const [name, heard] of walled)
        heardUp.set(name, [...new Set([...(heardUp.get(name) ?? []), ...heard])].sort());
      expect([...walled].filter(([, heard]) => heard.length > 0)).toEqual([]);
      expect(watch.odd).toEqual([]);
    },
    90_000,
  );

  it("is written down beside what is heard with them down", () => {
    const runs = Object.fromEntries(
      probes.map(({ name }) => [
        name,
        { control: control?.get(name) ?? [], walled: heardUp.get(name) ?? [] },
      ]),
    );
    const words = keepRuns("Chromium", runs, probes);
    console.log(words);
    expect(words).toContain(`${probes.length} ways out were tried`);
  });
});

/** The probes whose cells say that they got something. */
async function gotIn(page: Page, some: readonly Probe[]): Promise<readonly string[]> {
  const texts = (await page.evaluate(
    `Object.fromEntries([...document.querySelectorAll(".cell:not([data-kind=error])")].map((cell) => [cell.id, cell.querySelector(".held")?.innerText ?? ""]))`,
  )) as Record<string, string>;
  const of = (probe: Probe) => `cell-way-cells-md-${cellName(probe)}`;
  return some.filter((probe) => /\bgot /.test(texts[of(probe)] ?? "")).map(({ name }) => name);
}
