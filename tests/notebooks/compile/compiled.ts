import {
  type CompiledCell,
  compileNotebook,
  type Program,
} from "../../../notebooks/engine/compile/index.ts";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";

export const library: ReadonlySet<string> = new Set(["inch", "foot", "fill", "bedVolume", "sumOf"]);

/** A document with one cell for each name. Fences are at lines 1, 4 + …: three lines and one empty. */
export function cellsText(cells: Readonly<Record<string, string>>): string {
  return Object.entries(cells)
    .map(([name, formula]) => `\`\`\`js cell ${name}\n${formula}\n\`\`\`\n`)
    .join("\n");
}

export function compileTexts(texts: Readonly<Record<string, string>>, main = "n.md"): Program {
  return compileNotebook({ main, documents: documentsOf(texts), names: library });
}

/** A lone formula among cells a, b, c, d. */
export function compileFormula(formula: string): CompiledCell {
  const text = cellsText({ a: "1", b: "2", c: "3", d: "4", it: formula });
  return cellNamed(compileTexts({ "n.md": text }), "it");
}

/** One formula alone, which is handed the names it uses. */
export function compileAlone(formula: string, names: ReadonlySet<string>): CompiledCell {
  const documents = documentsOf({ "n.md": cellsText({ it: formula }) });
  return cellNamed(compileNotebook({ main: "n.md", documents, names }), "it");
}

export function cellNamed(program: Program, name: string): CompiledCell {
  const cell = program.cells.find((one) => one.name === name);
  if (cell === undefined) throw new Error(`no cell ${name}`);
  return cell;
}

/** The rewritten formula without what is put around it. */
export function rewritten({ body, expression }: CompiledCell): string {
  return expression
    ? body.slice('"use strict";return ('.length, -2)
    : body.slice('"use strict";'.length, -1);
}

type Step = (a: never, b: never) => unknown;

/** JavaScript's own operators. */
export const plain: Readonly<Record<string, Step>> = {
  plus: (a: number, b: number) => a + b,
  minus: (a: number, b: number) => a - b,
  times: (a: number, b: number) => a * b,
  over: (a: number, b: number) => a / b,
  remainder: (a: number, b: number) => a % b,
  power: (a: number, b: number) => a ** b,
  negative: (a: number) => -a,
  less: (a: number, b: number) => a < b,
  atMost: (a: number, b: number) => a <= b,
  more: (a: number, b: number) => a > b,
  atLeast: (a: number, b: number) => a >= b,
  same: (a: unknown, b: unknown) => a === b,
};

/** Runs a compiled cell with the values of the names it takes and the given operators. */
export function run(
  cell: CompiledCell,
  values: Readonly<Record<string, unknown>> = {},
  operators: Readonly<Record<string, Step>> = plain,
): unknown {
  if (cell.problem) throw new Error(cell.problem.message);
  const given = cell.inputs.map(({ name, from }) =>
    "operator" in from ? operators[from.operator] : values[name],
  );
  return new Function(...cell.inputs.map(({ name }) => name), cell.body)(...given);
}
