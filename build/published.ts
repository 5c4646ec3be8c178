import { type Quantity, quantity, readCsv, readUnit } from "../lib/index.ts";

/** A row of a published table: numbers with a unit are quantities, blank fields null. */
export type PublishedRow = Readonly<Record<string, Quantity | number | string | boolean | null>>;

/** The published tables by name. */
export type Published = Readonly<Record<string, readonly PublishedRow[]>>;

interface Field {
  readonly name: string;
  readonly type?: string;
  readonly unit?: string;
}

interface Resource {
  readonly name: string;
  readonly path: string;
  readonly schema: { readonly fields: readonly Field[] };
}

/**
 * Makes the frozen typed rows of the published tables, each table when it is first asked for.
 *
 * @param files - the text of `datapackage.json` and of every file it names, by path
 * @throws Error at a table whose file is missing, or at a field that is not of its type
 */
export function loadPublished(files: Readonly<Record<string, string>>): Published {
  const { resources } = JSON.parse(textOf(files, "datapackage.json")) as {
    readonly resources: readonly Resource[];
  };
  const published: Record<string, readonly PublishedRow[]> = {};
  for (const resource of resources) {
    let rows: readonly PublishedRow[] | undefined;
    Object.defineProperty(published, resource.name, {
      enumerable: true,
      get: () => {
        rows ??= rowsOf(resource, textOf(files, resource.path));
        return rows;
      },
    });
  }
  return Object.freeze(published);
}

function textOf(files: Readonly<Record<string, string>>, path: string): string {
  const text = files[path];
  if (text === undefined) throw new Error(`data/${path} is missing`);
  return text;
}

function rowsOf({ path, schema, name }: Resource, text: string): readonly PublishedRow[] {
  const table = readCsv(text, name);
  const columns = table.columns.map((column) => {
    const field = schema.fields.find((candidate) => candidate.name === column);
    if (field === undefined) throw new Error(`data/${path}: column ${column} is not described`);
    return readerOf(field);
  });
  const rows = table.rows.map((row, index) => {
    const pairs = columns.map(({ name: column, read }, at) => {
      const value = read((row[at] ?? "").trim());
      if (value === undefined) {
        throw new Error(`data/${path}, row ${index + 1}, ${column}: “${row[at]}” cannot be read`);
      }
      return [column, value] as const;
    });
    return Object.freeze(Object.fromEntries(pairs));
  });
  return Object.freeze(rows);
}

type Value = PublishedRow[string];

function readerOf({ name, type = "string", unit }: Field): {
  readonly name: string;
  readonly read: (text: string) => Value | undefined;
} {
  const read = readers[type];
  if (read === undefined) throw new Error(`${name}: the type ${type} is not known`);
  const withUnit = unit === undefined ? (value: Value) => value : inUnit(unit);
  return {
    name,
    read(text) {
      if (text === "") return null;
      const value = read(text);
      return value === undefined ? undefined : withUnit(value);
    },
  };
}

const number = (text: string) => {
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
};

const truths: Readonly<Record<string, boolean>> = {
  yes: true,
  true: true,
  no: false,
  false: false,
};

const readers: Readonly<Record<string, (text: string) => Value | undefined>> = {
  string: (text) => text,
  date: (text) => text,
  year: number,
  number,
  integer: (text) => (Number.isInteger(number(text)) ? number(text) : undefined),
  boolean: (text) => truths[text.toLowerCase()],
};

function inUnit(symbol: string): (value: Value) => Value {
  const reading = readUnit(symbol);
  if (!reading.ok) throw new Error(`the unit ${symbol} is not known`);
  const unit = reading.value;
  return (value) => {
    if (typeof value !== "number") return value;
    if (typeof unit === "number") return Number((value * unit).toPrecision(15));
    return quantity(value * unit.si, unit.dim, unit.currency);
  };
}
