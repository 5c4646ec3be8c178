import { cpSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { out, root } from "./root.ts";
import { bundleForNode } from "./steps/bundle.ts";
import { buildLibPackage } from "./steps/lib-package.ts";
import { buildSite } from "./steps/site.ts";

/** Builds the library's package, the command line and the static site into `build/out`. */
export async function buildAll(): Promise<void> {
  mkdirSync(out, { recursive: true });
  const started = performance.now();
  buildLibPackage();
  await bundleForNode("build/cli/bedwright.ts", join(out, "cli/bedwright.mjs"));
  cpSync(join(root, "node_modules/highs/build/highs.wasm"), join(out, "cli/highs.wasm"));
  await buildSite();
  console.log(`built in ${((performance.now() - started) / 1000).toFixed(1)} s`);
}
