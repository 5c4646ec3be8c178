import { type Path, type Problem, ProblemError, requireRecord } from "../check/index.ts";

/** Throws unless the value is a table of text, as `readCsv` gives it. */
export function requireTable(value: unknown): void {
  requireRecord(value, ["table"]);
  const { name, columns, rows } = value as Readonly<Record<string, unknown>>;
  const problems: Problem[] = [];
  if (typeof name !== "string") problems.push(wrong(name, ["table", "name"], "a text"));
  if (!isTexts(columns)) problems.push(wrong(columns, ["table", "columns"], "a list of texts"));
  if (!Array.isArray(rows)) problems.push(wrong(rows, ["table", "rows"], "a list of rows"));
  else if (!rows.every(isTexts)) {
    const at = rows.findIndex((row) => !isTexts(row));
    problems.push(wrong(rows[at], ["table", "rows", at + 1], "a list of texts"));
  }
  if (problems.length > 0) throw new ProblemError(problems);
}

function isTexts(value: unknown): boolean {
  return Array.isArray(value) && value.every((each) => typeof each === "string");
}

function wrong(value: unknown, path: Path, allowed: string): Problem {
  const isNothing = value === undefined || value === null;
  const received = isNothing ? "" : Array.isArray(value) ? "a list of other things" : typeof value;
  return {
    code: isNothing ? "missing" : "unreadable",
    path,
    allowed,
    received: typeof value === "string" || typeof value === "number" ? String(value) : received,
    remedy: "Give a table as readCsv gives it.",
  };
}
