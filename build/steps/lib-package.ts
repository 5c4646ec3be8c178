import { spawnSync } from "node:child_process";
import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { out, root } from "../root.ts";

/** Emits `lib` as JavaScript with declarations: what `import … from "bedwright"` gives. */
export function buildLibPackage(): void {
  const folder = join(out, "lib");
  rmSync(folder, { recursive: true, force: true });
  const config = join(out, "lib.tsconfig.json");
  writeFileSync(
    config,
    JSON.stringify({
      extends: join(root, "lib/tsconfig.json"),
      compilerOptions: {
        noEmit: false,
        declaration: true,
        rewriteRelativeImportExtensions: true,
        rootDir: join(root, "lib"),
        outDir: folder,
      },
      include: [join(root, "lib/**/*.ts")],
    }),
  );
  const tsc = join(root, "node_modules/typescript/bin/tsc");
  const done = spawnSync(process.execPath, [tsc, "-p", config], { encoding: "utf8" });
  if (done.status !== 0)
    throw new Error(`the library does not compile:\n${done.stdout}${done.stderr}`);
}
