import type { Shown } from "../../types/index.ts";
import type { CallPlace, WritingPlace } from "./writing-place.ts";

/** A cell of the notebook, as one may name it. */
export interface CellWord {
  readonly name: string;
  readonly title: string;
  /** Its value now, printed. */
  readonly printed: string;
  readonly shown: Shown | undefined;
}

/** A name handed to cells: a function, a unit, a maker of entries, the published tables. */
export interface HandedWord {
  readonly name: string;
  /** What it is, in a word or two: its unit, or "function". */
  readonly what: string;
  /** As it is called: `boardsFor(bed, { kerf })`. */
  readonly call?: string;
  readonly help?: string;
  /** The options it takes, by the place of the argument they are handed in. */
  readonly options: readonly (readonly FieldWord[])[];
  /** Fields of what it gives, or of itself. */
  readonly fields: readonly FieldWord[];
}

/** An option of a function, or a field of a record. */
export interface FieldWord {
  readonly name: string;
  readonly what?: string;
  readonly help?: string;
}

/** All that a formula of the notebook may name. */
export interface Vocabulary {
  readonly cells: readonly CellWord[];
  readonly handed: readonly HandedWord[];
}

export interface Suggestion {
  readonly name: string;
  /** Beside the name: a live value, a unit. */
  readonly detail?: string;
  /** A line of words. */
  readonly help?: string;
  /** Cells first, then options and fields, then what is handed to all. */
  readonly order: number;
  /** What is written, where that is more than the name. */
  readonly text?: string;
}

/** What may be written at a place of a formula; `own` are the names the formula gives itself. */
export function suggestions(
  place: WritingPlace,
  { cells, handed }: Vocabulary,
  own: readonly string[] = [],
): readonly Suggestion[] {
  if (place.kind === "none") return [];
  if (place.kind === "option") {
    const { options = [] } = handed.find(({ name }) => name === place.call.name) ?? {};
    return (options[place.call.argument] ?? [])
      .filter(({ name }) => !place.given.includes(name))
      .map((option) => ({ ...plain(option), order: 0, text: `${option.name}: ` }));
  }
  if (place.kind === "field") return fieldsAt(place.path, place.call, { cells, handed });
  const names = new Set(cells.map(({ name }) => name));
  return [
    ...own
      .filter((name) => !names.has(name))
      .map((name) => ({ name, detail: "in this formula", order: 0 })),
    ...cells.map(({ name, title, printed }) => ({
      name,
      ...(printed === "" ? {} : { detail: printed }),
      help: title,
      order: 1,
    })),
    ...handed
      .filter(({ name }) => !names.has(name))
      .map(({ name, what, call, help }) => ({
        name,
        detail: what,
        ...(help === undefined && call === undefined ? {} : { help: help ?? call ?? "" }),
        order: 2,
      })),
  ];
}

function fieldsAt(
  [first = "", ...rest]: readonly string[],
  call: CallPlace | undefined,
  { cells, handed }: Vocabulary,
): readonly Suggestion[] {
  const cell = cells.find(({ name }) => name === first);
  if (cell) return fieldsOf(cell.shown, rest).map((field) => ({ ...plain(field), order: 0 }));
  const known = handed.find(
    ({ name, call }) => (call === undefined ? name : `${name}()`) === first,
  );
  if (known && rest.length === 0)
    return known.fields.map((field) => ({ ...plain(field), order: 0 }));
  // In `rows.map((row) => row.` the row is one of the table's: its columns are offered.
  const [over = ""] = call?.name.split(".") ?? [];
  const rows = call?.name.includes(".") && cells.find(({ name }) => name === over);
  if (rows && rest.length === 0 && rows.shown?.kind === "table")
    return rows.shown.columns.map(({ key, unit }) => ({
      name: key,
      ...(unit === "" ? {} : { detail: unit }),
      order: 0,
    }));
  return [];
}

/** Fields of a live record, along a path into it. */
function fieldsOf(shown: Shown | undefined, path: readonly string[]): readonly FieldWord[] {
  if (shown?.kind === "table" || shown?.kind === "list") return path.length === 0 ? listWords : [];
  if (shown?.kind !== "record") return [];
  const [first, ...rest] = path;
  if (first === undefined)
    return shown.fields.map(({ title, shown: value }) => {
      const what = printedValue(value);
      return { name: nameOfTitle(title), ...(what === "" ? {} : { what }), help: title };
    });
  return fieldsOf(shown.fields.find(({ title }) => nameOfTitle(title) === first)?.shown, rest);
}

const listWords: readonly FieldWord[] = [
  { name: "length", help: "How many there are." },
  { name: "map", help: "One thing made of each: rows.map((row) => row.length)." },
  { name: "filter", help: "Those for which something holds: rows.filter((row) => row.count > 1)." },
  { name: "find", help: "The first for which something holds." },
  { name: "reduce", help: "All gathered into one: rows.reduce((sum, row) => sum + row.count, 0)." },
];

/** "Wall height" stands over what is called `wallHeight`. */
export function nameOfTitle(title: string): string {
  const [first = "", ...rest] = title.split(" ");
  const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
  return first.charAt(0).toLowerCase() + first.slice(1) + rest.map(capital).join("");
}

/** A value in a few words. */
export function printedValue(shown: Shown | undefined): string {
  if (shown?.kind === "figure") return shown.figure.text;
  if (shown?.kind === "text")
    return shown.text.length > 40 ? `${shown.text.slice(0, 39)}…` : shown.text;
  if (shown?.kind === "table") return counted(shown.rows.length + shown.more, "row");
  if (shown?.kind === "table-text") return counted(shown.rows.length, "row");
  if (shown?.kind === "list") return counted(shown.items.length + shown.more, "item");
  if (shown?.kind === "record") return counted(shown.fields.length, "field");
  return shown?.kind === "drawing" ? "a drawing" : "";
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? "" : "s"}`;
}

function plain({ name, what, help }: FieldWord): Omit<Suggestion, "order"> {
  return {
    name,
    ...(what === undefined ? {} : { detail: what }),
    ...(help === undefined ? {} : { help }),
  };
}

/** The names that a formula gives itself. */
export function ownNames(text: string): readonly string[] {
  const found = text.matchAll(/\b(?:const|let|function)\s+([\p{L}_$][\p{L}\p{N}_$]*)/gu);
  const params = text.matchAll(
    /\(?\s*([\p{L}_$][\p{L}\p{N}_$]*(?:\s*,\s*[\p{L}_$][\p{L}\p{N}_$]*)*)\s*\)?\s*=>/gu,
  );
  const names = [...params].flatMap(([, list = ""]) => list.split(/\s*,\s*/));
  return [...new Set([...[...found].map(([, name = ""]) => name), ...names])];
}
