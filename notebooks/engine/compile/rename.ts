import { withFormula, wrongName } from "../document/index.ts";
import type { Block, Notebook, ProseBlock } from "../types/index.ts";
import { type FreePlace, freeNames } from "./free-names.ts";
import { parseCell } from "./parse-cell.ts";

export interface Renaming {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

/** The new texts of all documents that change, or what is in the way. */
export type Renamed =
  | { readonly ok: true; readonly texts: ReadonlyMap<string, string> }
  | { readonly ok: false; readonly why: string };

/**
 * Gives a cell or table another name: where it is defined, in the formulas and sentences of its
 * document, and in every open document that uses it. Refused where the new name is no name, is taken,
 * or would mean something else in one of the formulas.
 */
export function renameCell(
  documents: ReadonlyMap<string, Notebook>,
  { file, from, to }: Renaming,
): Renamed {
  const wrong = wrongName(to);
  if (wrong !== undefined) return { ok: false, why: `It can't be called so: ${wrong}.` };
  const texts = new Map<string, string>();
  for (const one of concerned(documents, file, from)) {
    const notebook = documents.get(one);
    if (!notebook) continue;
    const why = inTheWay(notebook, from, to);
    if (why !== undefined) return { ok: false, why };
    texts.set(one, notebook.blocks.map((block) => renamed(block, notebook, { from, to })).join(""));
  }
  return { ok: true, texts };
}

/** The document of the cell, and those that use the cell from it or from one of these. */
function concerned(
  documents: ReadonlyMap<string, Notebook>,
  file: string,
  name: string,
): ReadonlySet<string> {
  const found = new Set([file]);
  for (const one of found)
    for (const { file: other, blocks } of documents.values())
      if (blocks.some((block) => uses(block, one, name))) found.add(other);
  return found;
}

function uses(block: Block, file: string, name: string): boolean {
  return (
    block.kind === "uses" && block.file === file && block.names.some((used) => used.name === name)
  );
}

function inTheWay({ file, blocks }: Notebook, from: string, to: string): string | undefined {
  for (const block of blocks) {
    const isTaken =
      block.kind === "uses"
        ? block.names.some(({ name }) => name === to)
        : block.kind !== "prose" && block.name === to;
    if (isTaken) return `${to} is the name of another cell in ${file}: choose one that is free.`;
  }
  for (const block of blocks) {
    if (block.kind !== "cell") continue;
    const parsed = parseCell(block.formula);
    if (!("program" in parsed)) continue;
    const names = freeNames(parsed);
    if (names.some(({ name }) => name === to))
      return `The formula of ${block.name} names ${to} already, and would mean this cell then: choose another name.`;
    const places = names.find(({ name }) => name === from)?.places ?? [];
    if (places.length > 0 && !staysFree(block.formula, places, { from, to }))
      return `The formula of ${block.name} has something of its own called ${to}: choose another name.`;
  }
  return undefined;
}

interface Names {
  readonly from: string;
  readonly to: string;
}

/** Whether the new name, put in, still means a cell, and nothing the formula declares itself. */
function staysFree(formula: string, places: readonly FreePlace[], names: Names): boolean {
  const parsed = parseCell(replaced(formula, places, names));
  if (!("program" in parsed)) return false;
  const now = freeNames(parsed).find(({ name }) => name === names.to);
  return now?.places.length === places.length;
}

function renamed(block: Block, notebook: Notebook, names: Names): string {
  const { from, to } = names;
  if (block.kind === "prose") return inSentences(block, names);
  if (block.kind === "uses") {
    const isMeant = block.names.some(({ name }) => name === from);
    return isMeant ? inList(block.text, names) : block.text;
  }
  let { text } = block;
  if (block.kind === "cell") {
    const formula = inFormula(block.formula, names);
    if (formula !== block.formula)
      text = withFormula({ ...notebook, blocks: [block] }, block.name, formula);
  }
  return block.name === from ? text.replace(nameIn(from), `$1${to}`) : text;
}

/** The name after the words that open a cell or table. */
function nameIn(name: string): RegExp {
  return new RegExp(`^([^\\n\\r]*?\\s(?:cell|table)\\s+)${escaped(name)}(?=\\s|$)`, "u");
}

function inFormula(formula: string, names: Names): string {
  const parsed = parseCell(formula);
  // A formula that can't be read yet names it all the same.
  if (!("program" in parsed)) return formula.replace(word(names.from, "[.]"), names.to);
  const { places = [] } = freeNames(parsed).find(({ name }) => name === names.from) ?? {};
  return replaced(formula, places, names);
}

function replaced(formula: string, places: readonly FreePlace[], { from, to }: Names): string {
  let text = formula;
  for (const { start, shorthand } of [...places].reverse()) {
    const now = shorthand ? `${from}: ${to}` : to;
    text = text.slice(0, start) + now + text.slice(start + from.length);
  }
  return text;
}

/** `fig NAME` in the sentences; in listings and other code it is left alone. */
function inSentences({ text, line, figures }: ProseBlock, { from, to }: Names): string {
  const lines = new Set(figures.filter(({ name }) => name === from).map((one) => one.line));
  if (lines.size === 0) return text;
  const span = new RegExp(`(\`+\\s*fig\\s+)${escaped(from)}(?=\\s*\`)`, "gu");
  return text.replace(span, (whole, before: string, at: number) => {
    const own = line + text.slice(0, at).split("\n").length - 1;
    return lines.has(own) ? `${before}${to}` : whole;
  });
}

/** A name in the list of what is used; the line with the file's name stays. */
function inList(text: string, { from, to }: Names): string {
  const at = text.indexOf("\n") + 1;
  return text.slice(0, at) + text.slice(at).replace(word(from, ""), to);
}

function word(name: string, notAfter: string): RegExp {
  const part = "[\\p{ID_Continue}$\\u200c\\u200d]";
  const before = notAfter === "" ? `(?<!${part})` : `(?<!${part}|${notAfter})`;
  return new RegExp(`${before}${escaped(name)}(?!${part})`, "gu");
}

function escaped(name: string): string {
  return name.replaceAll("$", "\\$");
}
