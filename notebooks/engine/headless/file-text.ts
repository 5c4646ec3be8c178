import { readFile } from "node:fs/promises";
import { WrongUsage } from "./usage.ts";

/**
 * The text of a file; undefined where it cannot be read.
 *
 * @throws WrongUsage where it is not text as UTF-8: read all the same, letters would be lost in silence
 */
export async function fileText(path: string): Promise<string | undefined> {
  const bytes = await readFile(path).catch(() => undefined);
  if (bytes === undefined) return undefined;
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new WrongUsage(`${path} is not UTF-8 text: save it as “CSV UTF-8” or as plain UTF-8.`);
  }
}
