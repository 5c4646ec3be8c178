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
