import { existsSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { root } from "../root.ts";

/** The names cells are handed, read off the exports of the library and of the field makers. */
export async function handedNames(): Promise<ReadonlySet<string>> {
  const entries = ["lib/index.ts", "notebooks/fields/index.ts"].filter((entry) =>
    existsSync(join(root, entry)),
  );
  const { metafile } = await build({
    entryPoints: entries,
    absWorkingDir: root,
    outdir: "build/out/names",
    bundle: true,
    format: "esm",
    write: false,
    metafile: true,
    logLevel: "warning",
  });
  const exported = Object.values(metafile.outputs).flatMap((output) => output.exports);
  return new Set([...exported, "Plot", "aq", "published"]);
}
