/** A line of a document: its text without the line end, and the line end itself. */
export interface Line {
  readonly text: string;
  readonly end: string;
}

/** Splits as CommonMark does, at CRLF, LF or CR. Joining all texts and ends gives the input back. */
export function linesOf(text: string): readonly Line[] {
  const lines: Line[] = [];
  const ends = /\r\n|\n|\r/g;
  let from = 0;
  for (const match of text.matchAll(ends)) {
    lines.push({ text: text.slice(from, match.index), end: match[0] });
    from = match.index + match[0].length;
  }
  if (from < text.length) lines.push({ text: text.slice(from), end: "" });
  return lines;
}

/** The exact text of lines `from` to `to` (exclusive, counted from 0). */
export function joinLines(lines: readonly Line[], from: number, to: number): string {
  let text = "";
  for (const line of lines.slice(from, to)) text += line.text + line.end;
  return text;
}
