import type { AnyNode } from "acorn";
import { wrongName } from "../document/index.ts";
import type { CellBlock, DocumentProblem, DocumentProblemCode } from "../types/index.ts";
import { freeNames } from "./free-names.ts";
import { chanceRefused, importRefused } from "./language.ts";
import { type ParsedCell, parseCell, tooDeep, tooDeepWords } from "./parse-cell.ts";
import { type Placer, placerFor } from "./places.ts";
import type { CompiledCell } from "./program.ts";
import { type Naming, resolve } from "./resolve.ts";
import { rewriteOperators } from "./rewrite.ts";
import type { Placed, Scope } from "./scope.ts";
import { walk } from "./tree.ts";

/** Makes one cell ready; what is wrong with it alone is its problem. */
export function compileCell(
  placed: Placed,
  scope: Scope,
  names: ReadonlySet<string>,
): CompiledCell {
  const { block } = placed;
  const { file } = scope.notebook;
  const wrong = wronglyNamed(placed, file);
  const cell = blank(placed, file);
  if (block.kind === "table") return wrong ? { ...cell, problem: wrong } : cell;
  const place = placerFor(block);
  const compiled = compileSafely(block, { scope, names, place });
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
function compileSafely(block: CellBlock, naming: Naming): Compiled {
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

function compileFormula(block: CellBlock, naming: Naming): Compiled {
  const { place, scope } = naming;
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
  const parsed = parseCell(block.formula);
  if (!("program" in parsed)) {
    return fail(
      "syntax",
      parsed.at,
      `The formula of ${block.name} can't be read: ${parsed.words}. Mend it here.`,
    );
  }
  const refused = refusedIn(parsed.root, parsed.offset);
  if (refused) return fail("not-allowed", refused.at, refused.words);
  const resolved = resolve(freeNames(parsed), naming);
  const rewritten = rewriteOperators(block.formula, parsed);
  if (rewritten.refusedAt !== undefined) {
    return fail(
      "syntax",
      rewritten.refusedAt,
      `What is changed here is worked out by a call: keep it in a name first, then write \`a.b = a.b + c\`.`,
    );
  }
  const operators = [...rewritten.operators].map(([name, operator]) => ({
    name,
    from: { operator },
  }));
  return {
    ...resolved,
    inputs: [...resolved.inputs, ...operators],
    body: bodyOf(rewritten.text.toString(), parsed),
    expression: parsed.expression,
    async: parsed.async,
    generator: parsed.generator,
  };
}

/** The formula's first line is the body's first, so that lines in a thrown error can be placed. */
function bodyOf(text: string, { expression }: ParsedCell): string {
  return expression ? `"use strict";return (${text}\n)` : `"use strict";${text}\n`;
}

function problemAt(
  code: DocumentProblemCode,
  { file, start, message, name }: { file: string; start: number; message: string; name: string },
  place: Placer,
): DocumentProblem {
  const { line, column } = place({ start });
  return { code, file, line, column, names: [name], message };
}

function refusedIn(root: AnyNode, offset: number): { at: number; words: string } | undefined {
  let found: { at: number; words: string } | undefined;
  walk(root, (node) => {
    if (found) return false;
    const at = node.start - offset;
    if (node.type === "ImportExpression" || node.type === "MetaProperty")
      found = { at, words: importRefused };
    if (node.type === "MemberExpression" && isMathRandom(node.object, node.property))
      found = { at, words: chanceRefused };
    return undefined;
  });
  return found;
}

function isMathRandom(object: AnyNode, property: AnyNode): boolean {
  if (object.type !== "Identifier" || object.name !== "Math") return false;
  if (property.type === "Identifier") return property.name === "random";
  return property.type === "Literal" && property.value === "random";
}
