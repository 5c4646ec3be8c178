import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  inch,
  kilogramPerCubicMetre,
  type Quantity,
  readCsv,
  type SoilMaterial,
  times,
} from "../../lib/index.ts";

const units: Readonly<Record<string, Quantity>> = { "kg/m3": kilogramPerCubicMetre, in: inch };

interface Described {
  readonly resources: readonly {
    readonly name: string;
    readonly path: string;
    readonly schema: {
      readonly fields: readonly {
        readonly name: string;
        readonly type: string;
        readonly unit?: string;
      }[];
    };
  }[];
}

const textOf = (file: string) =>
  readFileSync(join(import.meta.dirname, "../../data", file), "utf8");

/** The rows of a table of `data/`, numbers as numbers and, with a unit, as quantities. */
export function dataRows(name: string): readonly Readonly<Record<string, unknown>>[] {
  const { resources } = JSON.parse(textOf("datapackage.json")) as Described;
  const found = resources.find((resource) => resource.name === name);
  if (!found) throw new Error(`no table ${name}`);
  const fields = new Map(found.schema.fields.map((field) => [field.name, field]));
  const { columns, rows } = readCsv(textOf(found.path), name);
  return rows.map((row) =>
    Object.fromEntries(
      columns.map((column, at) => {
        const field = fields.get(column);
        const text = row[at] ?? "";
        if (field?.type !== "number" || text === "") return [column, text];
        const unit = field.unit === undefined ? undefined : units[field.unit];
        return [column, unit ? times(Number(text), unit) : Number(text)];
      }),
    ),
  );
}

/** One row, found by a field. */
export function dataRow<T>(table: string, field: string, value: string): T {
  const row = dataRows(table).find((one) => one[field] === value);
  if (!row) throw new Error(`no ${value} in ${table}`);
  return row as T;
}

/** A row of the table of materials. */
export const materialRow = (name: string) => dataRow<SoilMaterial>("materials", "material", name);
