import type { AnyNode } from "acorn";
import MagicString from "magic-string";
import { operatorOf } from "./operators.ts";
import { parseCell } from "./parse-cell.ts";
import type { CompiledCell } from "./program.ts";
import { childrenOf } from "./tree.ts";

/** A formula longer than this is not read more easily with its values put in. */
const longest = 120;

/** A short formula of names, members, numbers and operators only. */
interface Sum {
  /** What stands for a value: `depth`, `bed.length`; by offset in the formula. */
  readonly paths: readonly {
    readonly path: string;
    readonly start: number;
    readonly end: number;
  }[];
  readonly signs: readonly {
    readonly sign: string;
    readonly start: number;
    readonly end: number;
  }[];
}

const signs: Readonly<Record<string, string>> = {
  "*": "×",
  "/": "÷",
  "-": "−",
  "<=": "≤",
  ">=": "≥",
  "===": "=",
  "==": "=",
  "!==": "≠",
  "!=": "≠",
};

const sums = new WeakMap<CompiledCell, Sum | "none">();

/**
 * The paths in a formula whose printed values make its sum readable (`depth`, `bed.length`), each
 * once; undefined where the formula is no short sum.
 */
export function sumPaths(cell: CompiledCell): readonly string[] | undefined {
  const sum = sumOf(cell);
  return sum === undefined ? undefined : [...new Set(sum.paths.map(({ path }) => path))];
}

/** The formula with its paths replaced by their printed values; one that is not printed stays. */
export function sumText(
  cell: CompiledCell,
  printed: ReadonlyMap<string, string>,
): string | undefined {
  const sum = sumOf(cell);
  if (sum === undefined) return undefined;
  const text = new MagicString(cell.formula);
  for (const { path, start, end } of sum.paths)
    text.overwrite(start, end, printed.get(path) ?? path);
  for (const { sign, start, end } of sum.signs) text.overwrite(start, end, sign);
  return text.toString().trim();
}

function sumOf(cell: CompiledCell): Sum | undefined {
  const known = sums.get(cell);
  if (known !== undefined) return known === "none" ? undefined : known;
  const sum = readSum(cell);
  sums.set(cell, sum ?? "none");
  return sum;
}

function readSum({
  formula,
  expression,
  async,
  namesUsed,
  problem,
}: CompiledCell): Sum | undefined {
  const text = formula.trim();
  if (problem || !expression || async || text.length > longest || /\n|\/\/|\/\*/.test(text))
    return undefined;
  if (namesUsed.some(({ kind }) => kind === "language")) return undefined;
  const parsed = parseCell(formula);
  if (!("program" in parsed) || !("body" in parsed.root)) return undefined;
  const { body } = parsed.root;
  if (Array.isArray(body)) return undefined;
  const paths: Sum["paths"][number][] = [];
  const found: Sum["signs"][number][] = [];
  const at = (position: number): number => position - parsed.offset;
  const take = (node: AnyNode): boolean => {
    const path = pathOf(node);
    if (path !== undefined) {
      paths.push({ path, start: at(node.start), end: at(node.end) });
      return true;
    }
    if (node.type === "Literal") return typeof node.value === "number";
    if (node.type === "UnaryExpression" && node.operator === "-") {
      found.push({ sign: "−", start: at(node.start), end: at(node.start) + 1 });
      return take(node.argument);
    }
    if (node.type !== "BinaryExpression" || operatorOf[node.operator] === undefined) return false;
    const start = at(node.left.end);
    const end = at(node.right.start);
    const sign = signs[node.operator] ?? node.operator;
    const operatorAt = start + formula.slice(start, end).indexOf(node.operator);
    found.push({ sign, start: operatorAt, end: operatorAt + node.operator.length });
    return childrenOf(node).every(take);
  };
  return take(body) && found.length > 0 && paths.length > 0 ? { paths, signs: found } : undefined;
}

function pathOf(node: AnyNode): string | undefined {
  if (node.type === "Identifier") return node.name;
  if (node.type !== "MemberExpression" || node.computed || node.property.type !== "Identifier")
    return undefined;
  if (node.object.type === "Super" || node.optional) return undefined;
  const base = pathOf(node.object);
  return base === undefined ? undefined : `${base}.${node.property.name}`;
}
