import { access, writeFile } from "node:fs/promises";
import { basename, resolve } from "node:path";
import { compileNotebook } from "../compile/index.ts";
import { documentsOf } from "../document/index.ts";
import { pack } from "../document/seldom.ts";
import type { CellId, Host, TableText } from "../types/index.ts";
import type { Job } from "./job.ts";
import { Names } from "./names.ts";
import { WrongUsage } from "./usage.ts";

/**
 * Where a notebook may be saved.
 *
 * @throws WrongUsage where the name is not that of a notebook, or something is there already
 */
export async function placeToSave(file: string, cwd: string, job: Job): Promise<string> {
  const path = resolve(cwd, file);
  const name = basename(path);
  if (!name.endsWith(".md"))
    throw new WrongUsage(`--save “${file}”: allowed is the name of a notebook, as my-plan.md.`);
  if (name !== job.main && Object.hasOwn(job.documents, name))
    throw new WrongUsage(
      `--save “${file}”: ${job.main} uses a notebook of that name. Choose another.`,
    );
  if (await isThere(path))
    throw new WrongUsage(`--save “${file}”: it is there already, and is not written over.`);
  return path;
}

async function isThere(path: string): Promise<boolean> {
  try {
    await access(path);
    return true;
  } catch {
    return false;
  }
}

/**
 * Writes a notebook with what it uses and what was entered inside it.
 *
 * @throws WrongUsage where it can't be written
 */
export async function saveNotebook(path: string, job: Job, host: Host): Promise<void> {
  try {
    await writeFile(path, savedText(job, host), { flag: "wx" });
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new WrongUsage(`--save “${path}”: it can't be written (${why}).`);
  }
}

function savedText(job: Job, { readCsv, writeCsv }: Host): string {
  const { main } = job;
  const documents = documentsOf(job.documents);
  const program = compileNotebook({ main, documents, names: new Set() });
  const known = new Names(program, program.cells);
  const entered: Record<CellId, string | TableText> = { ...job.entered };
  for (const [name, csv] of Object.entries(job.tables))
    entered[known.table(name).id] = readCsv(csv, name);
  for (const [name, text] of Object.entries(job.sets)) entered[known.cell(name).id] = text;
  return pack({ main, documents, entered, writeCsv });
}
