import type { ReferenceField, ReferenceName } from "../../notebooks/engine/types/index.ts";

interface Description {
  readonly resources: readonly {
    readonly name: string;
    readonly title: string;
    readonly path: string;
    readonly schema: { readonly fields: readonly Field[] };
  }[];
}

interface Field {
  readonly name: string;
  readonly type?: string;
  readonly title?: string;
  readonly description?: string;
  readonly unit?: string;
  readonly constraints?: { readonly required?: boolean };
}

/** The published tables as cells name them: their columns, and the sources of their rows. */
export function tableDocs(files: Readonly<Record<string, string>>): readonly ReferenceName[] {
  const { resources } = JSON.parse(files["datapackage.json"] ?? "{}") as Description;
  return resources.map(({ name, title, path, schema }) => ({
    name: `published.${name}`,
    what: "table",
    group: "published",
    signature: `published.${name}: Row[]`,
    summary: `${title}.`,
    sources: sourcesIn(files[path] ?? "", schema.fields),
    throws: [],
    examples: [[{ code: `published.${name}.length` }]],
    parameters: [],
    fields: schema.fields.map(columnOf),
  }));
}

function columnOf({ name, type = "string", title, description, unit, constraints }: Field) {
  const help = [title, description].filter(Boolean).join(". ");
  const field: ReferenceField = {
    name,
    type: unit === undefined ? (typeNames[type] ?? "string") : `quantity in ${unit}`,
    ...(help === "" ? {} : { help }),
    ...(constraints?.required ? {} : { optional: true as const }),
  };
  return field;
}

const typeNames: Readonly<Record<string, string>> = {
  number: "number",
  integer: "number",
  year: "number",
  boolean: "boolean",
};

/** The ids in the columns that name sources, each once. */
function sourcesIn(csv: string, fields: readonly Field[]): readonly string[] {
  const [head = "", ...rows] = csv.trim().split(/\r?\n/);
  const columns = head.split(",");
  const at = columns.indexOf("source");
  if (at < 0 || !fields.some(({ name }) => name === "source")) return [];
  const ids = rows.map((row) => cellsOf(row)[at] ?? "");
  return [...new Set(ids.filter((id) => id !== ""))].sort();
}

function cellsOf(row: string): readonly string[] {
  return [...row.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, cell = ""]) => cell);
}
