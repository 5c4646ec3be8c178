/** A field as it stood: `quoted` fields keep their blanks, others were trimmed. */
export interface Field {
  readonly text: string;
  readonly quoted: boolean;
}

const isOneOf = (character: string | undefined, separators: string): boolean =>
  character !== undefined && separators.includes(character);

const isLineEnd = (character: string | undefined): boolean =>
  character === "\n" || character === "\r";

/**
 * Splits text into records of fields. A field is quoted only if it begins with a quote and the
 * closing quote stands at its end; all other quotes are part of the text, as the inches in `8' 3"`.
 */
export function splitRecords(text: string, separator: string): Field[][] {
  const records: Field[][] = [];
  let record: Field[] = [];
  let at = 0;
  while (at <= text.length) {
    const { field, end } = nextField(text, at, separator);
    record.push(field);
    at = end;
    if (text[at] === separator) {
      at += 1;
      continue;
    }
    records.push(record);
    record = [];
    at += text[at] === "\r" && text[at + 1] === "\n" ? 2 : 1;
  }
  return records;
}

interface Step {
  readonly field: Field;
  readonly end: number;
}

/** The field that begins here, up to one of the separators or the line's end. */
export function nextField(text: string, start: number, separators: string): Step {
  return quotedField(text, start, separators) ?? bareField(text, start, separators);
}

function bareField(text: string, start: number, separators: string): Step {
  let end = start;
  while (end < text.length && !isOneOf(text[end], separators) && !isLineEnd(text[end])) end += 1;
  return { field: { text: text.slice(start, end).trim(), quoted: false }, end };
}

function quotedField(text: string, start: number, separators: string): Step | undefined {
  const open = skipBlanks(text, start, separators);
  if (text[open] !== '"') return undefined;
  let at = open + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    // Never closed: the quote was an inch mark or a slip, and must not swallow the rows below.
    if (quote < 0) return undefined;
    if (text[quote + 1] === '"') {
      at = quote + 2;
      continue;
    }
    const end = skipBlanks(text, quote + 1, separators);
    const closes = end >= text.length || isOneOf(text[end], separators) || isLineEnd(text[end]);
    if (!closes) return undefined;
    return {
      field: { text: text.slice(open + 1, quote).replaceAll('""', '"'), quoted: true },
      end,
    };
  }
}

function skipBlanks(text: string, start: number, separators: string): number {
  let at = start;
  while ((text[at] === " " || text[at] === "\t") && !isOneOf(text[at], separators)) at += 1;
  return at;
}
