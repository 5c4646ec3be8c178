import type {
  Entry,
  Figure,
  Host,
  ShownEntry,
  ShownProblem,
  Slide,
  TableText,
  Units,
} from "../types/index.ts";
import { ProblemsFound, withSentence } from "./failures.ts";
import { problemOf } from "./show/asides.ts";
import { isObject, property, tried } from "./show/safe.ts";
import { isTableText } from "./show/show.ts";

const kinds: ReadonlySet<string> = new Set([
  "length",
  "area",
  "volume",
  "mass",
  "money",
  "number",
  "percent",
  "choice",
  "yes-no",
  "date",
  "text",
]);

/** Whether a cell's value is an entry: the record of a field maker. */
export function isEntry(value: unknown): value is Entry {
  if (!isObject(value)) return false;
  const kind = property(value, "entry");
  return (
    typeof kind === "string" &&
    kinds.has(kind) &&
    typeof property(value, "initial") === "string" &&
    typeof property(value, "read") === "function"
  );
}

/**
 * What the text of an entry stands for.
 * @throws ProblemsFound where it cannot be read; the path begins with the entry's name
 */
export function readEntry(entry: Entry, text: string, name: string): unknown {
  const reading = entry.read(text);
  if (isObject(reading) && reading.ok) return reading.value;
  const problem = problemOf(isObject(reading) ? property(reading, "problem") : undefined);
  if (problem === undefined)
    throw new TypeError(`the reader of ${name} gives neither a value nor a problem`);
  throw new ProblemsFound([{ ...problem, path: [name, ...problem.path] }]);
}

/** The table an entered text or range of fields stands for. Frozen: all cells share it. */
export function readTable(entered: string | TableText, name: string, host: Host): TableText {
  if (typeof entered === "string") return frozen(host.readCsv(entered, name));
  if (!isTableText(entered)) throw new ProblemsFound([notATable(name)]);
  const columns = entered.columns.map(String);
  const rows = entered.rows.map((row) => columns.map((_, index) => String(row[index] ?? "")));
  const decimal = entered.decimal === "," ? "," : ".";
  return frozen({ kind: "table", name, columns, rows, decimal });
}

function frozen(table: TableText): TableText {
  for (const row of table.rows) Object.freeze(row);
  Object.freeze(table.rows);
  Object.freeze(table.columns);
  return Object.freeze(table);
}

function notATable(name: string) {
  return {
    code: "unreadable",
    path: [name],
    allowed: "a table with columns and rows",
    received: "something else",
    remedy: "Open a CSV file, or paste rows from a spreadsheet.",
  };
}

export interface ShownEntryState {
  readonly entry: Entry;
  readonly text: string;
  readonly value: unknown;
  readonly problem: ShownProblem | undefined;
}

/** An entry as the page is told of it: everything of its record but the reader. */
export function showEntry(state: ShownEntryState, host: Host, units: Units): ShownEntry {
  const { entry, text, problem } = state;
  const printed = problem ? undefined : printedBeside(state, host, units);
  const complete = problem ? undefined : completeText(entry, text);
  return {
    entry: entry.entry,
    initial: String(entry.initial),
    text,
    ...(complete === undefined ? {} : { complete }),
    ...textOf(entry, "hint"),
    ...textOf(entry, "unit"),
    ...textOf(entry, "limits"),
    ...(Array.isArray(entry.options)
      ? {
          options: entry.options.map((option) => ({
            text: String(option.text),
            label: String(option.label),
          })),
        }
      : {}),
    ...slideOf(state),
    ...(Array.isArray(entry.sources) ? { sources: entry.sources.map(String) } : {}),
    ...(printed ? { printed } : {}),
    ...(problem ? { problem } : {}),
  };
}

/** The slide with its place: of a percentage in per cent, as it is typed. */
function slideOf({ entry, value, problem }: ShownEntryState): Pick<ShownEntry, "slide"> {
  if (!isObject(entry.slide)) return {};
  const [from, to, step] = ["from", "to", "step"].map((key) => property(entry.slide ?? {}, key));
  const sound = [from, to, step].every((part) => typeof part === "number" && Number.isFinite(part));
  if (!sound) return {};
  const ends = { from, to, step } as Slide;
  if (problem !== undefined || typeof value !== "number" || !Number.isFinite(value))
    return { slide: ends };
  const at = entry.entry === "percent" ? Number((100 * value).toPrecision(12)) : value;
  return { slide: { ...ends, at } };
}

function textOf<K extends "hint" | "unit" | "limits">(entry: Entry, key: K): { [P in K]?: string } {
  const value = entry[key];
  return (typeof value === "string" ? { [key]: value } : {}) as { [P in K]?: string };
}

function completeText(entry: Entry, text: string): string | undefined {
  const reading = tried(() => entry.read(text), undefined);
  const complete = isObject(reading) ? property(reading, "complete") : undefined;
  return typeof complete === "string" ? complete : undefined;
}

/** The printed value, where it says something that the text does not. */
function printedBeside(state: ShownEntryState, host: Host, units: Units): Figure | undefined {
  if (!isObject(state.value)) return undefined;
  const figure = tried(() => host.print(state.value, units), undefined);
  return figure === undefined || figure.text === state.text.trim() ? undefined : figure;
}

/** The problem of an entry or table that could not be read, with its sentence. */
export function entryProblem(error: unknown, host: Host): ShownProblem | undefined {
  const first = error instanceof ProblemsFound ? error.problems[0] : undefined;
  return first === undefined ? undefined : withSentence(first, host);
}
