import { wrongName } from "../document/index.ts";
import type { CellBlock, DocumentProblem, DocumentProblemCode } from "../types/index.ts";
import { tooDeep, tooDeepWords } from "./parse-cell.ts";
import { type Placer, placerFor } from "./places.ts";
import type { CompiledCell } from "./program.ts";
import type { ReadFormula } from "./read-formula.ts";
import { type Naming, resolve } from "./resolve.ts";
import type { Placed, Scope } from "./scope.ts";

/** Makes one cell ready; what is wrong with it alone is its problem. */
export function compileCell(
  placed: Placed,
  scope: Scope,
  { names, readFormula }: Pick<Compiling, "names" | "readFormula">,
): CompiledCell {
  const { block } = placed;
  const { file } = scope.notebook;
  const wrong = wronglyNamed(placed, file);
  const cell = blank(placed, file);
  if (block.kind === "table") return wrong ? { ...cell, problem: wrong } : cell;
  const place = placerFor(block);
  const compiled = compileSafely(block, { scope, names, place, readFormula });
  const problem = wrong ?? compiled.problem;
  return { ...cell, ...compiled, ...(problem ? { problem } : {}) };
}

function blank({ id, block }: Placed, file: string): CompiledCell {
  const table = block.kind === "table";
  return {
    id,
    name: block.name,
    file,
    line: block.line,
    what: block.kind,
    hints: block.hints,
    formula: table ? "" : block.formula,
    formulaLine: table ? block.csvLine : block.formulaLine,
    csv: table ? block.csv : "",
    ...nothing,
  };
}

function wronglyNamed({ block, twins }: Placed, file: string): DocumentProblem | undefined {
  const base = { file, line: block.line, names: [block.name] };
  const wrong = wrongName(block.name);
  if (wrong)
    return { ...base, code: "bad-name", message: `This ${block.kind} can't be used: ${wrong}.` };
  if (twins.length < 2) return undefined;
  const lines = twins.map(({ line }) => line);
  const places = `${lines.slice(0, -1).join(", ")} and ${lines.at(-1)}`;
  const message = `${block.name} is defined ${lines.length === 2 ? "twice" : `${lines.length} times`}, at lines ${places}: give all but one another name, or take them out.`;
  return { ...base, code: "defined-twice", message };
}

interface Compiling extends Naming {
  readonly readFormula: (formula: string) => ReadFormula;
}

type Compiled = Pick<
  CompiledCell,
  "takes" | "inputs" | "body" | "expression" | "async" | "generator" | "namesUsed" | "problem"
>;

const nothing: Compiled = {
  takes: [],
  inputs: [],
  body: "",
  expression: false,
  async: false,
  generator: false,
  namesUsed: [],
};

/** A formula that could be parsed may yet be too deep for the steps after it. */
function compileSafely(block: CellBlock, naming: Compiling): Compiled {
  try {
    return compileFormula(block, naming);
  } catch (error) {
    if (!tooDeep(error)) throw error;
    const message = `The formula of ${block.name} can't be read: ${tooDeepWords}. Part it into several cells.`;
    const { file } = naming.scope.notebook;
    return {
      ...nothing,
      problem: problemAt("syntax", { file, start: 0, message, name: block.name }, naming.place),
    };
  }
}

function compileFormula(block: CellBlock, naming: Compiling): Compiled {
  const { place, scope, readFormula } = naming;
  const fail = (code: DocumentProblemCode, start: number, message: string): Compiled => ({
    ...nothing,
    problem: problemAt(
      code,
      { file: scope.notebook.file, start, message, name: block.name },
      place,
    ),
  });
  if (block.formula.trim() === "") {
    return fail("syntax", 0, `${block.name} is empty: write a formula, as in \`2 * 3\`.`);
  }
  const read = readFormula(block.formula);
  if ("unreadable" in read) {
    const { at, words } = read.unreadable;
    return fail(
      "syntax",
      at,
      `The formula of ${block.name} can't be read: ${words}. Mend it here.`,
    );
  }
  if ("refused" in read) {
    const { code, at, words } = read.refused;
    return fail(code, at, words);
  }
  const { free, operators, ...compiled } = read;
  const resolved = resolve(free, naming);
  return { ...resolved, ...compiled, inputs: [...resolved.inputs, ...operators] };
}

function problemAt(
  code: DocumentProblemCode,
  { file, start, message, name }: { file: string; start: number; message: string; name: string },
  place: Placer,
): DocumentProblem {
  const { line, column } = place({ start });
  return { code, file, line, column, names: [name], message };
}
