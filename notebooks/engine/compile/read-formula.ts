import type { AnyNode } from "acorn";
import type { DocumentProblemCode } from "../types/index.ts";
import { type FreeName, freeNames } from "./free-names.ts";
import { chanceRefused, importRefused } from "./language.ts";
import { type ParsedCell, parseCell, type Unreadable } from "./parse-cell.ts";
import type { CompiledCell, Input } from "./program.ts";
import { rewriteOperators } from "./rewrite.ts";
import { walk } from "./tree.ts";

/** What a formula is by itself, wherever it stands and whatever its names mean there. */
export type ReadFormula =
  | { readonly unreadable: Unreadable }
  | {
      readonly refused: {
        readonly code: DocumentProblemCode;
        readonly at: number;
        readonly words: string;
      };
    }
  | (Pick<CompiledCell, "body" | "expression" | "async" | "generator"> & {
      readonly free: readonly FreeName[];
      readonly operators: readonly Input[];
    });

export function readFormula(formula: string): ReadFormula {
  const parsed = parseCell(formula);
  if (!("program" in parsed)) return { unreadable: parsed };
  const refused = refusedIn(parsed);
  if (refused) return { refused: { code: "not-allowed", ...refused } };
  const free = freeNames(parsed);
  const rewritten = rewriteOperators(formula, parsed);
  if (rewritten.refusedAt !== undefined) {
    const words = `What is changed here is worked out by a call: keep it in a name first, then write \`a.b = a.b + c\`.`;
    return { refused: { code: "syntax", at: rewritten.refusedAt, words } };
  }
  const operators = [...rewritten.operators].map(([name, operator]) => ({
    name,
    from: { operator },
  }));
  const { expression, async, generator } = parsed;
  const body = bodyOf(rewritten.text.toString(), parsed);
  return { free, operators, body, expression, async, generator };
}

/**
 * Reads formulas, each text once: after an edit only what was edited is parsed again. What two
 * compilings in a row had no use for is forgotten.
 */
export class FormulaReader {
  #before = new Map<string, ReadFormula>();
  #now = new Map<string, ReadFormula>();

  /** A new compiling begins. */
  begin(): void {
    this.#before = this.#now;
    this.#now = new Map();
  }

  read(formula: string): ReadFormula {
    const known = this.#now.get(formula) ?? this.#before.get(formula) ?? readFormula(formula);
    this.#now.set(formula, known);
    return known;
  }
}

/** The formula's first line is the body's first, so that lines in a thrown error can be placed. */
function bodyOf(text: string, { expression }: ParsedCell): string {
  return expression ? `"use strict";return (${text}\n)` : `"use strict";${text}\n`;
}

function refusedIn({ root, offset }: ParsedCell): { at: number; words: string } | undefined {
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
