import { createHash } from "node:crypto";
import {
  appendFileSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
} from "node:fs";
import type { Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { out } from "../../build/root.ts";
import { serveFolder } from "../../build/serve.ts";
import { buildOffline } from "../../build/steps/offline.ts";

/** Files that differ between one made build and another. */
const changed = ["page.js", "style.css", "room/facts.js", "room/work.js", "index.html"];

/** The same site in several builds, one of which is served at a time, always at the same address. */
export class Builds {
  readonly folder = mkdtempSync(join(tmpdir(), "builds-"));
  address = "";
  #server: Server | undefined;

  /** Makes a build that differs from the site in some of its files. */
  async make(name: string): Promise<void> {
    const site = join(this.folder, name);
    cpSync(join(out, "site"), site, { recursive: true });
    for (const file of changed) appendFileSync(join(site, file), this.#comment(file, name));
    await buildOffline(site);
  }

  #comment(file: string, name: string): string {
    return file.endsWith(".html") ? `<!-- ${name} -->` : `\n/* ${name} */\n`;
  }

  /** Breaks a file of a build after its hashes were written. */
  spoil(name: string, file: string): void {
    appendFileSync(join(this.folder, name, file), "\n/* something else */\n");
  }

  leaveOut(name: string, file: string): void {
    rmSync(join(this.folder, name, file));
  }

  /** Serves this one from now on. */
  async serve(name: string): Promise<void> {
    const link = join(this.folder, "served");
    symlinkSync(join(this.folder, name), `${link}-next`);
    renameSync(`${link}-next`, link);
    if (this.#server) return;
    const { server, address } = await serveFolder(link, 0);
    this.#server = server;
    this.address = address;
  }

  /** Nothing answers any more. */
  async stop(): Promise<void> {
    const server = this.#server;
    if (!server) return;
    server.closeAllConnections();
    await new Promise((done) => server.close(done));
    this.#server = undefined;
  }

  async remove(): Promise<void> {
    await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }

  /** The hashes of a build's files, by path. */
  hashes(name: string): Readonly<Record<string, string>> {
    const site = join(this.folder, name);
    const files = readdirSync(site, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name !== "sw.js")
      .map((entry) => join(entry.parentPath, entry.name));
    return Object.fromEntries(
      files.map((file) => [
        file.slice(site.length + 1),
        createHash("sha256").update(readFileSync(file)).digest("hex"),
      ]),
    );
  }
}

/** The hashes of what a page gets when it asks for these files. */
export function gotBy(page: Page, paths: readonly string[]): Promise<Record<string, string>> {
  return page.evaluate(async (all) => {
    const got: Record<string, string> = {};
    for (const path of all) {
      const response = await fetch(path);
      const sum = await crypto.subtle.digest("SHA-256", await response.arrayBuffer());
      const hash = [...new Uint8Array(sum)].map((byte) => byte.toString(16).padStart(2, "0"));
      got[path] = response.ok ? hash.join("") : String(response.status);
    }
    return got;
  }, paths);
}
