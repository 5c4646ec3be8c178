import { bringNotebookIn, type NotebookRecords, type Report } from "./bring-notebook-in.ts";
import { everythingKind, everythingVersion } from "./everything.ts";
import { keyOf, readKey } from "./keys.ts";
import { good, type Outcome, refused } from "./outcome.ts";
import type { KeptRecord } from "./record-types.ts";
import { readRecord } from "./records.ts";
import { isRecord } from "./shapes.ts";
import type { Storage } from "./storage.ts";
import { notKept } from "./words.ts";

/**
 * Takes in a file of everything. Nothing that is kept is written over: a notebook that differs from
 * the one kept comes in under another name; where entries or plans differ, those kept stay and those
 * of the file become an earlier state. Taking the same file in again changes nothing. Gives what
 * happened, a sentence for each thing.
 *
 * @param options.at the ISO instant now
 * @param options.taken names that are taken besides those kept, as those of shipped notebooks
 */
export async function importAll(
  storage: Storage,
  text: string,
  { at, taken = [] }: { readonly at: string; readonly taken?: Iterable<string> },
): Promise<Outcome<readonly string[]>> {
  const read = readEverything(text);
  if (!read.good) return read;
  const { notebooks, settings, said } = read.value;
  const report: Report = { at, taken: [...taken], said: [...said] };
  try {
    for (const notebook of notebooks)
      await storage.together((step) => bringNotebookIn(step, notebook, report));
    if (settings)
      await storage.change("settings", (before) => (before === undefined ? settings : undefined));
    storage.last?.();
    return good(
      report.said.length > 0 ? report.said : ["Everything in the file was here already."],
    );
  } catch (error) {
    const done = report.said.length > 0 ? ` This much came in: ${report.said.join(" ")}` : "";
    return refused(
      `Not everything could be taken in. ${notKept(error)} The file can be taken in again later: what is here already stays as it is.${done}`,
    );
  }
}

interface Everything {
  readonly notebooks: readonly NotebookRecords[];
  readonly settings: KeptRecord | undefined;
  readonly said: readonly string[];
}

function readEverything(text: string): Outcome<Everything> {
  const whole = "This is not a file of everything kept in a workbook";
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused(
      `${whole}: it is not JSON. Choose a file that “Keep everything in one file” made.`,
    );
  }
  if (!isRecord(file) || file.kind !== everythingKind || !Number.isInteger(file.version))
    return refused(`${whole}. Choose a file that “Keep everything in one file” made.`);
  if (Number(file.version) > everythingVersion)
    return refused(
      `This file was made by a newer version of the workbook (version ${file.version} of the file; this one reads ${everythingVersion}). Load this page again to get the newer one. Nothing was changed.`,
    );
  if (file.version !== everythingVersion || !isRecord(file.records))
    return refused(`${whole}: its records are missing or broken. Nothing was changed.`);
  return good(sorted(file.records));
}

/** The records of each notebook together; those that can't be used are said. */
function sorted(records: Readonly<Record<string, unknown>>): Everything {
  const notebooks = new Map<string, Map<string, KeptRecord>>();
  const said: string[] = [];
  let settings: KeptRecord | undefined;
  for (const [key, stored] of Object.entries(records)) {
    const parts = readKey(key);
    if (parts === undefined) {
      said.push(`“${key.slice(0, 80)}” is nothing this version knows; it was left out.`);
      continue;
    }
    const read = readRecord(parts.kind, stored);
    if (read.is === "newer")
      said.push(`${key} was written by a newer version of the workbook; it was left out.`);
    else if (read.is !== "record" || keyOfRecord(read.record) !== key)
      said.push(`${key} can't be read; it was left out.`);
    else if (read.record.kind === "settings") settings = read.record;
    else {
      const own = notebooks.get(parts.main) ?? new Map<string, KeptRecord>();
      notebooks.set(parts.main, own.set(key, read.record));
    }
  }
  return {
    notebooks: [...notebooks].map(([main, own]) => ({ main, records: own })),
    settings,
    said,
  };
}

/** The key a record says it belongs to: one that stands under another is not believed. */
function keyOfRecord(record: KeptRecord): string {
  switch (record.kind) {
    case "settings":
      return "settings";
    case "document":
      return keyOf({ kind: "document", place: record.place });
    case "entered":
      return keyOf({ kind: "entered", place: record.file });
    case "state":
      return keyOf({ kind: "state", place: record.main, number: record.number });
    case "plans":
    case "states":
      return keyOf({ kind: record.kind, place: record.main });
  }
}
