import { loadDocuments } from "../document/index.ts";
import type {
  CellBlock,
  CellId,
  CellState,
  Entered,
  Notebook,
  OutlineCell,
  TableBlock,
  TableText,
} from "../types/index.ts";

export type EnteredValue = string | TableText;

export interface BookOptions {
  readonly main: string;
  load(file: string): Promise<string | undefined>;
  loadEntered(files: readonly string[]): Promise<Entered>;
  readCsv(text: string, name: string): TableText;
}

/** Everything the page knows of an open notebook: its documents, what is entered, what came back. */
export class Book {
  main: Notebook;
  documents: ReadonlyMap<string, Notebook>;
  readonly entered: Map<CellId, EnteredValue>;
  readonly outline = new Map<CellId, OutlineCell>();
  readonly states = new Map<CellId, CellState>();
  /** Cells that still wait for long work. */
  working: ReadonlySet<CellId> = new Set();
  private readonly defaults = new Map<CellId, TableText>();
  /** The csv each default was read from, so that an edit elsewhere does not read all tables again. */
  private readonly csvs = new Map<CellId, string>();
  private readonly readCsv: BookOptions["readCsv"];

  constructor(
    main: Notebook,
    documents: ReadonlyMap<string, Notebook>,
    entered: Entered,
    readCsv: BookOptions["readCsv"],
  ) {
    this.main = main;
    this.documents = documents;
    this.entered = new Map(Object.entries(entered) as [CellId, EnteredValue][]);
    this.readCsv = readCsv;
    this.readDefaults();
  }

  /** Takes over documents that were edited; the main one keeps its file. */
  replace(documents: ReadonlyMap<string, Notebook>): void {
    this.documents = documents;
    this.main = documents.get(this.main.file) ?? this.main;
    this.readDefaults();
  }

  /** Forgets what was known of cells that are there no more. */
  forgetOthers(): ReadonlySet<CellId> {
    const gone = [...this.states.keys()].filter((id) => !this.outline.has(id));
    for (const id of gone) this.states.delete(id);
    return new Set(gone);
  }

  private readDefaults(): void {
    for (const { file, blocks } of this.documents.values())
      for (const block of blocks) {
        if (block.kind !== "table") continue;
        const id = idOf(file, block.name);
        if (this.csvs.get(id) === block.csv) continue;
        this.csvs.set(id, block.csv);
        this.defaults.set(id, readDefault(block, this.readCsv));
      }
  }

  /** The cell a name stands for in a document: its own, or one of a notebook it uses. */
  find(name: string, file: string, seen: ReadonlySet<string> = new Set()): CellId | undefined {
    // Files that use each other in a circle are named elsewhere; here they only must not go on for ever.
    if (seen.has(file)) return undefined;
    const blocks = this.documents.get(file)?.blocks ?? [];
    for (const block of blocks)
      if ((block.kind === "cell" || block.kind === "table") && block.name === name)
        return idOf(file, name);
    for (const block of blocks)
      if (block.kind === "uses" && block.names.some((used) => used.name === name))
        return this.find(name, block.file, new Set([...seen, file]));
    return undefined;
  }

  block(id: CellId): CellBlock | TableBlock | undefined {
    const [file, name] = partsOf(id);
    for (const block of this.documents.get(file)?.blocks ?? [])
      if ((block.kind === "cell" || block.kind === "table") && block.name === name) return block;
    return undefined;
  }

  /** What people call a cell. */
  title(id: CellId): string {
    return this.block(id)?.hints.title ?? partsOf(id)[1];
  }

  /** The text of an entry as it stands. */
  text(id: CellId, initial: string): string {
    const entered = this.entered.get(id);
    return typeof entered === "string" ? entered : initial;
  }

  isTable(id: CellId): boolean {
    return this.block(id)?.kind === "table";
  }

  /** A table's rows as they stand, and as the document has them. */
  table(id: CellId): TableText {
    const entered = this.entered.get(id);
    return typeof entered === "object" ? entered : this.defaultTable(id);
  }

  defaultTable(id: CellId): TableText {
    return (
      this.defaults.get(id) ?? {
        kind: "table",
        name: partsOf(id)[1],
        columns: [],
        rows: [],
        decimal: ".",
      }
    );
  }

  /** The answers that stay in sight, in the document's order. */
  pinned(): readonly CellId[] {
    return this.main.blocks.flatMap((block) =>
      block.kind === "cell" && block.hints.pinned ? [idOf(this.main.file, block.name)] : [],
    );
  }
}

/** Which of these words a formula of the documents names: parts of the room that are sent only then. */
export function wordsNamed(
  words: readonly string[],
  documents: ReadonlyMap<string, Notebook>,
): readonly string[] {
  const formulas = [...documents.values()].flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "cell" ? [block.formula] : [])),
  );
  return words.filter((word) => {
    const named = new RegExp(`\\b${word}\\b`);
    return formulas.some((formula) => named.test(formula));
  });
}

/** Reads the notebook and all it uses; undefined where the main file is not there. */
export async function openBook(options: BookOptions): Promise<Book | undefined> {
  const documents = await loadDocuments(options.main, (file) => options.load(file));
  const main = documents.get(options.main);
  if (!main) return undefined;
  const entered = await options.loadEntered([...documents.keys()]);
  return new Book(main, documents, entered, options.readCsv);
}

export function idOf(file: string, name: string): CellId {
  return `${file}#${name}`;
}

export function partsOf(id: CellId): readonly [file: string, name: string] {
  const at = id.indexOf("#");
  return [id.slice(0, at), id.slice(at + 1)];
}

function readDefault({ csv, name }: TableBlock, readCsv: BookOptions["readCsv"]): TableText {
  try {
    return readCsv(csv, name);
  } catch {
    // The room reports what is wrong with it; the page shows an empty table to fill in.
    return { kind: "table", name, columns: [], rows: [], decimal: "." };
  }
}
