import { isQuantity } from "../../lib/index.ts";
import type { Published, PublishedRow } from "../published.ts";

/**
 * The types of the published tables as text, read off their rows, so that cells that name them are
 * checked: `library` is the path of the library as an import writes it.
 */
export function publishedTypes(published: Published, library: string): string {
  const tables = Object.entries(published).map(
    ([name, rows]) => `  readonly ${JSON.stringify(name)}: readonly {\n${fields(rows)}\n  }[];`,
  );
  return [
    `import type { Named } from ${JSON.stringify(library)};`,
    "",
    `export interface Published {\n${tables.join("\n")}\n}`,
    "",
  ].join("\n");
}

function fields(rows: readonly PublishedRow[]): string {
  return Object.keys(rows[0] ?? {})
    .map((column) => {
      const types = new Set(rows.map((row) => typeOf(row[column])));
      return `    readonly ${JSON.stringify(column)}: ${[...types].join(" | ")};`;
    })
    .join("\n");
}

function typeOf(value: PublishedRow[string] | undefined): string {
  if (value === null || value === undefined) return "null";
  return isQuantity(value) ? `Named<readonly [${value.dim.join(", ")}]>` : typeof value;
}
