/** A call that the caret stands in. */
export interface CallPlace {
  /** The function's name, with what stands before it: `published.species`. */
  readonly name: string;
  /** Which argument, from 0. */
  readonly argument: number;
}

/** Where in a formula the caret stands, as far as it matters for what may be written there. */
export type WritingPlace =
  /** In a text, a comment or a number: nothing is offered. */
  | { readonly kind: "none"; readonly call?: CallPlace }
  /** A name begins, or could. */
  | { readonly kind: "name"; readonly from: number; readonly call?: CallPlace }
  /** After a dot: `path` is what stands before it, or `name()` where that is a call. */
  | {
      readonly kind: "field";
      readonly from: number;
      readonly path: readonly string[];
      readonly call?: CallPlace;
    }
  /** The name of an option, in the braces that are an argument of `call`; `given` are there already. */
  | {
      readonly kind: "option";
      readonly from: number;
      readonly call: CallPlace;
      readonly given: readonly string[];
    };

interface Open {
  readonly mark: string;
  readonly at: number;
  /** What the bracket follows: the name called, or else the sign before it. */
  readonly after: string;
  commas: number;
  lastComma: number;
}

/**
 * Reads a formula up to the caret. It looks at brackets, texts and names only, because a formula that
 * somebody is writing is seldom whole.
 */
export function writingPlace(text: string, caret: number): WritingPlace {
  const { opens, isText } = readBrackets(text.slice(0, caret));
  const call = callOf(opens);
  const called = call ? { call } : {};
  if (isText) return { kind: "none", ...called };
  const [word = ""] = /[\p{L}_$][\p{L}\p{N}_$]*$/u.exec(text.slice(0, caret)) ?? [];
  const from = caret - word.length;
  const before = text.slice(0, from);
  // A letter after a figure belongs to it, as in `2e`.
  if (/(^|[^\p{L}\p{N}_$])\d[\d.]*$/u.test(before)) return { kind: "none", ...called };
  const chain = /([\p{L}_$][\p{L}\p{N}_$]*(?:\s*\??\.\s*[\p{L}_$][\p{L}\p{N}_$]*)*)\s*\??\.\s*$/u;
  const found = /\.\.\.\s*$/.test(before) ? null : chain.exec(before);
  if (found) {
    const path = (found[1] ?? "").split(/\s*\??\.\s*/);
    return { kind: "field", from, path, ...called };
  }
  const dot = /[^.]\s*\??\.\s*$/.exec(before);
  if (dot && !/\.\.\.\s*$/.test(before)) {
    const { closed } = readBrackets(before.slice(0, dot.index + 1));
    const given = closed?.mark === "(" && isName(closed.after);
    if (given) return { kind: "field", from, path: [`${closed.after}()`], ...called };
    return { kind: "none", ...called };
  }
  const options = optionsAt(opens, text, from);
  if (options && call) return { kind: "option", from, call, given: options };
  return { kind: "name", from, ...called };
}

/** The innermost call; braces of its options and lists stand in it, a function's body does not. */
function callOf(opens: readonly Open[]): CallPlace | undefined {
  for (const { mark, after, commas } of [...opens].reverse()) {
    if (mark === "(" && isName(after)) return { name: after, argument: commas };
    const isInside = mark === "[" || mark === "(" || (mark === "{" && /^[(,[]$/.test(after));
    if (!isInside) return undefined;
  }
  return undefined;
}

/** The options given already, where a name of one may stand at `from`; else undefined. */
function optionsAt(opens: readonly Open[], text: string, from: number): string[] | undefined {
  const [braces, around] = [opens.at(-1), opens.at(-2)];
  if (braces?.mark !== "{" || around?.mark !== "(" || !isName(around.after)) return undefined;
  if (!/^[(,]$/.test(braces.after)) return undefined;
  const begun = text.slice(Math.max(braces.at, braces.lastComma) + 1, from);
  if (begun.trim() !== "") return undefined;
  return namesGiven(text, braces.at);
}

/** The names before the colons of the braces that open at `at`, and those that stand alone. */
function namesGiven(text: string, at: number): string[] {
  const given: string[] = [];
  let depth = 0;
  const pieces = text
    .slice(at)
    .matchAll(/"[^"\n]*"|'[^'\n]*'|[([{}\])]|[\p{L}_$][\p{L}\p{N}_$]*\s*:?/gu);
  for (const [piece] of pieces) {
    if (/^[([{]$/.test(piece)) depth += 1;
    else if (/^[)\]}]$/.test(piece)) depth -= 1;
    else if (depth === 1 && piece.endsWith(":")) given.push(piece.slice(0, -1).trim());
    if (depth === 0) break;
  }
  return given;
}

const isName = (text: string) => /^[\p{L}_$]/u.test(text) && !notCalled.has(text);

/** Words that stand before a bracket and call nothing. */
const notCalled = new Set([
  "if",
  "for",
  "while",
  "switch",
  "catch",
  "return",
  "function",
  "of",
  "in",
]);

interface Brackets {
  readonly opens: readonly Open[];
  /** The end stands inside a text or a comment. */
  readonly isText: boolean;
  /** What the very last sign closes. */
  readonly closed: Open | undefined;
}

const pieces =
  /\/\/.*|\/\*[\s\S]*?(?:\*\/|$)|"(?:\\.|[^"\\\n])*(?:"|$)|'(?:\\.|[^'\\\n])*(?:'|$)|=>|[\p{L}_$][\p{L}\p{N}_$]*(?:\s*\??\.\s*[\p{L}_$][\p{L}\p{N}_$]*)*|[\s\S]/gu;

function readBrackets(text: string): Brackets {
  const opens: Open[] = [];
  let last = "";
  let isText = false;
  let closed: Open | undefined;
  for (const { 0: piece, index } of text.matchAll(pieces)) {
    const inTemplate = opens.at(-1)?.mark === "`";
    if (inTemplate && piece !== "`" && !(piece === "{" && text[index - 1] === "$")) continue;
    isText = isOpenText(piece, index + piece.length === text.length);
    if (piece === "`") {
      if (inTemplate) opens.pop();
      else opens.push({ mark: "`", at: index, after: last, commas: 0, lastComma: -1 });
    } else if (/^[([{]$/.test(piece))
      opens.push({ mark: piece, at: index, after: last, commas: 0, lastComma: -1 });
    else if (/^[)\]}]$/.test(piece)) closed = opens.pop();
    const open = opens.at(-1);
    if (piece === "," && open) {
      open.commas += 1;
      open.lastComma = index;
    }
    if (piece.trim() !== "" && !/^\/[/*]/.test(piece)) last = piece.replace(/\s+/g, "");
    if (!/^[)\]}]$/.test(piece)) closed = undefined;
  }
  return { opens, isText: isText || opens.at(-1)?.mark === "`", closed };
}

function isOpenText(piece: string, isLast: boolean): boolean {
  if (!isLast) return false;
  if (piece.startsWith("//")) return true;
  if (piece.startsWith("/*")) return !piece.endsWith("*/") || piece === "/*/";
  const [quote = ""] = piece;
  if (quote !== '"' && quote !== "'") return false;
  return piece.length === 1 || !piece.endsWith(quote) || /[^\\](\\\\)*\\.$/.test(piece);
}
