// A spreadsheet runs what begins so as a formula, blanks and apostrophes before it included.
const runs = /^[\s']*[=+\-@]/;

/** The text with an apostrophe before it where a spreadsheet would take it for a formula. */
export function spreadsheetSafe(text: string): string {
  return runs.test(text) ? `'${text}` : text;
}

/** Takes that apostrophe away again. */
export function fromSpreadsheetSafe(text: string): string {
  return text.startsWith("'") && runs.test(text.slice(1)) ? text.slice(1) : text;
}
