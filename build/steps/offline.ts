import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, sep } from "node:path";
import { bundleText } from "./bundle.ts";

/** Where the page's version is written; the version is a hash of all else, and of this page without it. */
const versionMeta = /(<meta name="version" content=")[^"]*(">)/;

/**
 * Adds `sw.js` to a site that is built: with the list of all its files and their hashes, so that it
 * can be kept whole and used without a network. The page is told the version it belongs to.
 */
export async function buildOffline(site: string): Promise<void> {
  const page = join(site, "index.html");
  const text = readFileSync(page, "utf8").replace(versionMeta, "$1$2");
  writeFileSync(page, text);
  const script = await bundleText("build/site/service-worker.ts");
  const version = hashOf(JSON.stringify([filesOf(site), hashOf(script)])).slice(0, 16);
  writeFileSync(page, text.replace(versionMeta, `$1${version}$2`));
  const build = JSON.stringify({ version, files: filesOf(site) });
  writeFileSync(join(site, "sw.js"), `globalThis.bedwrightBuild=${build};\n${script}`);
}

/** Every file of the site with its hash, by path. */
function filesOf(site: string): Readonly<Record<string, string>> {
  const files = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => file.slice(site.length + 1).replaceAll(sep, "/"))
    .filter((path) => path !== "sw.js")
    .sort();
  return Object.fromEntries(files.map((path) => [path, hashOf(readFileSync(join(site, path)))]));
}

function hashOf(content: string | Buffer): string {
  return createHash("sha256").update(content).digest("hex");
}
