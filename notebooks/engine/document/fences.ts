import type { Line } from "./lines.ts";

/** The indentation and the marks of a fence's first line; undefined for any other line. */
export function openingOf(line: string): { indent: string; marks: string } | undefined {
  const [, indent, marks] = /^\uFEFF?( {0,3})(`{3,}|~{3,})/.exec(line) ?? [];
  return indent === undefined || marks === undefined ? undefined : { indent, marks };
}

/** Whether a line closes a fence that begins with these marks, as CommonMark says. */
export function isClosing(line: string, marks: string): boolean {
  const [, closing = ""] = /^ {0,3}(`{3,}|~{3,})[ \t]*$/.exec(line) ?? [];
  return closing[0] === marks[0] && closing.length >= marks.length;
}

/** Whether a fenced block has its closing line, and does not merely end with the document. */
export function isClosed(lines: readonly Line[]): boolean {
  const marks = openingOf(lines[0]?.text ?? "")?.marks;
  const last = lines.at(-1);
  return marks !== undefined && lines.length > 1 && isClosing(last?.text ?? "", marks);
}

/** Marks like these, but so many that no line of the content closes the fence. */
export function longerFence(marks: string, lines: readonly string[]): string {
  const mark = marks[0] ?? "`";
  let length = marks.length;
  for (const line of lines) {
    const run = line.trim();
    if (run !== "" && run === mark.repeat(run.length) && run.length >= length)
      length = run.length + 1;
  }
  return mark.repeat(length);
}
