import { realpath } from "node:fs/promises";
import { basename, dirname, relative, resolve, sep } from "node:path";
import { fileText } from "./file-text.ts";
import { WrongUsage } from "./usage.ts";

/** Where a notebook is and how what it uses is found. */
export interface Located {
  /** Its name as a document. */
  readonly main: string;
  /** Whether it comes with the package. */
  readonly shipped: boolean;
  /** The text of a document by its relative name; undefined where there is none. */
  readonly read: (file: string) => Promise<string | undefined>;
}

/**
 * Finds a notebook: the file of that name, else the one of that name that comes with the package.
 * What an outside notebook uses is looked for beside it first, then in the package.
 *
 * @throws WrongUsage where there is none
 */
export async function locate(notebook: string, cwd: string, shipped: string): Promise<Located> {
  const path = await realPath(resolve(cwd, notebook));
  const inPackage = (file: string) => textWithin(shipped, file);
  if (path !== undefined) {
    const folder = await realPath(shipped);
    const name = folder === undefined ? ".." : relative(folder, path);
    if (isWithin(name)) return { main: slashed(name), shipped: true, read: inPackage };
    const beside = dirname(path);
    const read = async (file: string) => (await textWithin(beside, file)) ?? inPackage(file);
    return { main: basename(path), shipped: false, read };
  }
  for (const main of shippedNames(notebook)) {
    if ((await inPackage(main)) !== undefined) return { main, shipped: true, read: inPackage };
  }
  throw new WrongUsage(`There is no notebook ${notebook}, neither here nor in the package.`);
}

/** `notebooks/rebuild.md`, `rebuild.md` and `rebuild` all mean the same. */
function shippedNames(notebook: string): readonly string[] {
  const name = slashed(notebook).replace(/^(?:\.\/)?notebooks\//, "");
  return name.endsWith(".md") ? [name] : [name, `${name}.md`];
}

async function textWithin(folder: string, file: string): Promise<string | undefined> {
  const path = resolve(folder, file);
  return isWithin(relative(folder, path)) ? fileText(path) : undefined;
}

async function realPath(path: string): Promise<string | undefined> {
  try {
    return await realpath(path);
  } catch {
    return undefined;
  }
}

function isWithin(name: string): boolean {
  return (
    name !== "" && name !== ".." && !name.startsWith(`..${sep}`) && !resolve(name).includes("\0")
  );
}

function slashed(name: string): string {
  return name.replaceAll(sep, "/");
}
