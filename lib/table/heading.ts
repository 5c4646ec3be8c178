import type { Problem, Remark } from "../check/index.ts";
import type { Columns } from "./column.ts";
import type { TableText } from "./table-text.ts";

/** Where a known column stands in a table, the heading as typed, and the unit written in it. */
export interface Place {
  readonly index: number;
  readonly heading: string;
  readonly unit: string | undefined;
}

export interface Headings {
  readonly places: ReadonlyMap<string, Place>;
  /** Columns without a heading, which hold what stood beyond the end of the heading. */
  readonly nameless: readonly number[];
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
}

/** Finds the known columns in a table's heading. */
export function readHeadings(table: TableText, columns: Columns): Headings {
  const places = new Map<string, Place>();
  const nameless: number[] = [];
  const problems: Problem[] = [];
  const remarks: Remark[] = [];
  table.columns.forEach((heading, index) => {
    const { name, unit } = splitHeading(heading);
    if (heading.trim() === "") nameless.push(index);
    else if (!Object.hasOwn(columns, name)) remarks.push(notKnown(table.name, heading));
    else if (places.has(name)) problems.push(twice(table.name, heading, name));
    else places.set(name, { index, heading, unit });
  });
  for (const [name, column] of Object.entries(columns)) {
    if (column.must && !places.has(name)) problems.push(notThere(table, name, columns));
  }
  return { places, nameless, problems, remarks };
}

// `Length (in)` is the column `length`, its bare numbers in inches.
function splitHeading(heading: string): { name: string; unit: string | undefined } {
  const parts = /^(.*?)\s*\(([^()]+)\)$/.exec(heading.trim());
  const name = (parts?.[1] ?? heading)
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, "_");
  return { name, unit: parts?.[2]?.trim() };
}

function notKnown(table: string, heading: string): Remark {
  return {
    path: [table, heading],
    text: `The column “${heading}” is not one that is read here; it is kept and not used.`,
  };
}

function twice(table: string, heading: string, name: string): Problem {
  return {
    code: "duplicate",
    path: [table, heading],
    allowed: `one column ${name}`,
    received: heading,
    remedy: "Rename or remove one of the two columns.",
  };
}

function notThere(table: TableText, name: string, columns: Columns): Problem {
  const needed = Object.entries(columns)
    .filter(([, column]) => column.must)
    .map(([key]) => key);
  return {
    code: "missing",
    path: [table.name, name],
    allowed: `a table with the columns ${needed.join(", ")}`,
    received: "",
    remedy: `Add a column with the heading ${name}.`,
  };
}
