import type { CellId } from "../types/index.ts";
import { freshFile, safeFile } from "./file-names.ts";
import { readKey } from "./keys.ts";
import { enteredKey } from "./loading.ts";
import { good, type Outcome, refused } from "./outcome.ts";
import { fileOfCell, isCarried, nameOfCell, placeOf, type Scope } from "./place.ts";
import type { DocumentRecord, EnteredValue, Origin } from "./record-types.ts";
import { type ReadRecord, readRecord } from "./records.ts";
import type { Reading, Storage } from "./storage.ts";
import { notKept, notWrittenOver } from "./words.ts";

export const documentKey = (place: string) => `document:${place}`;

/** One of the reader's own documents, or one that such a notebook carries. */
export async function loadDocument(
  storage: Reading,
  place: string,
): Promise<ReadRecord<DocumentRecord>> {
  return readRecord("document", await storage.get(documentKey(place)));
}

/** The reader's own notebooks, those changed last first; what they carry is left out. */
export async function listDocuments(storage: Storage): Promise<{
  readonly documents: readonly DocumentRecord[];
  readonly troubles: readonly string[];
}> {
  const documents: DocumentRecord[] = [];
  const troubles: string[] = [];
  for (const key of await storage.keys()) {
    const parts = readKey(key);
    if (parts?.kind !== "document" || isCarried(parts.place)) continue;
    const { place } = parts;
    const read = await loadDocument(storage, place);
    if (read.is === "record") documents.push(read.record);
    else if (read.is !== "absent") troubles.push(notWrittenOver(place, read));
  }
  documents.sort((a, b) => (a.changed < b.changed ? 1 : a.changed > b.changed ? -1 : 0));
  return { documents, troubles };
}

export interface NewDocument {
  /** What its file shall be called; where that is taken, a number is added. */
  readonly file: string;
  readonly text: string;
  readonly title: string;
  readonly origin: Origin;
  /** ISO instant. */
  readonly changed: string;
  /** Texts of the documents it carries, by file. */
  readonly carried?: ReadonlyMap<string, string>;
  /** Use the reader's own garden instead of what is carried. Default false. */
  readonly ownGarden?: boolean;
  /**
   * What is entered, by the name of a cell of its own, or by `FILE#NAME` for one of a document it
   * carries.
   */
  readonly entered?: Readonly<Record<string, EnteredValue>>;
  /** Names that are taken besides those kept, as those of shipped notebooks. */
  readonly taken?: Iterable<string>;
  /**
   * The file must be called just so, as where it stands in for a shipped one: what is entered under
   * that name stays with it, and where there is such a document already, this is refused. Default false.
   */
  readonly exact?: boolean;
}

/**
 * Keeps a new document of the reader's own and what it carries. Nothing that is kept is ever written
 * over: where the name is taken, the file gets another (`plot-2.md`), which is given back.
 */
export async function createDocument(
  storage: Storage,
  made: NewDocument,
): Promise<Outcome<DocumentRecord>> {
  const { text, title, origin, changed, carried, ownGarden = false, exact = false } = made;
  try {
    const record = await storage.together(async (step): Promise<DocumentRecord | undefined> => {
      const names = [...(made.taken ?? []), ...takenBy(await step.keys())];
      const place = exact ? made.file : freshFile(safeFile(made.file), names);
      if ((await step.get(documentKey(place))) !== undefined) return undefined;
      const main = { ...blank, place, text, title, origin, changed, ownGarden };
      await step.put(documentKey(place), main);
      const scope = { main: place, apart: true };
      for (const [file, part] of carried ?? []) {
        const at = placeOf(file, scope);
        await step.put(documentKey(at), { ...main, place: at, text: part, title: file });
      }
      for (const [at, cells] of enteredBy(made, scope))
        if ((await step.get(enteredKey(at))) === undefined)
          await step.put(enteredKey(at), { kind: "entered", version: 1, file: at, cells });
      return main;
    });
    if (record === undefined)
      return refused(`You have a notebook ${made.file} already. It stays as it is.`);
    storage.last?.();
    return good(record);
  } catch (error) {
    return refused(notKept(error));
  }
}

/** What is entered in a new document and what it carries, by place. */
function enteredBy({ file: own, entered = {} }: NewDocument, scope: Scope) {
  const places = new Map<string, Record<string, EnteredValue>>();
  for (const [key, value] of Object.entries(entered)) {
    const [file, name] = key.includes("#")
      ? [fileOfCell(key as CellId), nameOfCell(key as CellId)]
      : [own, key];
    const place = file === own ? scope.main : placeOf(file, scope);
    places.set(place, { ...places.get(place), [name]: value });
  }
  return places;
}

const blank = { kind: "document", version: 1, revision: 1 } as const;

/** Files that something is kept for, were it only earlier states of a notebook that was removed. */
export function takenBy(keys: readonly string[]): readonly string[] {
  return keys.flatMap((key) => readKey(key)?.main ?? []).filter((main) => main !== "");
}

/** Uses the reader's own garden instead of what the notebook carries, or again what it carries. */
export async function setOwnGarden(
  storage: Storage,
  file: string,
  ownGarden: boolean,
): Promise<Outcome<DocumentRecord>> {
  let outcome: Outcome<DocumentRecord> = refused(`There is no notebook ${file} of your own.`);
  try {
    await storage.change(documentKey(file), (before) => {
      const read = readRecord("document", before);
      if (read.is === "absent") return undefined;
      if (read.is !== "record") {
        outcome = refused(notWrittenOver(file, read));
        return undefined;
      }
      const record = { ...read.record, ownGarden };
      outcome = good(record);
      return record;
    });
    return outcome;
  } catch (error) {
    return refused(notKept(error));
  }
}
