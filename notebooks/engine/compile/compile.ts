import type { CellId, DocumentProblem, Notebook } from "../types/index.ts";
import { compileCell } from "./compile-cell.ts";
import { fileCycles } from "./file-cycles.ts";
import { languageNames } from "./language.ts";
import { orderOf } from "./order.ts";
import type { CompiledCell, Program } from "./program.ts";
import { FormulaReader } from "./read-formula.ts";
import { type Scope, scopesOf } from "./scope.ts";
import { wayRound } from "./ways.ts";

export interface ToCompile {
  /** The file shown. */
  readonly main: string;
  /** It and all that it uses, by name. */
  readonly documents: ReadonlyMap<string, Notebook>;
  /** Names handed to cells. */
  readonly names: ReadonlySet<string>;
  /** Kept from one compiling to the next, it spares formulas that were not edited. */
  readonly reader?: FormulaReader;
}

/** Makes a notebook ready to run. What is wrong is a problem of a cell or of the program, never thrown. */
export function compileNotebook({
  main,
  documents,
  names,
  reader = new FormulaReader(),
}: ToCompile): Program {
  reader.begin();
  const scopes = scopesOf(documents, fileCycles(documents));
  const readFormula = (formula: string) => reader.read(formula);
  const compiled = neededCells(main, scopes, { names, readFormula });
  const takesOf = (id: CellId): readonly CellId[] => compiled.get(id)?.takes ?? [];
  const { ordered, circular } = orderOf(compiled.keys(), takesOf);
  const cells = ordered.flatMap((id) => {
    const cell = compiled.get(id);
    return cell === undefined ? [] : [circular.has(id) ? withCycle(cell, compiled, names) : cell];
  });
  const shown = [...scopes.values()].filter(
    ({ notebook }) => notebook.file === main || cells.some((cell) => cell.file === notebook.file),
  );
  const found = shown.flatMap(problemsOf);
  return {
    main,
    cells,
    problems: found.filter((problem) => !isRemark(problem)),
    remarks: [...found.filter(isRemark), ...shown.flatMap((scope) => shadowing(scope, names))],
    scopes: new Map([...scopes].map(([file, scope]) => [file, namesIn(scope)])),
  };
}

/** All cells of the main notebook, and of others those that are listed and what they take. */
function neededCells(
  main: string,
  scopes: ReadonlyMap<string, Scope>,
  compiling: Parameters<typeof compileCell>[2],
): ReadonlyMap<CellId, CompiledCell> {
  const places = new Map(
    [...scopes.values()].flatMap((scope) =>
      scope.placed.map((placed) => [placed.id, { placed, scope }] as const),
    ),
  );
  const compiled = new Map<CellId, CompiledCell>();
  const shown = scopes.get(main);
  const waiting: CellId[] = [];
  if (shown) {
    waiting.push(...shown.placed.map(({ id }) => id));
    for (const { cell } of shown.used.values()) if (cell) waiting.push(cell);
  }
  for (const id of waiting) {
    const place = places.get(id);
    if (compiled.has(id) || place === undefined) continue;
    const cell = compileCell(place.placed, place.scope, compiling);
    compiled.set(id, cell);
    waiting.push(...cell.takes);
  }
  return compiled;
}

function withCycle(
  cell: CompiledCell,
  cells: ReadonlyMap<CellId, CompiledCell>,
  names: ReadonlySet<string>,
): CompiledCell {
  if (cell.problem) return cell;
  const way = wayRound(cell.id, (id) => cells.get(id)?.takes ?? []) ?? [cell.id, cell.id];
  const members = way.flatMap((id) => cells.get(id) ?? []);
  const place = cell.namesUsed.find((use) => use.cell === way[1])?.places[0];
  const problem: DocumentProblem = {
    code: "cycle",
    file: cell.file,
    line: place?.line ?? cell.line,
    ...(place ? { column: place.column } : {}),
    names: members.slice(0, -1).map(({ name }) => name),
    message: cycleWords(members, names),
  };
  return { ...cell, problem };
}

function cycleWords(members: readonly CompiledCell[], names: ReadonlySet<string>): string {
  const [first, second, ...more] = members;
  if (first === undefined) return "";
  if (more.length === 0 && second !== undefined) {
    return names.has(first.name)
      ? `${first.name} names itself: a cell's own name hides the library's ${first.name}. Give the cell another name.`
      : `${first.name} names itself, so it can never be worked out. Name another cell here.`;
  }
  const way = members.map(({ name, line }) => `${name} (line ${line})`).join(" takes ");
  return `These cells wait for each other: ${way}. Let one of them do without the next.`;
}

function problemsOf({ notebook, problems, own, used }: Scope): DocumentProblem[] {
  const figures = notebook.blocks.flatMap((block) => (block.kind === "prose" ? block.figures : []));
  const known = (name: string): boolean =>
    own.has(name) || used.has(name) || name === "units" || name === "today";
  const missing = figures
    .filter(({ name }) => !known(name))
    .map(({ name, line }): DocumentProblem => {
      const message = `\`fig ${name}\` puts no value into the sentence: no cell here is called ${name}. Make one, or name another.`;
      return { code: "not-defined", file: notebook.file, line, names: [name], message };
    });
  return [...notebook.problems, ...problems, ...missing].sort((a, b) => a.line - b.line);
}

/** Remarks tell the reader something; nothing is wrong. */
function isRemark({ code }: DocumentProblem): boolean {
  return code === "name-shadows" || code === "nested-fence";
}

function shadowing(
  { notebook, placed, own, used }: Scope,
  names: ReadonlySet<string>,
): DocumentProblem[] {
  const hides = (name: string): boolean => names.has(name) || languageNames.has(name);
  const remark = (name: string, line: number, message: string): DocumentProblem => ({
    code: "name-shadows",
    file: notebook.file,
    line,
    names: [name],
    message,
  });
  const cells = placed
    .filter(({ block, id }) => own.get(block.name) === id && hides(block.name))
    .map(({ block: { name, line } }) =>
      remark(
        name,
        line,
        `The cell ${name} hides the library's ${name}: formulas here mean the cell.`,
      ),
    );
  const listed = [...used].flatMap(([name, { line, file }]) => {
    if (own.has(name))
      return remark(name, line, `${name} of ${file} is hidden by this notebook's own ${name}.`);
    return hides(name)
      ? remark(
          name,
          line,
          `${name} of ${file} hides the library's ${name}: formulas here mean the cell.`,
        )
      : [];
  });
  return [...cells, ...listed];
}

function namesIn({ own, used }: Scope): ReadonlyMap<string, CellId> {
  const all = new Map<string, CellId>();
  for (const [name, { cell }] of used) if (cell) all.set(name, cell);
  for (const [name, cell] of own) all.set(name, cell);
  return all;
}
