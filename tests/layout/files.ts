import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

export const projectFolder = join(import.meta.dirname, "../..");

/** Every file below a folder of the project, as paths relative to the project. */
export function filesBelow(folder: string, ending: RegExp): readonly string[] {
  return readdirSync(join(projectFolder, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(projectFolder.length + 1))
    .filter((file) => !file.includes("node_modules/") && !file.startsWith("build/out/"))
    .sort();
}

export function textOf(file: string): string {
  return readFileSync(join(projectFolder, file), "utf8");
}
