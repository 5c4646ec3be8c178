import type { CompiledCell } from "../compile/index.ts";
import type { CellError, EngineProblem, Host, ShownProblem } from "../types/index.ts";

/** Thrown in place of a value where the engine itself knows what is wrong. */
export class ProblemsFound extends Error {
  readonly problems: readonly EngineProblem[];

  constructor(problems: readonly EngineProblem[]) {
    super("problems found");
    this.problems = problems;
  }
}

/** Thrown by a cell that somebody stopped. */
export class Stopped extends Error {
  constructor() {
    super("stopped");
  }
}

/** Adds the sentence to a problem; one whose record is broken keeps its parts. */
export function withSentence(problem: EngineProblem, host: Host): ShownProblem {
  try {
    return { ...problem, sentence: host.sentence(problem) };
  } catch {
    return { ...problem, sentence: `${problem.allowed}. ${problem.remedy}` };
  }
}

/** The error of a cell that could not be compiled. */
export function documentError(cell: CompiledCell): CellError | undefined {
  const { problem } = cell;
  if (problem === undefined) return undefined;
  return {
    kind: "document",
    message: problem.message,
    file: problem.file,
    line: problem.line,
    ...(problem.column === undefined ? {} : { column: problem.column }),
    names: problem.names,
    problems: [],
  };
}

/** The error of a cell whose formula threw. */
export function thrownError(error: unknown, cell: CompiledCell, host: Host): CellError {
  const place = { file: cell.file, line: cell.line, names: [cell.name] };
  if (error instanceof Stopped) {
    const message = `${cell.name} was stopped. Change something it uses, or start it again.`;
    return { kind: "stopped", message, ...place, problems: [] };
  }
  const problems = problemsIn(error, host);
  if (problems !== undefined) {
    const shown = problems.map((problem) => withSentence(problem, host));
    const message = shown.map((problem) => placed(problem, cell)).join("\n");
    return { kind: "problems", message, ...place, line: lineOf(error, cell), problems: shown };
  }
  const message = `${cell.name}: ${inCleanWords(error)}`;
  return { kind: "formula", message, ...place, line: lineOf(error, cell), problems: [] };
}

/** The sentence, beginning with the cell where the problem has no place of its own. */
function placed({ path, sentence }: ShownProblem, { name }: CompiledCell): string {
  return path.length === 0 ? `${name}: ${sentence.replace(/^:\s*/, "")}` : sentence;
}

/** The error of a cell that needs others that have errors. */
export function waitsError(
  cell: CompiledCell,
  failing: readonly { readonly name: string }[],
): CellError {
  const names = failing.map(({ name }) => name);
  const message =
    names.length === 1
      ? `Waits for ${names[0]}, which has an error.`
      : `Waits for ${names.slice(0, -1).join(", ")} and ${names.at(-1)}, which have errors.`;
  return { kind: "waits", message, file: cell.file, line: cell.line, names, problems: [] };
}

function problemsIn(error: unknown, host: Host): readonly EngineProblem[] | undefined {
  if (error instanceof ProblemsFound) return error.problems;
  try {
    return host.problemsOf(error);
  } catch {
    return undefined;
  }
}

/** Engines name a made function's own lines `<anonymous>:3:5` or `> Function:3:5` in the stack. */
const ownLine = /(?:<anonymous>|> (?:Async|AsyncGenerator|Generator)?Function):(\d+):\d+/;

/** Lines that a made function has before its body. */
const linesBeforeBody = 2;

function lineOf(error: unknown, cell: CompiledCell): number {
  const found = error instanceof Error ? ownLine.exec(String(error.stack)) : null;
  if (!found) return cell.formulaLine;
  const within = Number(found[1]) - linesBeforeBody - 1;
  const count = cell.formula.split("\n").length;
  return cell.formulaLine + Math.min(Math.max(within, 0), count - 1);
}

const readings: readonly (readonly [RegExp, (found: RegExpExecArray) => string])[] = [
  [
    /Cannot read properties of (?:undefined|null) \(reading '(.+)'\)|(?:undefined|null) has no properties|can't access property "(.+)"/,
    ([, a, b]) => `“${a ?? b ?? "a property"}” is asked of something that is not there.`,
  ],
  [/^(.+) is not a function/, ([, what]) => `${what} is not a function, so it cannot be called.`],
  [/^(.+) is not iterable/, ([, what]) => `${what} is not a list.`],
  [/^(.+) is not defined/, ([, what]) => `${what} is not known here.`],
  [/Maximum call stack|too much recursion/, () => "it calls itself without end."],
  [
    /object is not extensible|read only property|Cannot assign/,
    () => "it changes a value that belongs to another cell; make a new one instead.",
  ],
];

function inCleanWords(error: unknown): string {
  const raw = messageOf(error);
  for (const [pattern, words] of readings) {
    const found = pattern.exec(raw);
    if (found) return words(found);
  }
  return raw === "" ? "something was thrown that has no message." : raw;
}

function messageOf(error: unknown): string {
  try {
    const known = typeof error === "object" && error !== null && "message" in error;
    if (!known && typeof error === "object") return "";
    return String(known ? error.message : error).slice(0, 2000);
  } catch {
    return "";
  }
}
