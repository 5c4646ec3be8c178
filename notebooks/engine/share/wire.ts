import type { LinkDocument, LinkEntry, LinkRecord, LinkTable, RowStep } from "./record.ts";

// A record as the plain lists that are packed into a link. Lists only: no text in it ever becomes
// the key of an object.
//
// record    [file, version, [of-file…], own?]
// of-file   [file, [name, text, name, text…], table…]
// table     [name, from, [row…], columns or 0, decimal comma ? 1 : 0]
// row       n: n rows kept | -n: n rows left | [text…]: added | [column, text, column, text…]: changed
// own       [file, text, file, text…]

/** The lists of a record. */
export function toLists({ file, version, entries, tables, own }: LinkRecord): unknown {
  const files = new Set([...entries, ...tables].map((one) => one.file));
  const parts = [...files].map((of) => [
    of,
    entries.filter((one) => one.file === of).flatMap(({ name, text }) => [name, text]),
    ...tables.filter((one) => one.file === of).map(tableList),
  ]);
  const documents = own.flatMap((document) => [document.file, document.text]);
  return [file, version, parts, ...(own.length === 0 ? [] : [documents])];
}

function tableList({ name, from, steps: { columns, rows, decimal } }: LinkTable): unknown {
  const list: unknown[] = [name, from, rows.map(rowList)];
  if (columns !== undefined || decimal === ",") list.push(columns ?? 0);
  if (decimal === ",") list.push(1);
  return list;
}

function rowList(step: RowStep): unknown {
  if (step.step === "keep") return step.count;
  if (step.step === "leave") return -step.count;
  if (step.step === "add") return step.row;
  return step.fields.flatMap(({ column, text }) => [column, text]);
}

/** What a link may hold at most. */
export const most = {
  entries: 2_000,
  tables: 200,
  rows: 20_000,
  columns: 200,
  text: 20_000,
  document: 1_000_000,
  documents: 30,
  name: 100,
} as const;

class NotALink extends Error {}

/** The record of lists that came from anywhere; undefined where they are not those of a link. */
export function fromLists(lists: unknown): LinkRecord | undefined {
  try {
    return recordOf(lists);
  } catch (error) {
    if (error instanceof NotALink) return undefined;
    throw error;
  }
}

function recordOf(lists: unknown): LinkRecord {
  const [file, version, parts, own = []] = listOf(lists, 4);
  const entries: LinkEntry[] = [];
  const tables: LinkTable[] = [];
  for (const part of listOf(parts, most.tables)) {
    const [of, texts, ...rest] = listOf(part, most.tables);
    const place = fileOf(of);
    for (const [name, text] of pairsOf(texts, most.entries))
      entries.push({ file: place, name: nameOf(name), text: textOf(text, most.text) });
    for (const table of rest) tables.push(tableOf(table, place));
  }
  if (entries.length > most.entries || tables.length > most.tables) throw new NotALink();
  const documents = pairsOf(own, most.documents).map(
    ([of, text]): LinkDocument => ({ file: fileOf(of), text: textOf(text, most.document) }),
  );
  const shown = { file: fileOf(file), version: versionText(version) };
  if (documents[0] !== undefined && documents[0].file !== shown.file) throw new NotALink();
  onlyOnce(documents.map((one) => one.file));
  onlyOnce([...entries, ...tables].map((one) => `${one.file}#${one.name}`));
  return { ...shown, entries, tables, own: documents };
}

function tableOf(list: unknown, file: string): LinkTable {
  const [name, from, rows, columns = 0, comma = 0] = listOf(list, 5);
  if (comma !== 0 && comma !== 1) throw new NotALink();
  const named = columns === 0 ? undefined : listOf(columns, most.columns).map(columnOf);
  return {
    file,
    name: nameOf(name),
    from: versionText(from),
    steps: {
      ...(named === undefined ? {} : { columns: named }),
      rows: listOf(rows, most.rows).map(rowOf),
      decimal: comma === 1 ? "," : ".",
    },
  };
}

function rowOf(step: unknown): RowStep {
  if (typeof step === "number") {
    if (!Number.isSafeInteger(step) || step === 0) throw new NotALink();
    return step > 0 ? { step: "keep", count: step } : { step: "leave", count: -step };
  }
  const list = listOf(step, 2 * most.columns);
  if (typeof list[0] !== "number")
    return { step: "add", row: list.map((text) => textOf(text, most.text)) };
  const fields = pairsOf(list, most.columns).map(([column, text]) => ({
    column: indexOf(column),
    text: textOf(text, most.text),
  }));
  return { step: "change", fields };
}

function columnOf(column: unknown): number | string {
  return typeof column === "number" ? indexOf(column) : textOf(column, most.text);
}

function indexOf(value: unknown): number {
  const isIndex = Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) < most.columns;
  if (!isIndex) throw new NotALink();
  return Number(value);
}

function listOf(value: unknown, longest: number): readonly unknown[] {
  if (!Array.isArray(value) || value.length > longest) throw new NotALink();
  return value;
}

function pairsOf(value: unknown, mostPairs: number): readonly (readonly [unknown, unknown])[] {
  const list = listOf(value, 2 * mostPairs);
  if (list.length % 2 !== 0) throw new NotALink();
  return Array.from({ length: list.length / 2 }, (_, at) => [list[2 * at], list[2 * at + 1]]);
}

function textOf(value: unknown, longest: number): string {
  if (typeof value !== "string" || value.length > longest) throw new NotALink();
  return value;
}

/** The name of a cell, with no mark that means something in keys and addresses. */
function nameOf(value: unknown): string {
  const name = textOf(value, most.name);
  if (name === "" || /[#>/\s\p{C}]/u.test(name)) throw new NotALink();
  return name;
}

function fileOf(value: unknown): string {
  const file = textOf(value, most.name);
  if (!isFile(file)) throw new NotALink();
  return file;
}

/** The name of a notebook as documents use each other by: no mark that means something in keys. */
function isFile(file: string): boolean {
  return (
    /^[^#>\\?:*|<"\p{C}]+\.md$/u.test(file) && file.split("/").every((part) => /[^.]/.test(part))
  );
}

function versionText(value: unknown): string {
  if (typeof value !== "string" || !/^[0-9a-f]{8}$/.test(value)) throw new NotALink();
  return value;
}

function onlyOnce(keys: readonly string[]): void {
  if (new Set(keys).size !== keys.length) throw new NotALink();
}
