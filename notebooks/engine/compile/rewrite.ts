import type { AnyNode, AssignmentExpression, BinaryExpression, UnaryExpression } from "acorn";
import MagicString from "magic-string";
import { type Operator, operatorOf } from "./operators.ts";
import type { ParsedCell } from "./parse-cell.ts";
import { plainText } from "./simple-target.ts";
import { childrenOf } from "./tree.ts";

export interface Rewritten {
  readonly text: MagicString;
  /** Operators called, by the names they are called by in the text. */
  readonly operators: ReadonlyMap<string, Operator>;
  /** A compound assignment that can't be rewritten, by its offset in the formula. */
  readonly refusedAt?: number;
}

/**
 * Makes each arithmetic or comparing operator a call, so that `a * b + c` is
 * `$plus($times(a, b), c)` and quantities can be reckoned with. Statements stay on their lines.
 */
export function rewriteOperators(formula: string, cell: ParsedCell): Rewritten {
  const rewriting = new Rewriting(formula, cell);
  rewriting.visit(cell.root);
  const { text, operators, refusedAt } = rewriting;
  return refusedAt === undefined ? { text, operators } : { text, operators, refusedAt };
}

/** Begins like no name in the formula. */
function prefixFor(formula: string): string {
  let prefix = "$";
  while (Object.values(operatorOf).some((name) => formula.includes(prefix + name))) prefix += "$";
  return formula.includes(`${prefix}negative`) ? `${prefix}$` : prefix;
}

class Rewriting {
  readonly text: MagicString;
  readonly operators = new Map<string, Operator>();
  refusedAt: number | undefined;
  readonly #formula: string;
  readonly #offset: number;
  readonly #prefix: string;

  constructor(formula: string, { offset }: ParsedCell) {
    this.text = new MagicString(formula);
    this.#formula = formula;
    this.#offset = offset;
    this.#prefix = prefixFor(formula);
  }

  /** Inner nodes first: openings of outer calls are then put before those of inner ones. */
  visit(node: AnyNode): void {
    for (const child of childrenOf(node)) this.visit(child);
    if (node.type === "BinaryExpression") this.#binary(node);
    else if (node.type === "UnaryExpression") this.#unary(node);
    else if (node.type === "AssignmentExpression") this.#assignment(node);
  }

  #call(operator: Operator): string {
    const name = this.#prefix + operator;
    this.operators.set(name, operator);
    return name;
  }

  #binary(node: BinaryExpression): void {
    const operator = operatorOf[node.operator];
    if (operator === undefined || isPlainNumber(node)) return;
    if (operator === "same" && (isPlainSide(node.left) || isPlainSide(node.right))) return;
    const not = node.operator.startsWith("!") ? "!" : "";
    this.#operatorToComma(node.left, node.right, node.operator);
    this.text.prependRight(node.start - this.#offset, `${not}${this.#call(operator)}(`);
    this.text.appendLeft(node.end - this.#offset, ")");
  }

  #operatorToComma(left: AnyNode, right: AnyNode, operator: string): void {
    const at = this.#find(operator, left, right);
    // A space before the operator would stand before the comma.
    this.text.overwrite(at, at + operator.length, ",");
  }

  /** Between its sides stand, besides the operator, only brackets, spaces and comments. */
  #find(operator: string, left: AnyNode, right: AnyNode): number {
    const from = left.end - this.#offset;
    const to = right.start - this.#offset;
    return from + withoutComments(this.#formula.slice(from, to)).indexOf(operator);
  }

  #unary(node: UnaryExpression): void {
    const { start } = node;
    const at = start - this.#offset;
    if (node.operator === "-" && !isPlainNumber(node.argument)) {
      this.text.overwrite(at, at + 1, `${this.#call("negative")}(`);
      this.text.appendLeft(node.end - this.#offset, ")");
    } else if (node.operator === "+" && !isPlainNumber(node.argument)) {
      // Left as it is, text or a quantity with a sign before it would become a bare number.
      this.text.overwrite(at, at + 1, `${this.#call("times")}(`);
      this.text.appendLeft(node.end - this.#offset, ", 1)");
    }
  }

  #assignment(node: AssignmentExpression): void {
    const sign = node.operator.slice(0, -1);
    const operator = operatorOf[sign];
    if (node.operator === "=" || operator === undefined || operator === "same") return;
    const target = plainText(node.left, (inner) => this.#call(inner));
    if (target === undefined) {
      this.refusedAt ??= node.start - this.#offset;
      return;
    }
    const at = this.#find(node.operator, node.left, node.right);
    this.text.overwrite(at, at + node.operator.length, `= ${this.#call(operator)}(${target},`);
    this.text.appendLeft(node.end - this.#offset, ")");
  }
}

/** Comments blanked out, so that an operator is not found in one. */
function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, (comment) => " ".repeat(comment.length));
}

/** Numbers written out, and sums of them: nothing a quantity could be in. */
function isPlainNumber(node: AnyNode): boolean {
  if (node.type === "Literal")
    return typeof node.value === "number" || typeof node.value === "bigint";
  if (node.type === "UnaryExpression")
    return /^[-+]$/.test(node.operator) && isPlainNumber(node.argument);
  return (
    node.type === "BinaryExpression" &&
    ["plus", "minus", "times", "over", "remainder", "power"].includes(
      operatorOf[node.operator] ?? "",
    ) &&
    isPlainNumber(node.left) &&
    isPlainNumber(node.right)
  );
}

/** No quantity equals these; left as they are, they also tell the type checker what a value is. */
function isPlainSide(node: AnyNode): boolean {
  if (node.type === "Literal") return typeof node.value !== "number";
  if (node.type === "UnaryExpression")
    return node.operator === "typeof" || node.operator === "void";
  return (
    node.type === "TemplateLiteral" || (node.type === "Identifier" && node.name === "undefined")
  );
}
