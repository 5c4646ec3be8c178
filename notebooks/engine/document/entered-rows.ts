/** One row of the `csv entered` block. */
export interface EnteredRow {
  /** As written: `kerf`, or `garden.md#kerf`. */
  readonly cell: string;
  readonly text: string;
}

interface RowPlace {
  /** As it stands there. */
  readonly raw: string;
  /** From 0, the heading's. */
  readonly line: number;
}

/** What a `csv entered` block says, and which of its rows can't be read. */
export interface EnteredRows {
  readonly rows: readonly (EnteredRow & RowPlace)[];
  readonly broken: readonly RowPlace[];
}

/**
 * Writes what was entered as CSV, a row to a line. A text that a line of a document can't hold as it
 * is (line ends, other signs that do not print) is written as JSON, which the third column says.
 * Nothing is marked for spreadsheets: what is read back is what was typed.
 */
export function writeEntered(rows: readonly EnteredRow[], lineEnd: string): string {
  const asJson = rows.map(({ text }) => !fitsALine(text));
  const any = asJson.includes(true);
  const lines = rows.map(({ cell, text }, at) => {
    const json = asJson[at] === true;
    const fields = [cell, json ? JSON.stringify(text) : text, ...(any ? [json ? "json" : ""] : [])];
    return fields.map(field).join(",");
  });
  return [any ? "cell,text,written" : "cell,text", ...lines].map((line) => line + lineEnd).join("");
}

/** Whether a text comes back from a line of any document, whatever its line ends. */
export function fitsALine(text: string): boolean {
  return !/[\p{Cc}\p{Cs}\u2028\u2029\uFEFF]/u.test(text);
}

function field(text: string): string {
  return /[",]|^\s|\s$|^$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Reads the block's content; undefined where its heading is not one that is known. */
export function readEntered(content: string): EnteredRows | undefined {
  const records = recordsOf(content);
  const [heading, ...more] = records;
  const columns = heading?.fields?.map((name) => name.trim()).join(",");
  if (columns !== "cell,text" && columns !== "cell,text,written") return undefined;
  const rows: (EnteredRow & RowPlace)[] = [];
  const broken: RowPlace[] = [];
  for (const { fields, raw, line } of more) {
    if (raw.trim() === "") continue;
    const row = fields && rowFrom(fields, columns === "cell,text" ? 2 : 3);
    if (row) rows.push({ ...row, raw, line });
    else broken.push({ raw, line });
  }
  return { rows, broken };
}

function rowFrom(fields: readonly string[], width: number): EnteredRow | undefined {
  const [cell = "", text = "", written = ""] = fields;
  if (fields.length < 2 || fields.length > width || cell === "") return undefined;
  if (written === "") return { cell, text };
  if (written !== "json") return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "string" ? { cell, text: value } : undefined;
  } catch {
    return undefined;
  }
}

interface Record extends RowPlace {
  /** Undefined where a quote is not closed on the line, or something follows it. */
  readonly fields: readonly string[] | undefined;
}

function recordsOf(content: string): readonly Record[] {
  return content.split(/\r\n|\n|\r/).map((raw, line) => ({ fields: fieldsOf(raw), raw, line }));
}

/** The fields of a line: RFC 4180, a quote being one only at a field's start. */
function fieldsOf(text: string): readonly string[] | undefined {
  const fields: string[] = [];
  // A row has three at most.
  for (let at = 0; at <= text.length && fields.length < 4; ) {
    if (text[at] !== '"') {
      const comma = text.indexOf(",", at);
      const end = comma < 0 ? text.length : comma;
      fields.push(text.slice(at, end));
      at = end + 1;
      continue;
    }
    const [quoted] = /^"[^"]*(?:""[^"]*)*"/.exec(text.slice(at)) ?? [];
    if (quoted === undefined) return undefined;
    fields.push(quoted.slice(1, -1).replaceAll('""', '"'));
    at += quoted.length;
    if (at < text.length && text[at] !== ",") return undefined;
    at += 1;
  }
  return fields;
}
