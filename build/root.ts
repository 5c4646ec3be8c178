import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's folder: the nearest above this script that has a package.json. */
export const root = (() => {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "package.json"))) folder = dirname(folder);
  return folder;
})();

/** Where everything made by the build goes; git ignores it. */
export const out = join(root, "build/out");
