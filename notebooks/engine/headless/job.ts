import { resolve } from "node:path";
import type { CellId, DocumentProblem, Surroundings } from "../types/index.ts";
import type { Asked, Format } from "./arguments.ts";
import { fileText } from "./file-text.ts";
import { gather } from "./gather.ts";
import type { Located } from "./locate.ts";
import { WrongUsage } from "./usage.ts";

/** Everything a run needs, as plain data: what runs it has to read nothing more. */
export interface Job {
  readonly main: string;
  /** Whether it comes with the package. */
  readonly shipped: boolean;
  /** Texts of the notebook and of all it uses, by name. */
  readonly documents: Readonly<Record<string, string>>;
  /** What was typed into fields when they were saved. */
  readonly entered: Readonly<Record<CellId, string>>;
  /** What of a saved file could not be read. */
  readonly troubles: readonly DocumentProblem[];
  /** CSV texts by the table they stand for. */
  readonly tables: Readonly<Record<string, string>>;
  readonly sets: Readonly<Record<string, string>>;
  readonly cells: readonly string[];
  readonly surroundings: Surroundings;
  readonly format: Format;
}

/**
 * Reads all files that a run needs.
 * @throws WrongUsage where one cannot be read
 */
export async function makeJob(
  asked: Asked,
  located: Located,
  around: { readonly cwd: string; readonly today: string },
): Promise<Job> {
  const gathered = await gather(located);
  const tables = Object.fromEntries(
    await Promise.all(
      Object.entries(asked.tables).map(
        async ([name, file]) => [name, await tableText(resolve(around.cwd, file), name)] as const,
      ),
    ),
  );
  const { sets, cells, units, format } = asked;
  const surroundings = { units, today: asked.today ?? around.today };
  const { main, shipped } = located;
  return { ...gathered, main, shipped, tables, sets, cells, surroundings, format };
}

async function tableText(path: string, name: string): Promise<string> {
  const text = await fileText(path);
  if (text === undefined) throw new WrongUsage(`--table ${name}: ${path} cannot be read.`);
  return text;
}
