import type { CellId, DocumentProblem } from "../types/index.ts";
import type { FreeName, FreePlace } from "./free-names.ts";
import { languageNames, whyRefused } from "./language.ts";
import { nearestName } from "./nearest.ts";
import type { Placer } from "./places.ts";
import type { Input, NamePlace, NameUsed } from "./program.ts";
import type { Scope } from "./scope.ts";

export interface Resolved {
  readonly takes: readonly CellId[];
  readonly inputs: readonly Input[];
  readonly namesUsed: readonly NameUsed[];
  readonly problem?: DocumentProblem;
}

export interface Naming {
  readonly scope: Scope;
  /** Names handed to cells. */
  readonly names: ReadonlySet<string>;
  readonly place: Placer;
}

/** Finds what each free name of a formula means: own cell, used cell, library, language. */
export function resolve(free: readonly FreeName[], naming: Naming): Resolved {
  const inputs: Input[] = [];
  const namesUsed: NameUsed[] = [];
  const problems: DocumentProblem[] = [];
  for (const { name, places } of free) {
    const meaning = meaningOf(name, naming);
    if (meaning === undefined || "problem" in meaning) {
      problems.push(meaning?.problem ?? notDefined(name, places, naming));
      continue;
    }
    const written = places.find((place) => place.write);
    if (written) problems.push(assigned(name, written, naming));
    if (meaning.input) inputs.push(meaning.input);
    namesUsed.push({ ...meaning.use, places: places.map((place) => naming.place(place)) });
  }
  const takes = inputs.flatMap(({ from }) => ("cell" in from ? [from.cell] : []));
  const problem = joined(problems);
  return { takes, inputs, namesUsed, ...(problem ? { problem } : {}) };
}

type Meaning =
  | { readonly input?: Input; readonly use: Omit<NameUsed, "places"> }
  | { readonly problem: DocumentProblem };

function meaningOf(name: string, { scope, names }: Naming): Meaning | undefined {
  const used = scope.used.get(name);
  const cell = scope.own.get(name) ?? used?.cell;
  if (cell !== undefined)
    return { input: { name, from: { cell } }, use: { name, kind: "cell", cell } };
  if (used?.problem) return undefined;
  if (name === "units" || name === "today") {
    return { input: { name, from: { given: name } }, use: { name, kind: "given" } };
  }
  if (names.has(name))
    return { input: { name, from: { library: name } }, use: { name, kind: "library" } };
  if (languageNames.has(name)) return { use: { name, kind: "language" } };
  return undefined;
}

function notDefined(name: string, places: readonly FreePlace[], naming: Naming): DocumentProblem {
  const { scope, place } = naming;
  const at = atPlace(places[0], place);
  const base = { file: scope.notebook.file, ...at, names: [name] };
  const broken = scope.used.get(name)?.problem;
  if (broken) {
    return {
      ...base,
      code: broken.code,
      message: `${name} can't be brought in (line ${broken.line}): ${broken.message}`,
    };
  }
  const unlisted = scope.unlisted.get(name);
  if (unlisted) {
    const message = `${name} is a cell of ${unlisted.file} that is not listed: add it to the block \`uses ${unlisted.file}\` at line ${unlisted.line}.`;
    return { ...base, code: "not-shared", message };
  }
  const refused = whyRefused(name);
  if (refused)
    return { ...base, code: "not-allowed", message: `${name} is not there: ${refused}.` };
  return { ...base, code: "not-defined", message: unknownWords(name, naming) };
}

function unknownWords(name: string, { scope, names }: Naming): string {
  const known = [
    ...scope.own.keys(),
    ...scope.used.keys(),
    "units",
    "today",
    ...names,
    ...languageNames,
  ];
  const like = nearestName(name, known);
  const start = `${name} is not known: no cell of this notebook and nothing in the library has that name.`;
  return like === undefined
    ? `${start} Make a cell ${name}, or name another.`
    : `${start} Is ${like} meant?`;
}

function assigned(name: string, at: FreePlace, { scope, place, names }: Naming): DocumentProblem {
  const what =
    scope.own.has(name) || scope.used.has(name)
      ? "a cell"
      : names.has(name)
        ? "the library's"
        : "not the formula's own";
  const message = `This formula changes ${name}, which is ${what}. Keep the new value in a name of its own: \`const other = …\`.`;
  return {
    code: "assignment",
    file: scope.notebook.file,
    ...atPlace(at, place),
    names: [name],
    message,
  };
}

function atPlace(at: FreePlace | undefined, place: Placer): Pick<NamePlace, "line" | "column"> {
  const { line, column } = place(at ?? { start: 0, shorthand: false });
  return { line, column };
}

/** One problem for all: the first one's place, everyone's words. */
function joined(problems: readonly DocumentProblem[]): DocumentProblem | undefined {
  const [first, ...more] = problems;
  if (first === undefined || more.length === 0) return first;
  const others = more.map(
    ({ line, column, message }) => `Line ${line}, column ${column}: ${message}`,
  );
  return {
    ...first,
    names: problems.flatMap(({ names }) => names),
    message: [first.message, ...others].join(" "),
  };
}
