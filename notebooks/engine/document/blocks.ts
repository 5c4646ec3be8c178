import type { Block, Hints, Notebook } from "../types/index.ts";
import { linesOf } from "./lines.ts";
import { titleFromName } from "./names.ts";
import { withFenceClosed } from "./open-fence.ts";

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
  const [order, pieces] = piecesOf(notebook);
  return order + sewn(pieces.toSpliced(at, 0, { text, isNew: true }), end);
}

/** The document with a block at another place: past the block that stands at `to`. */
export function withBlockMoved(notebook: Notebook, from: number, to: number): string {
  const { blocks } = notebook;
  const moved = blocks[from];
  const past = blocks[to];
  if (!moved || !past || from === to) return textOf(blocks);
  const [order, all] = piecesOf(notebook);
  const pieces = without(all, from);
  const at = pieces.findIndex(({ of }) => of === past) + (to > from ? 1 : 0);
  const piece = { text: all[from]?.text ?? "", isNew: true };
  return order + sewn(pieces.toSpliced(at, 0, piece), lineEndOf(notebook));
}

/** The document without a block. */
export function withBlockRemoved(notebook: Notebook, index: number): string {
  const [order, pieces] = piecesOf(notebook);
  return order + sewn(without(pieces, index), lineEndOf(notebook));
}

/** The document with a cell or table once more below itself, under a name and a title of its own. */
export function withBlockDuplicated(notebook: Notebook, index: number): string {
  const { blocks } = notebook;
  const block = blocks[index];
  if (block?.kind !== "cell" && block?.kind !== "table") return textOf(blocks);
  const end = lineEndOf(notebook);
  const name = freeName(blocks, block.name);
  const [order, pieces] = piecesOf(notebook);
  const [head, rest] = firstLine(pieces[index]?.text ?? "");
  const { title } = block.hints;
  const isOwn = title !== titleFromName(block.name);
  const renamed = headNamed(head, block.name, name);
  const hints = { ...block.hints, title: isOwn ? `${title} (copy)` : titleFromName(name) };
  const copy = { text: headHinted(renamed, name, hints) + rest, isNew: true };
  return order + sewn(pieces.toSpliced(index + 1, 0, copy), end);
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

/** A byte order mark stays the document's first character; the blocks are moved without it. */
function piecesOf({ blocks }: Notebook): readonly [order: string, pieces: readonly Piece[]] {
  const pieces = blocks.map((block) => ({ text: block.text.replace(/^\uFEFF/, ""), of: block }));
  const isMarked = blocks[0]?.text.startsWith("\uFEFF") ?? false;
  return [isMarked ? "\uFEFF" : "", pieces];
}

/** The blocks without one; of the blank lines on both sides of it only those before it stay. */
function without(pieces: readonly Piece[], index: number): Piece[] {
  const before = pieces[index - 1];
  const next = pieces[index + 1];
  const isParted = before === undefined || endsBlank(before.text);
  return pieces
    .filter((_, at) => at !== index)
    .map((piece) => {
      if (piece !== next) return piece;
      const text = isParted ? piece.text.replace(/^[ \t]*(?:\r\n|\n|\r)/, "") : piece.text;
      return { ...piece, text, isNew: true };
    });
}

/** Puts pieces together, with a blank line at each side of a new one, which no open fence swallows. */
function sewn(pieces: readonly Piece[], end: string): string {
  let text = "";
  const filled = pieces.filter((piece) => piece.text !== "");
  filled.forEach((piece, at) => {
    if (text !== "" && (piece.isNew || filled[at - 1]?.isNew)) {
      text = withFenceClosed(text, end);
      if (!/[\r\n]$/.test(text)) text += end;
      if (!endsBlank(text) && !/^[ \t]*[\r\n]/.test(piece.text)) text += end;
    }
    text += piece.text;
  });
  return text;
}

function endsBlank(text: string): boolean {
  return linesOf(text).at(-1)?.text.trim() === "";
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

/**
 * A title stands between double quotes, so it can't hold one. CommonMark takes backslashes and
 * entities away from the words after a fence, and allows no backtick there.
 */
function quoted(title: string): string {
  const words = title.replaceAll('"', "″").replace(/\s+/g, " ").trim();
  const written = `"${words}"`.replace(/\\(?=[!-/:-@[-`{-~])|&(?=[#\w]+;)/g, "\\$&");
  return written.replaceAll("`", "&#96;");
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
