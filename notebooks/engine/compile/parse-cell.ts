import { type AnyNode, type Options, type Program, parse } from "acorn";
import { isFunction, stripParentheses, walk } from "./tree.ts";

/** A formula read: offsets in the tree are those in the formula plus `offset`. */
export interface ParsedCell {
  readonly program: Program;
  /** The function around the formula. */
  readonly root: AnyNode;
  readonly offset: number;
  readonly expression: boolean;
  readonly async: boolean;
  readonly generator: boolean;
}

/** Why a formula can't be read, with the offset in its text. */
export interface Unreadable {
  readonly at: number;
  readonly words: string;
}

const misplaced = "does not belong there";

const options: Options = {
  ecmaVersion: 2024,
  sourceType: "script",
  ranges: true,
  preserveParens: true,
};

interface Wrapper {
  readonly before: string;
  readonly after: string;
  readonly expression: boolean;
  readonly generator: boolean;
}

/** Tried in this order: so `{ x: a }` is a record, not a block with a label. */
const wrappers: readonly Wrapper[] = [
  { before: '"use strict";(async()=>(', after: "\n))", expression: true, generator: false },
  { before: '"use strict";(async()=>{', after: "\n})", expression: false, generator: false },
  { before: '"use strict";(async function*(){', after: "\n})", expression: false, generator: true },
];

export function parseCell(formula: string): ParsedCell | Unreadable {
  let furthest: Unreadable | undefined;
  for (const wrapper of wrappers) {
    const result = attempt(formula, wrapper);
    if ("program" in result) return result;
    if (furthest === undefined || isBetter(result, furthest)) furthest = result;
  }
  return furthest ?? { at: 0, words: "it is empty" };
}

/** The reading that got furthest is most likely what was meant; of two, the one that says more. */
function isBetter(one: Unreadable, other: Unreadable): boolean {
  if (one.at !== other.at) return one.at > other.at;
  return other.words.endsWith(misplaced) && !one.words.endsWith(misplaced);
}

function attempt(formula: string, wrapper: Wrapper): ParsedCell | Unreadable {
  const { before, after, expression, generator } = wrapper;
  let program: Program;
  try {
    program = parse(before + formula + after, options);
  } catch (error) {
    return unreadable(error, formula, before.length);
  }
  const root = wrapped(program, before.length - 1, before.length + formula.length + 2, wrapper);
  if (root === undefined) {
    return { at: 0, words: "it closes a bracket that it does not open" };
  }
  stripParentheses(root);
  const lacks = expression ? undefined : lacksResult(root, generator);
  if (lacks) return { at: formula.length, words: lacks };
  const async = contains(
    root,
    (node) => node.type === "AwaitExpression" || (node.type === "ForOfStatement" && node.await),
  );
  return { program, root, offset: before.length, expression, async, generator };
}

/**
 * The function around the formula, if its bracket is closed by the one we wrote and not by one in
 * the formula: `1) + (b` must not pass.
 */
function wrapped(
  program: Program,
  opens: number,
  closes: number,
  { expression }: Wrapper,
): AnyNode | undefined {
  const [, statement, ...more] = program.body;
  if (more.length > 0 || statement?.type !== "ExpressionStatement") return undefined;
  const outer = statement.expression;
  const inner = outer.type === "ParenthesizedExpression" ? outer.expression : outer;
  if (inner.type !== "FunctionExpression" && inner.type !== "ArrowFunctionExpression")
    return undefined;
  // Else the brackets at both ends could be two pairs: `(1) + (b)`.
  if (inner.body.type !== (expression ? "ParenthesizedExpression" : "BlockStatement"))
    return undefined;
  const { start, end } = inner.body;
  return start === opens && end === closes ? inner : undefined;
}

function lacksResult(root: AnyNode, generator: boolean): string | undefined {
  const gives = generator ? "YieldExpression" : "ReturnStatement";
  if (contains(root, (node) => node.type === gives)) return undefined;
  return `it has statements but no \`${generator ? "yield" : "return"}\`, so it gives no value`;
}

/** Whether the formula itself, not a function inside it, has such a node. */
function contains(root: AnyNode, test: (node: AnyNode) => boolean): boolean {
  let found = false;
  walk(root, (node) => {
    if (found || (node !== root && isFunction(node))) return false;
    if (test(node)) found = true;
    return undefined;
  });
  return found;
}

function unreadable(error: unknown, formula: string, offset: number): Unreadable {
  if (tooDeep(error)) return { at: 0, words: tooDeepWords };
  if (!(error instanceof SyntaxError)) throw error;
  const position = "pos" in error && typeof error.pos === "number" ? error.pos : offset;
  const at = Math.min(Math.max(position - offset, 0), formula.length);
  if (formula.slice(at).trim() === "")
    return { at: formula.trimEnd().length, words: "it ends too soon" };
  const words = error.message.replace(/ \(\d+:\d+\)$/, "");
  const [sign = ""] = /^([\p{L}\p{N}_$]+|.)/u.exec(formula.slice(at)) ?? [];
  return {
    at,
    words: /^Unexpected token$/.test(words) ? `${sign} ${misplaced}` : lowerFirst(words),
  };
}

export const tooDeepWords = "it is nested too deeply";

/** Whether an error says that a formula has more brackets in brackets than can be followed. */
export function tooDeep(error: unknown): boolean {
  if (error instanceof RangeError) return true;
  return error instanceof SyntaxError && error.message.startsWith("Not enough stack");
}

function lowerFirst(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}
