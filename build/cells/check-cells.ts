import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { type CompiledCell, compileNotebook } from "../../notebooks/engine/compile/index.ts";
import type { DocumentProblem, Notebook } from "../../notebooks/engine/types/index.ts";
import type { Published } from "../published.ts";
import { root } from "../root.ts";
import { cellModule, type Find, moduleName } from "./cell-module.ts";
import { publishedTypes } from "./published-types.ts";

export interface CheckOptions {
  /** Folder the generated modules are written to; it is emptied first. */
  readonly folder: string;
  /** Names handed to cells. */
  readonly names: ReadonlySet<string>;
  /** The file with `CellNames` and the other types, as `cell-names.d.ts`. */
  readonly types: string;
  /** The file whose types the doc comments in cells may name. */
  readonly library: string;
  readonly published: Published;
}

/**
 * Checks the cells of notebooks: what compiling says, then the types of all formulas. Gives a line
 * `file:line:column message` for each problem, in the order of files and lines.
 */
export function checkCells(
  documents: ReadonlyMap<string, Notebook>,
  options: CheckOptions,
): readonly string[] {
  const found = new Map<string, Found>();
  const add = (one: Found): void => {
    found.set(`${one.file}:${one.line}:${one.column} ${one.message}`, one);
  };
  const cells = new Map<string, CompiledCell>();
  for (const main of documents.keys()) {
    const program = compileNotebook({ main, documents, names: options.names });
    for (const problem of program.problems) add(fromDocument(problem));
    for (const cell of program.cells) {
      cells.set(cell.id, cell);
      if (cell.problem) add(fromDocument(cell.problem));
    }
  }
  const finders = writeModules(documents, [...cells.values()], options);
  for (const one of checkTypes(finders, options.folder)) add(one);
  return [...found.entries()]
    .sort(([, a], [, b]) => a.file.localeCompare(b.file) || a.line - b.line || a.column - b.column)
    .map(([text]) => text);
}

interface Found {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

function fromDocument({ file, line, column = 1, message }: DocumentProblem): Found {
  return { file, line, column, message };
}

function writeModules(
  documents: ReadonlyMap<string, Notebook>,
  cells: readonly CompiledCell[],
  { folder, types, library, published }: CheckOptions,
): ReadonlyMap<string, { readonly file: string; readonly find: Find }> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const to = (file: string): string => relative(folder, file).replaceAll("\\", "/");
  writeFileSync(join(folder, "published.d.ts"), publishedTypes(published, to(library)));
  writeFileSync(join(folder, "types.d.ts"), typesModule(to(types)));
  writeFileSync(join(folder, "tsconfig.json"), JSON.stringify(settings(folder)));
  const finders = new Map<string, { readonly file: string; readonly find: Find }>();
  for (const [file, notebook] of documents) {
    const { code, find } = cellModule(notebook, cells, {
      types: "./types.d.ts",
      library: to(library),
    });
    writeFileSync(join(folder, moduleName(file)), code);
    finders.set(moduleName(file), { file, find });
  }
  return finders;
}

/** The types of what cells are handed, with those of the published tables. */
function typesModule(types: string): string {
  return [
    `import type { CellNames as Names } from ${JSON.stringify(types)};`,
    'import type { Published } from "./published.d.ts";',
    `export type { Given, Operators, TableText, Value, Yielded } from ${JSON.stringify(types)};`,
    "export type CellNames = Names & { readonly published: Published };",
    "",
  ].join("\n");
}

function settings(folder: string): object {
  return {
    extends: relative(folder, join(root, "tsconfig.json")).replaceAll("\\", "/"),
    compilerOptions: {
      allowJs: true,
      checkJs: true,
      noUnusedLocals: false,
      noUnusedParameters: false,
    },
    files: [],
    include: ["*.js"],
  };
}

const report = /^(.*?)\((\d+),(\d+)\): error (TS\d+): (.*)$/;

function checkTypes(
  finders: ReadonlyMap<string, { readonly file: string; readonly find: Find }>,
  folder: string,
): readonly Found[] {
  const tsc = join(root, "node_modules/typescript/bin/tsc");
  const done = spawnSync(process.execPath, [tsc, "-p", folder, "--pretty", "false"], {
    cwd: folder,
    encoding: "utf8",
  });
  const problems: Found[] = [];
  for (const text of reportsIn(done.stdout)) {
    const [, path = "", line = "0", column = "0", , words = text] = report.exec(text) ?? [];
    const module = dirname(path) === "." ? finders.get(path) : undefined;
    const place = module?.find(Number(line), Number(column));
    // Faults of the library itself are reported where its types are checked.
    if (path !== "" && module === undefined && path.endsWith(".ts")) continue;
    problems.push({
      file: module?.file ?? (path === "" ? "cells" : path),
      line: place?.line ?? Number(line),
      column: place?.column ?? Number(column),
      message: words,
    });
  }
  if (done.status !== 0 && done.stdout.trim() === "") {
    throw new Error(`the type checker did not run: ${done.stderr || done.error}`);
  }
  return problems;
}

/** One text a report. Of a call that fits no form, what is wrong with the last form says most. */
function reportsIn(output: string): string[] {
  const reports: string[] = [];
  for (const line of output.split("\n")) {
    const last = reports.at(-1) ?? "";
    if (line.trim() === "") continue;
    if (!line.startsWith(" ")) reports.push(line);
    else if (/No overload matches this call\.$/.test(last) && /^ +(Argument|Type) /.test(line)) {
      reports[reports.length - 1] = last.replace(/No overload matches.*$/, line.trim());
    }
  }
  return reports.map(inTradeWords);
}

/** `Quantity<NoInfer<AreaDimension>>` is an `Area` to whoever reads the message. */
function inTradeWords(text: string): string {
  return text
    .replace(/ with 'exactOptionalPropertyTypes: true'.*$/, ".")
    .replace(/Quantity<NoInfer<(\w+)Dimension>>/g, "$1")
    .replace(/Quantity<(\w+)Dimension>/g, "$1")
    .replace(/Quantity<Dimension>/g, "Quantity");
}
