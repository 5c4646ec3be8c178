import { basename } from "node:path";
import { type CompiledCell, checkableText } from "../../notebooks/engine/compile/index.ts";
import type { CellBlock, Notebook } from "../../notebooks/engine/types/index.ts";

/** A place in the notebook for a place in the generated module. */
export type Find = (line: number, column: number) => { line: number; column: number } | undefined;

export interface CellModule {
  readonly code: string;
  /** Lines and columns from 1. */
  readonly find: Find;
}

export interface ModuleOptions {
  /** Path, as an import writes it, of the module with `CellNames`. */
  readonly types: string;
  /** Path, as an import writes it, of the module whose types doc comments in cells may name. */
  readonly library: string;
}

/** The names generated code uses itself: no cell may have them, being reserved or too odd. */
const names = "$$names";
const operators = "$$operators";
const given = "$$given";

/**
 * One notebook as a module for the type checker: each cell a constant, in an order in which each
 * stands after all it takes, its operators as calls, its lines as in the notebook.
 */
export function cellModule(
  notebook: Notebook,
  cells: readonly CompiledCell[],
  { types, library }: ModuleOptions,
): CellModule {
  const own = cells.filter(({ file }) => file === notebook.file);
  const lines: string[] = [];
  const finders: Find[] = [];
  const write = (text: string, find: Find = () => undefined): void => {
    for (const line of text.split("\n")) {
      lines.push(line);
      finders.push(find);
    }
  };
  for (const line of header(own, { types, library })) write(line);
  for (const cell of own) writeCell(cell, blockOf(notebook, cell), write, () => lines.length);
  return {
    code: `${lines.join("\n")}\n`,
    find: (line, column) => finders[line - 1]?.(line, column),
  };
}

/** The file a notebook's module stands in. */
export function moduleName(file: string): string {
  return `${file.replaceAll("/", "__").replace(/\.md$/, "")}.js`;
}

function header(cells: readonly CompiledCell[], { types, library }: ModuleOptions): string[] {
  const inputs = cells.flatMap((cell) => cell.inputs);
  const named = (key: "library" | "given"): string =>
    [...new Set(inputs.flatMap(({ name, from }) => (key in from ? [name] : [])))].join(", ");
  const calls = new Map(
    inputs.flatMap(({ name, from }) =>
      "operator" in from ? [[name, from.operator] as const] : [],
    ),
  );
  const opened = [...calls].map(([name, operator]) => `${operator}: ${name}`).join(", ");
  const foreign = new Map<string, Set<string>>();
  const [first] = cells;
  for (const { name, from } of inputs) {
    if (!("cell" in from)) continue;
    const [file = ""] = from.cell.split("#");
    if (file !== first?.file) foreign.set(file, (foreign.get(file) ?? new Set()).add(name));
  }
  return [
    ...[...foreign].map(
      ([file, brought]) =>
        `import { ${[...brought].join(", ")} } from "./${basename(moduleName(file))}"`,
    ),
    declared(names, `import(${JSON.stringify(types)}).CellNames`),
    declared(operators, `import(${JSON.stringify(types)}).Operators`),
    declared(given, `import(${JSON.stringify(types)}).Given`),
    `const { ${named("library")} } = ${names}`,
    `const { ${opened} } = ${operators}`,
    `const { ${named("given")} } = ${given}`,
    `/** @template T @param {T} made @returns {import(${JSON.stringify(types)}).Value<T>} */`,
    "const $$value = (made) => /** @type {never} */ (made)",
    `/** @template T @param {T} made @returns {import(${JSON.stringify(types)}).Yielded<T>} */`,
    "const $$yielded = (made) => /** @type {never} */ (made)",
    ...documentTypes(cells, library),
  ];
}

function declared(name: string, type: string): string {
  return `const ${name} = /** @type {${type}} */ (/** @type {unknown} */ (undefined))`;
}

/** Types of the library that doc comments in the formulas name. */
function documentTypes(cells: readonly CompiledCell[], library: string): string[] {
  const found = new Set<string>();
  for (const { formula } of cells) {
    for (const [comment] of formula.matchAll(/\/\*\*[\s\S]*?\*\//g)) {
      for (const [, type = ""] of comment.matchAll(/\{([^}]*)\}/g)) {
        for (const [name] of type.matchAll(/\b[A-Z]\w*/g))
          if (!(name in globalThis)) found.add(name);
      }
    }
  }
  for (const known of ["Record", "Readonly", "ReadonlyArray", "ReadonlyMap", "Partial"])
    found.delete(known);
  return [...found].map(
    (name) => `/** @typedef {import(${JSON.stringify(library)}).${name}} ${name} */`,
  );
}

function blockOf(notebook: Notebook, cell: CompiledCell): CellBlock | undefined {
  for (const block of notebook.blocks) {
    if (block.kind === "cell" && block.line === cell.line) return block;
  }
  return undefined;
}

function writeCell(
  cell: CompiledCell,
  block: CellBlock | undefined,
  write: (text: string, find?: Find) => void,
  lineCount: () => number,
): void {
  const constant = `export const ${cell.name}`;
  const checkable = block && cell.problem === undefined ? checkableText(block) : undefined;
  if (cell.problem) {
    // Reported by itself; what takes it is not to be blamed. A second of a name is left out.
    if (!cell.id.endsWith(`#${cell.name}`) || cell.problem.code === "bad-name") return;
    write(`${constant} = /** @type {any} */ (undefined)`);
    return;
  }
  if (cell.what === "table" || checkable === undefined) {
    write(
      `${constant} = /** @type {import("./types.d.ts").TableText} */ (/** @type {unknown} */ (undefined))`,
    );
    return;
  }
  const whole: Find = () => ({ line: cell.line, column: 1 });
  const first = lineCount() + 2;
  const inside: Find = (line, column) => checkable.place(line - first, column - 1);
  if (cell.generator) {
    write(`${constant} = $$yielded((async function* () {`, whole);
    write(checkable.text, inside);
    write("})())", whole);
    return;
  }
  write(`${constant} = $$value(await (async () => ${cell.expression ? "(" : "{"}`, whole);
  write(checkable.text, inside);
  write(`${cell.expression ? ")" : "}"})())`, whole);
}
