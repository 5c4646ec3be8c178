import type { CellId, Entered, TableText } from "../types/index.ts";
import type { Journal } from "./journal.ts";
import { type EnteredRecord, type ReadRecord, readRecord } from "./records.ts";
import type { Storage } from "./storage.ts";

/** Why something entered could not be kept, in words for the reader. */
export type KeepingTrouble = (words: string) => void;

const keyOf = (file: string) => `entered:${file}`;
const nameOf = (id: CellId) => id.slice(id.indexOf("#") + 1);
const fileOf = (id: CellId) => id.slice(0, id.indexOf("#"));

/** What is kept of one notebook's entries and tables. */
export async function loadEntered(
  storage: Storage,
  file: string,
): Promise<ReadRecord<EnteredRecord>> {
  return readRecord("entered", await storage.get(keyOf(file)));
}

/**
 * Keeps what is entered: a change is written at once, and what comes while it is being written
 * together after it. Each write goes cell by cell into what is there, so that another tab's other
 * cells are left alone. A record from a newer version, or one that can't be read, is never written
 * over.
 */
export class Keeper {
  private readonly storage: Storage;
  private readonly trouble: KeepingTrouble;
  private readonly journal: Journal | undefined;
  private waiting = new Map<CellId, string | TableText | undefined>();
  /** Waiting or being written. */
  private readonly unsafe = new Map<CellId, string | TableText | undefined>();
  private writing: Promise<void> | undefined;

  /** With a journal, nothing is lost where the page ends before a write does. */
  constructor(storage: Storage, trouble: KeepingTrouble, journal?: Journal) {
    this.storage = storage;
    this.trouble = trouble;
    this.journal = journal;
  }

  /** Writes what pages that ended left in the journal. */
  async takeUp(): Promise<void> {
    const left = this.journal?.leftBehind();
    if (left === undefined || left.unsafe.size === 0) return;
    if (await this.write(left.unsafe)) left.done();
  }

  /** Remembers what a cell's entry holds now; undefined is its default again. */
  keep(id: CellId, value: string | TableText | undefined): void {
    this.waiting.set(id, value);
    this.unsafe.set(id, value);
    this.journal?.hold(this.unsafe);
    void this.flush();
  }

  /** The promise ends when everything so far is safe, or when it was said that it can't be. */
  flush(): Promise<void> {
    this.writing ??= this.writeAll().then((good) => {
      this.writing = undefined;
      // Something may have come between the last look and now.
      return good && this.waiting.size > 0 ? this.flush() : undefined;
    });
    return this.writing;
  }

  private async writeAll(): Promise<boolean> {
    while (this.waiting.size > 0) {
      const changes = this.waiting;
      this.waiting = new Map();
      if (!(await this.write(changes))) return false;
      for (const [id, value] of changes) if (this.unsafe.get(id) === value) this.unsafe.delete(id);
      this.journal?.hold(this.unsafe);
    }
    return true;
  }

  /** Gives false where it failed; what failed waits for the next change. */
  private async write(
    changes: ReadonlyMap<CellId, string | TableText | undefined>,
  ): Promise<boolean> {
    let good = true;
    const files = new Set([...changes.keys()].map(fileOf));
    for (const file of files) {
      const own = [...changes].filter(([id]) => fileOf(id) === file);
      try {
        await this.storage.change(keyOf(file), (before) => this.merged(file, before, own));
      } catch (error) {
        const why = error instanceof Error ? error.message : String(error);
        this.trouble(`What you typed could not be kept on this computer: ${why}`);
        good = false;
        for (const [id, value] of own) if (!this.waiting.has(id)) this.waiting.set(id, value);
      }
    }
    return good;
  }

  private merged(
    file: string,
    before: unknown,
    changes: readonly (readonly [CellId, string | TableText | undefined])[],
  ): EnteredRecord | undefined {
    const read = readRecord("entered", before);
    if (read.is === "newer" || read.is === "broken") {
      this.trouble(notWrittenOver(file, read));
      return undefined;
    }
    const cells: Record<string, string | TableText> =
      read.is === "record" ? { ...read.record.cells } : {};
    for (const [id, value] of changes) {
      if (value === undefined) delete cells[nameOf(id)];
      else cells[nameOf(id)] = value;
    }
    return { kind: "entered", version: 1, file, cells };
  }
}

/** Says why kept entries are left as they are. */
export function notWrittenOver(
  file: string,
  read: { readonly is: "newer"; readonly version: number } | { readonly is: "broken" },
): string {
  return read.is === "newer"
    ? `What is kept for ${file} was written by a newer version of this workbook. It is left as it is; what you type now is not kept.`
    : `What is kept for ${file} can't be read. It is left as it is; what you type now is not kept.`;
}

/** Everything kept for these files, as the closed room takes it, and what could not be used. */
export async function loadAllEntered(
  storage: Storage,
  files: readonly string[],
): Promise<{ readonly entered: Entered; readonly troubles: readonly string[] }> {
  const entered: Record<CellId, string | TableText> = {};
  const troubles: string[] = [];
  for (const file of files) {
    const read = await loadEntered(storage, file);
    if (read.is === "newer" || read.is === "broken") troubles.push(notWrittenOver(file, read));
    if (read.is !== "record") continue;
    for (const [name, value] of Object.entries(read.record.cells))
      entered[`${file}#${name}`] = value;
  }
  return { entered, troubles };
}
