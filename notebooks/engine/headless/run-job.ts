import { compileNotebook, type Program } from "../compile/index.ts";
import { documentsOf } from "../document/index.ts";
import { createSession, type Session } from "../run/index.ts";
import type { CellId, DocumentProblem, Entered, Host, OutlineCell } from "../types/index.ts";
import type { Job } from "./job.ts";
import { Names } from "./names.ts";
import { notesOnDocument, notesOnSaved, notesOnTables } from "./notes.ts";
import { type Outcome, outcomeOf } from "./outcome.ts";
import { csvText } from "./print-csv.ts";
import { jsonText } from "./print-json.ts";
import { textOf } from "./print-text.ts";
import { choiceOf, WrongUsage } from "./usage.ts";

/** What a run prints, and the number it ends with. */
export interface Printed {
  readonly out: string;
  readonly err: string;
  readonly code: 0 | 1;
}

/**
 * Works a notebook out and prints the cells asked for.
 *
 * @param idle - settles when nothing is left that could still come, as Node's `beforeExit`
 * @throws WrongUsage where a name is not there or the cells do not suit the format
 */
export async function runJob(job: Job, host: Host, idle: Promise<unknown>): Promise<Printed> {
  const documents = documentsOf(job.documents);
  const names = new Set(Object.keys(host.names));
  const program = compileNotebook({ main: job.main, documents, names });
  const session = createSession({
    host,
    program,
    surroundings: job.surroundings,
    strict: true,
    improving: false,
  });
  try {
    return await worked(job, { program, session, host }, idle);
  } finally {
    session.dispose();
  }
}

interface Open {
  readonly program: Program;
  readonly session: Session;
  readonly host: Host;
}

async function worked(job: Job, open: Open, idle: Promise<unknown>): Promise<Printed> {
  const { program, session } = open;
  const known = new Names(program, session.outline);
  const entered = enteredOf(job, known);
  session.enter(entered);
  await Promise.race([session.done(), idle]);
  for (const name of Object.keys(job.sets)) known.entry(name, session);
  const cells = askedCells(job, known, session.outline);
  const unfinished = new Set<CellId>(session.unfinished());
  const cameOut = (cell: OutlineCell) => outcomeOf(cell, session, unfinished);
  const outcomes = cells.map(cameOut);
  const given = [...Object.keys(job.tables), ...Object.keys(job.sets)].map((name) =>
    known.cell(name),
  );
  const saved = session.outline.filter(({ id }) => Object.hasOwn(job.entered, id));
  const err = [
    ...job.troubles.map(atLine),
    ...program.problems.map(atLine),
    ...outcomes.flatMap(errorLines),
    // What was given and is bad is said, though no cell asked for needs it.
    ...[...given, ...saved].flatMap((cell) => errorLines(cameOut(cell))),
    ...notesOnSaved(saved, session),
    ...notesOnDocument(program, job),
    ...notesOnTables(cells, session, job),
  ];
  const code = outcomes.some(({ errors }) => errors.length > 0) ? 1 : 0;
  return { out: printed(outcomes, job, open), err: [...new Set(err)].join("\n"), code };
}

function enteredOf(job: Job, known: Names): Entered {
  const entered: Record<CellId, string> = { ...job.entered };
  for (const [name, csv] of Object.entries(job.tables)) entered[known.table(name).id] = csv;
  for (const [name, text] of Object.entries(job.sets)) {
    // What is not there, or no entry, is refused once all entries are known.
    const cell = known.find(name);
    if (cell?.what === "cell") entered[cell.id] = text;
  }
  return entered;
}

function askedCells(
  { cells, main }: Job,
  known: Names,
  outline: readonly OutlineCell[],
): readonly OutlineCell[] {
  if (cells.length > 0) return cells.map((name) => known.cell(name));
  const own = outline.filter(({ file }) => file === main);
  const pinned = own.filter(({ hints }) => hints.pinned);
  if (pinned.length > 0) return pinned;
  const names = own.map(({ name }) => name);
  throw new WrongUsage(
    `No cell of ${main} is pinned: ask with --cell. ${choiceOf("cells", names)}`,
  );
}

function printed(
  outcomes: readonly Outcome[],
  { format, surroundings }: Job,
  { host, session }: Open,
): string {
  const { units } = surroundings;
  if (format === "json") return jsonText(outcomes, host, units);
  if (format === "csv") return csvText(outcomes, { session, host, units });
  const good = outcomes.filter(({ errors }) => errors.length === 0);
  return good.map((outcome) => textOf(outcome, host, units)).join("\n");
}

function errorLines({ errors }: Outcome): readonly string[] {
  return errors.map(({ name, error: { file, line, message } }) => {
    const lines = message.split("\n").map((text) => `  ${text}`);
    return [`${name} (${file}, line ${line}):`, ...lines].join("\n");
  });
}

/** A problem that belongs to no cell; it stands in nobody's way, but is said. */
function atLine({ file, line, message }: DocumentProblem): string {
  return `${file}, line ${line}: ${message}`;
}
