import type { CellId, Entered, Notebook, TableText } from "../types/index.ts";
import { carriedHeading, carriedWords, enteredInfo, notebookInfo } from "./carried.ts";
import { withTableText } from "./edit.ts";
import { type EnteredRow, fitsALine, writeEntered } from "./entered-rows.ts";
import { longerFence } from "./fences.ts";
import { linesOf } from "./lines.ts";
import { documentsNeeded } from "./load.ts";
import { withFenceClosed } from "./open-fence.ts";
import { readNotebook, writeNotebook } from "./read.ts";

export interface ToPack {
  /** The notebook to be saved. */
  readonly main: string;
  /** It and all it uses, by name. */
  readonly documents: ReadonlyMap<string, Notebook>;
  readonly entered: Entered;
  readonly writeCsv: (table: TableText) => string;
}

/**
 * A notebook as one file that gives the same answers anywhere: its own text with its tables as they
 * were filled in, and under a heading at its end every notebook it uses, whole, and what was typed
 * into fields. `unpack` takes it apart again. Where there is nothing to carry, it is the document as
 * it is. A fence that the document leaves open at its end is closed.
 *
 * @throws RangeError where `main` is not among the documents
 */
export function pack({ main, documents, entered, writeCsv }: ToPack): string {
  const rows: EnteredRow[] = [];
  const texts = new Map<string, string>();
  const filesNeeded = filesUsed(main, documents);
  for (const [id, value] of Object.entries(entered) as [CellId, Entered[CellId]][])
    if (typeof value === "string") rows.push({ cell: written(id, main), text: value });
  for (const file of [main, ...filesNeeded]) {
    const notebook = documents.get(file);
    if (notebook === undefined) throw new RangeError(`there is no document ${file} to save`);
    const filled = withTables(notebook, entered, writeCsv);
    texts.set(file, filled.text);
    for (const { name, csv } of filled.left)
      rows.push({ cell: written(`${file}#${name}`, main), text: csv });
  }
  for (const [id, table] of Object.entries(entered) as [CellId, Entered[CellId]][])
    if (typeof table !== "string" && !texts.has(fileOf(id)))
      rows.push({ cell: written(id, main), text: writeCsv(table) });
  const text = texts.get(main) ?? "";
  texts.delete(main);
  if (texts.size === 0 && rows.length === 0 && !text.includes(carriedHeading)) return text;
  return withCarried(text, texts, rows);
}

const fileOf = (id: CellId): string => id.slice(0, id.indexOf("#"));

/** The files a notebook uses, and those they use, without itself. */
function filesUsed(main: string, documents: ReadonlyMap<string, Notebook>): readonly string[] {
  const found = new Set([main]);
  for (const file of found) {
    const notebook = documents.get(file);
    if (notebook === undefined) continue;
    for (const used of documentsNeeded(notebook)) if (documents.has(used)) found.add(used);
  }
  return [...found].slice(1);
}

/** A cell as a row names it: alone where it is the saved notebook's own. */
function written(id: CellId, main: string): string {
  const name = id.slice(id.indexOf("#") + 1);
  if (fileOf(id) !== main) return id;
  // A name of its own with this sign in it would read as that of another file.
  return name.includes("#") || name === "" ? `#${name}` : name;
}

interface Filled {
  readonly text: string;
  /** Tables the document has no block for, or whose block can't hold them as they are. */
  readonly left: readonly { readonly name: string; readonly csv: string }[];
}

/** A document with its tables as they were filled in. */
function withTables(notebook: Notebook, entered: Entered, writeCsv: ToPack["writeCsv"]): Filled {
  const left: { name: string; csv: string }[] = [];
  let filled = notebook;
  for (const [id, table] of Object.entries(entered) as [CellId, Entered[CellId]][]) {
    if (typeof table === "string" || fileOf(id) !== notebook.file) continue;
    const name = id.slice(notebook.file.length + 1);
    const csv = writeCsv(table);
    const after = holding(filled, name, csv);
    if (after === undefined) left.push({ name, csv });
    else filled = after;
  }
  return { text: writeNotebook(filled), left };
}

/** The document with the table in its block, if it reads back as it was. */
function holding(notebook: Notebook, name: string, csv: string): Notebook | undefined {
  const tables = ({ blocks }: Notebook) =>
    blocks.filter((block) => block.kind === "table" && block.name === name);
  if (tables(notebook).length !== 1 || !csv.split("\n").every(fitsALine)) return undefined;
  const after = readNotebook(withTableText(notebook, name, csv), notebook.file);
  const [table] = tables(after);
  return table?.kind === "table" && table.csv === csv.replace(/\n$/, "") ? after : undefined;
}

function withCarried(
  text: string,
  texts: ReadonlyMap<string, string>,
  rows: readonly EnteredRow[],
): string {
  const lineEnd = /\r\n|\n|\r/.exec(text)?.[0] ?? "\n";
  // A lone carriage return would join with what a saved file is written with.
  const end = lineEnd === "\r" ? "\n" : lineEnd;
  const blocks = [...texts].map(([file, own]) => carriedNotebook(file, own, end));
  if (rows.length > 0) {
    const content = writeEntered(rows, end);
    blocks.push(fenced(enteredInfo, content, end));
  }
  const parts = [carriedHeading + end, carriedWords + end, ...blocks];
  return `${withFenceClosed(text, end)}${end}${end}${parts.join(end)}`;
}

function carriedNotebook(file: string, text: string, lineEnd: string): string {
  const unended = !/[\r\n]$/.test(text);
  return fenced(notebookInfo(file, unended), unended ? text + lineEnd : text, lineEnd);
}

/** A block of four marks, so that it is told from those it holds, or of as many as it needs. */
function fenced(info: string, content: string, lineEnd: string): string {
  const lines = linesOf(content).map((line) => line.text);
  const marks = longerFence(info.includes("`") ? "~~~~" : "````", lines);
  return `${marks}${info}${lineEnd}${content}${marks}${lineEnd}`;
}
