import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { controlPage } from "./ways-out/control.ts";
import { domain, type Heard, type Listener, listenFor } from "./ways-out/listeners.ts";
import { notebookOf, readProbes } from "./ways-out/read-probes.ts";
import { SiteServer } from "./ways-out/site-server.ts";
import { keepRuns } from "./ways-out/table.ts";

const firefox = "/usr/bin/firefox-esr";
const probes = readProbes();
const server = new SiteServer();

/**
 * Firefox is driven by nobody: it opens a page of ours that opens the rest in frames, waits, and
 * reports by itself. Its own log names every look-up it makes.
 */
async function listening(
  run: string,
  pageFor: (listeners: ReadonlyMap<string, Listener>) => string,
): Promise<ReadonlyMap<string, readonly Heard[]>> {
  const listeners = await listenFor(probes.map(({ name }) => name));
  server.files.set(`${run}.html`, pageFor(listeners));
  const profile = mkdtempSync(join(tmpdir(), "ways-out-"));
  writeFileSync(join(profile, "user.js"), preferences);
  const came = server.reports.length;
  const child = spawn(
    firefox,
    ["--headless", "--no-remote", "--profile", profile, `${server.address}${run}.html`],
    {
      stdio: "ignore",
      env: {
        ...process.env,
        HOME: profile,
        MOZ_LOG: "nsHostResolver:5",
        MOZ_LOG_FILE: join(profile, "look-ups"),
      },
    },
  );
  await expect.poll(() => server.reports.length, { timeout: 50_000 }).toBe(came + 1);
  await ended(child);
  const looked = lookedUp(profile);
  rmSync(profile, { recursive: true, force: true });
  const report = server.reports.at(-1) as { taken: string[]; got: string[] };
  return new Map(
    [...listeners].map(([name, listener]) => {
      listener.close();
      const heard = new Set(listener.heard);
      if (looked.has(name)) heard.add("dns");
      if (report.taken.includes(name)) heard.add("page");
      if (report.got.includes(name)) heard.add("value");
      return [name, [...heard].sort()];
    }),
  );
}

const preferences = `
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("toolkit.telemetry.reportingpolicy.firstRun", false);
user_pref("browser.aboutwelcome.enabled", false);
user_pref("app.update.enabled", false);
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("browser.sessionstore.resume_from_crash", false);
user_pref("media.peerconnection.ice.loopback", true);
user_pref("media.peerconnection.ice.obfuscate_host_addresses", false);
`;

async function ended(child: ChildProcess): Promise<void> {
  const over = new Promise((done) => child.once("exit", done));
  child.kill();
  await over;
}

function lookedUp(profile: string): ReadonlySet<string> {
  const names = new Set<string>();
  for (const file of readdirSync(profile).filter((name) => name.startsWith("look-ups"))) {
    const text = readFileSync(join(profile, file), "latin1");
    for (const [, name = ""] of text.matchAll(
      new RegExp(`([\\w-]{1,60})\\.${domain.replace(".", "\\.")}`, "g"),
    ))
      names.add(name);
  }
  return names;
}

/** Runs in Firefox: presses what waits to be pressed, reports what became of all. */
const report = `
  const clicks = (page, within) => { for (const one of page.querySelectorAll(within))
    one.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true })); };
  const post = (taken, got) => fetch("/report", { method: "POST", body: JSON.stringify({ taken, got }) });
  const wait = (ms) => new Promise((done) => setTimeout(done, ms));
`;

const walledPage = (
  files: readonly string[],
) => `<!doctype html><meta charset="utf-8"><title>Walled</title>
<link rel="icon" href="data:,"><body><script>
window.taken = [];
${report}
(async () => {
  const got = [];
  for (const file of ${JSON.stringify(files)}) {
    const frame = document.createElement("iframe");
    frame.width = 1200; frame.height = 800;
    frame.src = "/?notebook=" + file;
    document.body.append(frame);
    for (let n = 0; n < 80; n += 1) {
      await wait(250);
      if (frame.contentDocument?.querySelector("[id$=-md-last].hasvalue")) break;
    }
    await wait(1500);
    const page = frame.contentDocument;
    for (const cell of page.querySelectorAll(".cell:not([data-kind=error])"))
      if (/\\bgot /.test(cell.querySelector(".held")?.textContent ?? "")) got.push(cell.id.split("-md-")[1]);
    if (!page.querySelector("[id$=-md-last].hasvalue")) got.push("no answer from " + file);
    for (const cell of page.querySelectorAll(".cell[data-kind=error]")) got.push("refused before it ran: " + cell.id);
    clicks(page, ":is(main p, .drawn) :is(a:not([data-address]), .choose)");
    await wait(1000);
    window.taken.push(...(frame.contentWindow.taken ?? []));
  }
  await post(window.taken, got);
})();
</script>`;

const controlWithReport = (page: string) => `${page}<script>
${report}
(async () => {
  for (let n = 0; n < 60 && !window.done; n += 1) await wait(250);
  await wait(1500);
  for (const { contentDocument } of document.querySelectorAll("[data-name]"))
    if (contentDocument) clicks(contentDocument, "a:not([href^=http]), .choose");
  await wait(2500);
  await post(window.taken, Object.keys(window.said).filter((name) => String(window.said[name]).includes("got ")));
})();
</script>`;

describe.skipIf(!existsSync(firefox))("in Firefox", () => {
  beforeAll(() => server.listen());
  afterAll(() => server.close());

  it("nothing is heard with the walls up, and much with the walls down", async () => {
    const control = await listening("control", (listeners) => {
      const aims = new Map([...listeners].map(([name, { aim }]) => [name, aim]));
      server.files.set("service.js", "/* nothing */");
      server.files.set("blank.html", "<!doctype html><title>Blank</title><body>");
      return controlWithReport(controlPage(probes, aims));
    });
    const walled = await listening("walled", (listeners) => {
      const aims = new Map([...listeners].map(([name, { aim }]) => [name, aim]));
      const files = (["Cells", "Drawings", "Prose"] as const).map((part) => {
        const file = `way-${part.toLowerCase()}.md`;
        const some = probes.filter((probe) => probe.part === part);
        server.files.set(`notebooks/${file}`, notebookOf(some, aims));
        return file;
      });
      return walledPage(files);
    });
    const last = server.reports.at(-1) as { got: string[]; taken: string[] };
    const runs = Object.fromEntries(
      probes.map(({ name }) => [
        name,
        { control: control.get(name) ?? [], walled: walled.get(name) ?? [] },
      ]),
    );
    console.log(keepRuns("Firefox", runs, probes));
    expect(last).toEqual({ got: [], taken: [] });
    expect([...walled].filter(([, heard]) => heard.length > 0)).toEqual([]);
    expect([...control].filter(([, heard]) => heard.length > 0).length).toBeGreaterThan(100);
  }, 120_000);
});
