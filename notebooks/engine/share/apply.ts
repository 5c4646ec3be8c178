import type { CellId, Entered, Notebook, TableText } from "../types/index.ts";
import type { LinkEntry, LinkRecord, LinkTable, RowStep } from "./record.ts";
import { takeSteps } from "./row-steps.ts";
import { versionOfTable } from "./version.ts";

/** Something of a link that has no place any more. */
export interface LeftOut {
  readonly id: CellId;
  /** What it is called, where the document still says. */
  readonly title: string;
  /** What the link holds for it, as text. */
  readonly what: string;
  readonly why: string;
}

export interface AppliedLink {
  readonly entered: Entered;
  readonly left: readonly LeftOut[];
}

/**
 * Puts what a link holds to the documents as they are here. Only what fits is entered; the rest is
 * given back as text with the reason.
 *
 * @param defaults the rows that tables have in these documents
 */
export function applyLink(
  link: LinkRecord,
  documents: ReadonlyMap<string, Notebook>,
  defaults: ReadonlyMap<CellId, TableText>,
): AppliedLink {
  const entered: Record<CellId, string | TableText> = {};
  const left: LeftOut[] = [];
  for (const entry of link.entries) {
    const why = whyNoEntry(entry, documents);
    if (why === undefined) entered[idOf(entry)] = entry.text;
    else left.push({ ...named(entry, documents), what: entry.text, why });
  }
  for (const table of link.tables) {
    const made = tableFor(table, documents, defaults);
    if (typeof made === "object") entered[idOf(table)] = made;
    else left.push({ ...named(table, documents), what: stepsInWords(table), why: made });
  }
  return { entered, left };
}

interface Place {
  readonly file: string;
  readonly name: string;
}

const idOf = ({ file, name }: Place): CellId => `${file}#${name}`;

function blockOf({ file, name }: Place, documents: ReadonlyMap<string, Notebook>) {
  for (const block of documents.get(file)?.blocks ?? [])
    if ((block.kind === "cell" || block.kind === "table") && block.name === name) return block;
  return undefined;
}

function named(place: Place, documents: ReadonlyMap<string, Notebook>) {
  return { id: idOf(place), title: blockOf(place, documents)?.hints.title ?? place.name };
}

/** Makers of entry fields end so; a formula without one is no entry. */
const makesEntry = /Entry\s*\(/;

function whyNoEntry(entry: LinkEntry, documents: ReadonlyMap<string, Notebook>) {
  if (!documents.has(entry.file)) return `This notebook uses no ${entry.file}.`;
  const block = blockOf(entry, documents);
  if (block === undefined) return `There is no ${entry.name} in ${entry.file} any more.`;
  if (block.kind === "table") return `${entry.name} is a table here, not a single entry.`;
  return makesEntry.test(block.formula)
    ? undefined
    : `${entry.name} is worked out here, not entered.`;
}

function tableFor(
  table: LinkTable,
  documents: ReadonlyMap<string, Notebook>,
  defaults: ReadonlyMap<CellId, TableText>,
): TableText | string {
  if (!documents.has(table.file)) return `This notebook uses no ${table.file}.`;
  const block = blockOf(table, documents);
  if (block === undefined) return `There is no table ${table.name} in ${table.file} any more.`;
  if (block.kind !== "table") return `${table.name} is no table here.`;
  const from = defaults.get(idOf(table)) ?? noTable(table.name);
  const otherRows =
    "The rows of this table are not those the link was made from, so its changes do not fit.";
  if (versionOfTable(from) !== table.from) return otherRows;
  return takeSteps(from, table.steps) ?? otherRows;
}

function noTable(name: string): TableText {
  return { kind: "table", name, columns: [], rows: [], decimal: "." };
}

function stepsInWords({ steps: { columns, rows } }: LinkTable): string {
  const names = columns?.filter((one) => typeof one === "string") ?? [];
  return [
    ...(names.length === 0 ? [] : [`New columns: ${names.join(", ")}`]),
    ...rows.flatMap(stepInWords),
  ].join("\n");
}

function stepInWords(step: RowStep): string[] {
  if (step.step === "add") return [`New row: ${step.row.join(", ")}`];
  if (step.step === "change")
    return [
      `Changed row: ${step.fields.map(({ column, text }) => `column ${column + 1}: ${text}`).join("; ")}`,
    ];
  if (step.step === "leave") return [step.count === 1 ? "1 row out" : `${step.count} rows out`];
  return [];
}
