// Runs one of the project's TypeScript scripts: `node build/run.mjs build/start.ts …`.
// Node 20 cannot read TypeScript by itself, so the script is bundled first; packages stay outside.
import { mkdir } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [script, ...args] = process.argv.slice(2);
if (!script) {
  console.error("usage: node build/run.mjs SCRIPT.ts [ARGUMENT]…");
  process.exit(2);
}
const folder = join(root, "build/out/scripts");
await mkdir(folder, { recursive: true });
const outfile = join(folder, `${basename(script, ".ts")}.mjs`);
await build({
  entryPoints: [resolve(script)],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  packages: "external",
  target: "node20",
  sourcemap: "inline",
  logLevel: "warning",
});
process.argv = [process.argv[0], outfile, ...args];
await import(pathToFileURL(outfile).href);
