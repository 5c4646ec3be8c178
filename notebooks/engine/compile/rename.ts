import { linesOf, readNotebook, wrongName } from "../document/index.ts";
import { withFormula } from "../document/seldom.ts";
import type { Block, CellId, Notebook, ProseBlock } from "../types/index.ts";
import { fileCycles } from "./file-cycles.ts";
import { type FreePlace, freeNames } from "./free-names.ts";
import { parseCell } from "./parse-cell.ts";
import { type Placed, type Scope, scopesOf } from "./scope.ts";

export interface Renaming {
  readonly file: string;
  /** The name it has; of cells that share one, as in its id: `side/2` is the second. */
  readonly from: string;
  readonly to: string;
}

/** The new texts of all documents that change, or what is in the way. */
export type Renamed =
  | {
      readonly ok: true;
      readonly texts: ReadonlyMap<string, string>;
      /** Cells that have another id now: what is entered in them goes with them. */
      readonly renamed: ReadonlyMap<CellId, CellId>;
    }
  | { readonly ok: false; readonly why: string };

/**
 * Gives a cell or table another name: where it is defined, in the formulas and sentences that mean
 * it, and in every open document that uses it. Another cell of the old name, and what a formula
 * declares itself, stay. Refused where the new name is no name, is taken, or would mean something
 * else in one of the formulas.
 */
export function renameCell(
  documents: ReadonlyMap<string, Notebook>,
  { file, from, to }: Renaming,
): Renamed {
  const wrong = wrongName(to);
  if (wrong !== undefined) return { ok: false, why: `It can't be called so: ${wrong}.` };
  const scopes = scopesOf(documents, fileCycles(documents));
  const cell = scopes.get(file)?.placed.find(({ id }) => id === `${file}#${from}`);
  if (cell === undefined) return { ok: false, why: `${file} has no cell ${from}.` };
  if (!nameIn(cell.block.name).test(cell.block.text)) {
    const why = `Line ${cell.block.line} of ${file} does not write the name ${from} as it reads: write it plainly there first.`;
    return { ok: false, why };
  }
  const task = { file, cell, scopes, from: cell.block.name, to };
  const texts = new Map<string, string>();
  for (const scope of scopes.values()) {
    const places = placesIn(scope, task);
    if (places === undefined) continue;
    const why = inTheWay(scope.notebook, places, task);
    if (why !== undefined) return { ok: false, why };
    const { blocks } = scope.notebook;
    const text = blocks.map((block) => renamed(block, scope.notebook, { places, ...task }));
    texts.set(scope.notebook.file, text.join(""));
  }
  return { ok: true, texts, renamed: otherIds(documents, texts.get(file) ?? "", task) };
}

interface Task extends Names {
  readonly file: string;
  readonly cell: Placed;
  readonly scopes: ReadonlyMap<string, Scope>;
}

/** What of a document changes. */
interface Places {
  /** Its formulas and sentences mean the cell by its name. */
  readonly means: boolean;
  /** Its blocks that list the cell. */
  readonly lists: ReadonlySet<Block>;
}

/** Undefined where the document has nothing to do with the cell. */
function placesIn(scope: Scope, task: Task): Places | undefined {
  const { notebook } = scope;
  const lists = new Set<Block>(
    notebook.blocks.filter(
      (block) =>
        block.kind === "uses" &&
        block.names.some(({ name }) => name === task.from) &&
        means(block.file, task),
    ),
  );
  const own = notebook.file === task.file;
  return own || lists.size > 0 ? { means: means(notebook.file, task), lists } : undefined;
}

/** Whether the old name means the cell in a document, be it through others. */
function means(file: string, task: Task, seen: ReadonlySet<string> = new Set()): boolean {
  const { scopes, cell, from } = task;
  const own = scopes.get(file)?.own.get(from);
  if (file === task.file || own !== undefined) return own === cell.id;
  const used = scopes.get(file)?.used.get(from)?.file;
  return used !== undefined && !seen.has(file) && means(used, task, new Set([...seen, file]));
}

/** The ids of the cells of a document that are others now: of twins, the later count anew. */
function otherIds(
  documents: ReadonlyMap<string, Notebook>,
  text: string,
  { file, scopes }: Task,
): ReadonlyMap<CellId, CellId> {
  const changed = new Map([...documents, [file, readNotebook(text, file)]]);
  const after = scopesOf(changed, () => undefined).get(file)?.placed ?? [];
  const before = scopes.get(file)?.placed ?? [];
  return new Map(
    before.flatMap(({ id }, at) => {
      const now = after[at]?.id;
      return now === undefined || now === id ? [] : [[id, now] as const];
    }),
  );
}

function inTheWay(
  { file, blocks }: Notebook,
  { means: isMeant }: Places,
  { from, to }: Names,
): string | undefined {
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
    const places = isMeant ? (names.find(({ name }) => name === from)?.places ?? []) : [];
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

function renamed(block: Block, notebook: Notebook, task: Task & { places: Places }): string {
  const { from, to, places, cell } = task;
  if (block.kind === "prose") return places.means ? inSentences(block, task) : block.text;
  if (block.kind === "uses") return places.lists.has(block) ? inList(block.text, task) : block.text;
  let { text } = block;
  if (block.kind === "cell" && places.means) {
    const formula = inFormula(block.formula, task);
    if (formula !== block.formula)
      text = withFormula({ ...notebook, blocks: [block] }, block.name, formula);
  }
  return block === cell.block
    ? text.replace(nameIn(from), `$1${to.replaceAll("$", "$$$$")}`)
    : text;
}

/** The name after the words that open a cell or table. */
function nameIn(name: string): RegExp {
  return new RegExp(`^([^\\n\\r]*?\\s(?:cell|table)\\s+)${escaped(name)}(?=\\s|$)`, "u");
}

function inFormula(formula: string, names: Names): string {
  const parsed = parseCell(formula);
  // A formula that can't be read yet names it all the same.
  if (!("program" in parsed)) return formula.replace(word(names.from, "[.]"), () => names.to);
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
function inSentences({ text, figures }: ProseBlock, { from, to }: Names): string {
  const spans = new RegExp(`(?<=\`\\s*fig\\s+)${escaped(from)}(?=\\s*\`)`, "gu");
  let changed = text;
  let names = figures.map(({ name }) => name);
  // From the last, so that the places before it stay; what changes no figure is only shown.
  for (const { index } of [...text.matchAll(spans)].reverse()) {
    const attempt = changed.slice(0, index) + to + changed.slice(index + from.length);
    const now = readNotebook(attempt, "").blocks.flatMap((one) =>
      one.kind === "prose" ? one.figures.map(({ name }) => name) : [],
    );
    const other = names.findIndex((name, at) => name !== now[at]);
    const isOne = now[other] === to && now.length === names.length;
    if (other < 0 || !isOne || !names.every((name, at) => at === other || name === now[at]))
      continue;
    changed = attempt;
    names = now;
  }
  return changed;
}

/** A name in the list of what is used; the line with the file's name stays. */
function inList(text: string, { from, to }: Names): string {
  const [first] = linesOf(text);
  const at = first === undefined ? 0 : first.text.length + first.end.length;
  return text.slice(0, at) + text.slice(at).replace(word(from, ""), () => to);
}

function word(name: string, notAfter: string): RegExp {
  const part = "[\\p{ID_Continue}$\\u200c\\u200d]";
  const before = notAfter === "" ? `(?<!${part})` : `(?<!${part}|${notAfter})`;
  return new RegExp(`${before}${escaped(name)}(?!${part})`, "gu");
}

function escaped(name: string): string {
  return name.replaceAll("$", "\\$");
}
