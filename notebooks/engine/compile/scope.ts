import { wrongName } from "../document/index.ts";
import type {
  Block,
  CellBlock,
  CellId,
  DocumentProblem,
  Notebook,
  TableBlock,
  UsesBlock,
} from "../types/index.ts";
import type { FileCycles } from "./file-cycles.ts";

export type Made = CellBlock | TableBlock;

/** A cell of a document with the id it is known by. */
export interface Placed {
  readonly id: CellId;
  readonly block: Made;
  /** All cells of its name in the document: more than one is a mistake. */
  readonly twins: readonly Made[];
}

/** What a `uses` block brings: a cell, or why there is none. */
export interface Brought {
  readonly file: string;
  readonly line: number;
  readonly cell?: CellId;
  readonly problem?: DocumentProblem;
}

/** The names of one document. */
export interface Scope {
  readonly notebook: Notebook;
  readonly placed: readonly Placed[];
  readonly own: ReadonlyMap<string, CellId>;
  readonly used: ReadonlyMap<string, Brought>;
  /** Cells of used documents that no `uses` block lists. */
  readonly unlisted: ReadonlyMap<string, { readonly file: string; readonly line: number }>;
  readonly problems: readonly DocumentProblem[];
}

function isMade(block: Block): block is Made {
  return block.kind === "cell" || block.kind === "table";
}

/** Each cell's id: `file#name`, with a number where the name is taken or is none. */
function placeCells(notebook: Notebook): readonly Placed[] {
  const blocks = notebook.blocks.filter(isMade);
  const byName = new Map<string, Made[]>();
  for (const block of blocks) byName.set(block.name, [...(byName.get(block.name) ?? []), block]);
  const count = new Map<string, number>();
  return blocks.map((block) => {
    const number = (count.get(block.name) ?? 0) + 1;
    count.set(block.name, number);
    const id: CellId = `${notebook.file}#${block.name}${number > 1 ? `/${number}` : ""}`;
    const twins = wrongName(block.name) === undefined ? (byName.get(block.name) ?? []) : [block];
    return { id, block, twins };
  });
}

/** The names of every document. `circular` finds files that use each other. */
export function scopesOf(
  documents: ReadonlyMap<string, Notebook>,
  circular: FileCycles,
): ReadonlyMap<string, Scope> {
  const own = new Map<string, ReadonlyMap<string, CellId>>();
  const placed = new Map<string, readonly Placed[]>();
  for (const [file, notebook] of documents) {
    const cells = placeCells(notebook);
    placed.set(file, cells);
    const named = cells.filter(({ block }) => wrongName(block.name) === undefined);
    own.set(file, new Map(named.toReversed().map(({ id, block }) => [block.name, id])));
  }
  const scopes = new Map<string, Scope>();
  for (const [file, notebook] of documents) {
    const ownCells = own.get(file) ?? new Map<string, CellId>();
    scopes.set(file, {
      notebook,
      placed: placed.get(file) ?? [],
      own: ownCells,
      ...usedBy(notebook, { documents, own, circular }),
    });
  }
  return scopes;
}

interface World {
  readonly documents: ReadonlyMap<string, Notebook>;
  readonly own: ReadonlyMap<string, ReadonlyMap<string, CellId>>;
  readonly circular: FileCycles;
}

function usedBy(notebook: Notebook, world: World): Pick<Scope, "used" | "unlisted" | "problems"> {
  const used = new Map<string, Brought>();
  const unlisted = new Map<string, { file: string; line: number }>();
  const problems: DocumentProblem[] = [];
  for (const block of notebook.blocks) {
    if (block.kind !== "uses") continue;
    const broken = brokenUse(notebook, block, world);
    if (broken) problems.push(broken);
    for (const { name, line } of block.names) {
      const first = used.get(name);
      if (first && first.file !== block.file) {
        problems.push(listedTwice(notebook.file, name, line, first, block.file));
        continue;
      }
      const cell = world.own.get(block.file)?.get(name);
      const problem =
        broken ?? (cell === undefined ? notThere(notebook, block, name, line, world) : undefined);
      if (problem && problem !== broken) problems.push(problem);
      used.set(name, {
        file: block.file,
        line,
        ...(problem ? { problem } : cell === undefined ? {} : { cell }),
      });
    }
    for (const name of world.own.get(block.file)?.keys() ?? []) {
      if (!unlisted.has(name)) unlisted.set(name, { file: block.file, line: block.line });
    }
  }
  return { used, unlisted, problems };
}

function brokenUse(
  notebook: Notebook,
  block: UsesBlock,
  world: World,
): DocumentProblem | undefined {
  const { file, line } = { file: notebook.file, line: block.line };
  const way = world.circular(notebook.file, block.file);
  if (way !== undefined) {
    const message = `These notebooks use each other in a circle: ${way.join(" uses ")}. Take one of these \`uses\` blocks out.`;
    return { code: "file-cycle", file, line, names: way, message };
  }
  if (world.documents.has(block.file)) return undefined;
  const message = `There is no notebook "${block.file}" beside ${notebook.file}. Write another name in this block, or put the file there.`;
  return { code: "file-missing", file, line, names: [block.file], message };
}

function listedTwice(
  file: string,
  name: string,
  line: number,
  first: Brought,
  second: string,
): DocumentProblem {
  const message = `${name} is brought in twice: from ${first.file} at line ${first.line} and from ${second} at line ${line}. The first is used; take one out.`;
  return { code: "defined-twice", file, line, names: [name], message };
}

function notThere(
  notebook: Notebook,
  block: UsesBlock,
  name: string,
  line: number,
  world: World,
): DocumentProblem {
  const elsewhere = world.documents
    .get(block.file)
    ?.blocks.find(
      (other) => other.kind === "uses" && other.names.some((used) => used.name === name),
    );
  const message =
    elsewhere?.kind === "uses"
      ? `${block.file} has no cell ${name} of its own: it brings it in from ${elsewhere.file}. List it in a block \`uses ${elsewhere.file}\`.`
      : `${block.file} has no cell named ${name}. Take it out of this block, or write a name that is there.`;
  return { code: "not-defined", file: notebook.file, line, names: [name], message };
}
