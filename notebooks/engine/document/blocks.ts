import type { Block, Hints, Notebook } from "../types/index.ts";
import { isClosing, openingOf } from "./fences.ts";
import { linesOf } from "./lines.ts";
import { titleFromName } from "./names.ts";

/** What a new block holds. */
export interface NewBlock {
  /** Of a cell or table. */
  readonly name?: string;
  readonly title?: string;
  readonly content: string;
}

/** The document with a block more, at the place `at`; every other byte stays. */
export function withBlockAdded(
  notebook: Notebook,
  at: number,
  kind: "cell" | "table" | "prose",
  { name = "", title, content }: NewBlock,
): string {
  const end = lineEndOf(notebook);
  const body = content.replace(/(\r\n|\n|\r)+$/, "").replaceAll(/\r\n|\n|\r/g, end);
  const mark = fenceAround(body);
  const words = [kind === "table" ? "csv table" : "js cell", name, title && quoted(title)];
  const head = mark + words.filter(Boolean).join(" ");
  const text = kind === "prose" ? body + end : [head, body, mark, ""].join(end);
  const { blocks } = notebook;
  return sewn([...blocks.slice(0, at), { text, isNew: true }, ...blocks.slice(at)], end);
}

/** The document with a block at another place: past the block that stands at `to`. */
export function withBlockMoved(notebook: Notebook, from: number, to: number): string {
  const { blocks } = notebook;
  const moved = blocks[from];
  const past = blocks[to];
  if (!moved || !past || from === to) return textOf(blocks);
  const pieces = without(blocks, from);
  const at = pieces.findIndex(({ of }) => of === past) + (to > from ? 1 : 0);
  const piece = { text: closedText(moved, lineEndOf(notebook)), isNew: true };
  return sewn(pieces.toSpliced(at, 0, piece), lineEndOf(notebook));
}

/** The document without a block. */
export function withBlockRemoved(notebook: Notebook, index: number): string {
  return sewn(without(notebook.blocks, index), lineEndOf(notebook));
}

/** The document with a cell or table once more below itself, under a name that is free. */
export function withBlockDuplicated(notebook: Notebook, index: number): string {
  const { blocks } = notebook;
  const block = blocks[index];
  if (block?.kind !== "cell" && block?.kind !== "table") return textOf(blocks);
  const end = lineEndOf(notebook);
  const name = freeName(blocks, block.name);
  const [head = "", rest] = firstLine(closedText(block, end));
  const copy = { text: headNamed(head, block.name, name) + rest, isNew: true };
  return sewn([...blocks.slice(0, index + 1), copy, ...blocks.slice(index + 1)], end);
}

/** The document with other hints at a cell or table; its other words stay. */
export function withHints(notebook: Notebook, index: number, hints: Partial<Hints>): string {
  const { blocks } = notebook;
  return blocks
    .map((block, at) => {
      if (at !== index || (block.kind !== "cell" && block.kind !== "table")) return block.text;
      const [head, rest] = firstLine(block.text);
      return headHinted(head, block.name, { ...block.hints, ...hints }) + rest;
    })
    .join("");
}

/** A name that nothing in the document has yet: `length`, then `length2`. */
export function freeName(blocks: readonly Block[], wanted: string): string {
  const taken = new Set(
    blocks.flatMap((block) => {
      if (block.kind === "prose") return [];
      return block.kind === "uses" ? block.names.map(({ name }) => name) : [block.name];
    }),
  );
  const [stem = wanted] = /^.*?(?=\d*$)/u.exec(wanted) ?? [];
  let name = wanted;
  for (let count = 2; taken.has(name); count += 1) name = `${stem}${count}`;
  return name;
}

interface Piece {
  readonly text: string;
  /** It did not stand here before: it is set off by blank lines. */
  readonly isNew?: boolean;
  /** The block it is, where it is one of the document. */
  readonly of?: Block;
}

/** The blocks without one; of the blank lines around it only those before it stay. */
function without(blocks: readonly Block[], index: number): Piece[] {
  const isBlank = (block: Block | undefined) => block?.kind === "prose" && block.text.trim() === "";
  const alsoNext = isBlank(blocks[index - 1]) && isBlank(blocks[index + 1]);
  const next = blocks[index + 1];
  return blocks
    .filter((_, at) => at !== index && !(alsoNext && at === index + 1))
    .map((block) => ({ text: block.text, isNew: block === next, of: block }));
}

/** Puts pieces together, with a blank line at each side of a new one. */
function sewn(pieces: readonly Piece[], end: string): string {
  let text = "";
  pieces.forEach((piece, at) => {
    if (text !== "" && (piece.isNew || pieces[at - 1]?.isNew)) {
      if (!/[\r\n]$/.test(text)) text += end;
      const isApart = linesOf(text).at(-1)?.text.trim() === "";
      if (!isApart && !/^[ \t]*[\r\n]/.test(piece.text)) text += end;
    }
    text += piece.text;
  });
  return text;
}

/** A block whose fence is never closed reaches to the document's end, and must not swallow what comes to stand below. */
function closedText({ kind, text }: Block, end: string): string {
  const { marks = "" } = openingOf(linesOf(text)[0]?.text ?? "") ?? {};
  if (kind === "prose" || marks === "") return text;
  const lines = linesOf(text);
  const last = lines.at(-1)?.text ?? "";
  if (lines.length > 1 && isClosing(last, marks)) return text;
  return `${text}${/[\r\n]$/.test(text) ? "" : end}${marks}${end}`;
}

function firstLine(text: string): readonly [head: string, rest: string] {
  const [line] = linesOf(text);
  const head = line?.text ?? "";
  return [head, text.slice(head.length)];
}

function headNamed(head: string, from: string, to: string): string {
  const at = head.indexOf(from, head.search(/\s(cell|table)\s/) + 6);
  return at < 0 ? head : head.slice(0, at) + to + head.slice(at + from.length);
}

const flags = ["pinned", "quiet", "folded"] as const;

function headHinted(head: string, name: string, hints: Hints): string {
  const at = head.indexOf(name, head.search(/\s(cell|table)\s/) + 6) + name.length;
  const words = head.slice(at).match(/"[^"]*"|[^\s"]+|"/g) ?? [];
  const isTitle = (word: string) => /^"[^"]*\S[^"]*"$/.test(word);
  const others = words.filter(
    (word, index) => !flags.some((flag) => flag === word) && index !== words.findIndex(isTitle),
  );
  const title = hints.title === titleFromName(name) ? [] : [quoted(hints.title)];
  const own = flags.filter((flag) => hints[flag]);
  return [head.slice(0, at), ...own, ...title, ...others].join(" ");
}

/** A title stands between double quotes, so it can't hold one. */
function quoted(title: string): string {
  return `"${title.replaceAll('"', "″").replace(/\s+/g, " ").trim()}"`;
}

function fenceAround(content: string): string {
  const runs = content.match(/^ {0,3}`{3,}/gm) ?? [];
  return "`".repeat(Math.max(3, ...runs.map((run) => run.trim().length + 1)));
}

function lineEndOf({ blocks }: Notebook): string {
  return /\r\n|\n|\r/.exec(blocks[0]?.text ?? "")?.[0] ?? "\n";
}

function textOf(blocks: readonly Piece[]): string {
  return blocks.map(({ text }) => text).join("");
}
