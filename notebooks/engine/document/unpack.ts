import type { CellId, DocumentProblem } from "../types/index.ts";
import { type CarriedInfo, carriedHeading, carriedWords, readCarriedInfo } from "./carried.ts";
import { type EnteredRow, readEntered } from "./entered-rows.ts";
import { isClosed } from "./fences.ts";
import { joinLines, type Line, linesOf } from "./lines.ts";
import { readNotebook } from "./read.ts";
import { type Fence, outlineOf } from "./tokens.ts";

/** A saved notebook taken apart. */
export interface Unpacked {
  /** The document alone. */
  readonly text: string;
  /** The notebooks it carries, by name. */
  readonly carried: ReadonlyMap<string, string>;
  /** What was typed into its fields and those of the notebooks it carries; a table's is CSV. */
  readonly entered: Readonly<Record<CellId, string>>;
  /** What can't be read and stays in the text, and what was typed for cells that are not there. */
  readonly problems: readonly DocumentProblem[];
}

/**
 * Takes a saved notebook apart, as `pack` put it together. A document that carries nothing comes
 * back byte for byte. What is broken stays where it is and is told; nothing is thrown.
 */
export function unpack(text: string, file: string): Unpacked {
  if (!mayCarry(text)) return { text, carried: new Map(), entered: {}, problems: [] };
  const lines = linesOf(text);
  const { fences } = outlineOf(text.replace(/^\uFEFF/, ""));
  const own = fences.filter(({ nested }) => !nested);
  const heading = headingLine(lines, own);
  const taker = new Taker(file, lines);
  const blocks = own.flatMap((fence) => {
    const info = readCarriedInfo(fence.info);
    return info === undefined ? [] : [{ fence, info }];
  });
  for (const { fence, info } of blocks) taker.take(fence, info, heading);
  const { carried, entered, problems } = taker;
  const left = taker.left(heading);
  problems.push(...withoutCell(left, file, { carried, entered: taker.lines }));
  problems.sort((a, b) => a.line - b.line);
  return { text: left, carried, entered: Object.fromEntries(entered), problems };
}

/** Most documents carry nothing, and need no second look. */
function mayCarry(text: string): boolean {
  return /markdown\s+notebook|csv\s+entered/.test(text) || text.includes(carriedHeading);
}

/** The last line with our heading that stands in no fence; -1 where there is none. */
function headingLine(lines: readonly Line[], fences: readonly Fence[]): number {
  const fenced = new Uint8Array(lines.length);
  for (const { from, to } of fences) fenced.fill(1, from, to);
  return lines.findLastIndex(
    ({ text }, at) => fenced[at] === 0 && text.trimEnd() === carriedHeading,
  );
}

class Taker {
  readonly carried = new Map<string, string>();
  readonly entered = new Map<CellId, string>();
  readonly problems: DocumentProblem[] = [];
  /** Where each entered row stands. */
  readonly lines = new Map<CellId, number>();
  readonly #file: string;
  readonly #document: readonly Line[];
  /** By its first line, what takes the place of a block that was read. */
  readonly #taken = new Map<number, { readonly to: number; readonly instead: string }>();

  constructor(file: string, document: readonly Line[]) {
    this.#file = file;
    this.#document = document;
  }

  take(fence: Fence, info: CarriedInfo, heading: number): void {
    const what = info.kind === "entered" ? "what was entered" : `the notebook ${info.file}`;
    const wrong =
      heading < 0 || fence.from < heading
        ? `it does not stand under the heading \`${carriedHeading}\``
        : isClosed(this.#raw(fence))
          ? info.kind === "entered"
            ? this.#takeEntered(fence)
            : this.#takeNotebook(fence, info)
          : "its fence is never closed";
    if (wrong === undefined) return;
    const names = info.kind === "notebook" ? [info.file] : [];
    const message = `This block should carry ${what}, but ${wrong}: it is left as it is. Mend it, or take it out.`;
    this.#tell(fence.from, names, message);
  }

  #raw({ from, to }: Fence): readonly Line[] {
    return this.#document.slice(from, to);
  }

  #tell(line: number, names: readonly string[], message: string): void {
    this.problems.push({ code: "not-carried", file: this.#file, line: line + 1, names, message });
  }

  #takeNotebook(
    fence: Fence,
    { file, unended, wrong }: Extract<CarriedInfo, { kind: "notebook" }>,
  ): string | undefined {
    if (wrong !== undefined) return wrong;
    if (file === this.#file) return "it has the name of the file it is in";
    if (this.carried.has(file)) return "the file carries that notebook twice, and the first counts";
    const content = this.#content(fence);
    this.carried.set(file, unended ? content.replace(/(?:\r\n|\n|\r)$/, "") : content);
    this.#taken.set(fence.from, { to: fence.to, instead: "" });
    return undefined;
  }

  /** Byte for byte, which the reader of CommonMark does not give. */
  #content({ from, to }: Fence): string {
    return joinLines(this.#document, from + 1, to - 1);
  }

  #takeEntered(fence: Fence): string | undefined {
    const read = readEntered(this.#content(fence));
    if (read === undefined) return "its first line is not `cell,text`";
    const broken = [...read.broken];
    for (const row of read.rows) {
      const id = this.#idOf(row);
      if (this.entered.has(id)) {
        broken.push(row);
        continue;
      }
      this.entered.set(id, row.text);
      this.lines.set(id, fence.from + 1 + row.line);
    }
    for (const { raw, line } of broken) {
      const message = `This row can't be read, or enters into a cell a second time: ${raw}. It is left as it is. Write a cell and its text, parted by a comma, with quotes around a text that has a comma.`;
      this.#tell(fence.from + 1 + line, [], message);
    }
    this.#taken.set(fence.from, { to: fence.to, instead: this.#rest(fence, broken) });
    return undefined;
  }

  /** The block with only its broken rows; nothing where there are none. */
  #rest({ from, to }: Fence, broken: readonly { readonly raw: string; readonly line: number }[]) {
    if (broken.length === 0) return "";
    const [opening, heading, ...more] = this.#document.slice(from, to);
    const last = more.at(-1);
    const end = opening?.end ?? "\n";
    const rows = broken.toSorted((a, b) => a.line - b.line).map(({ raw }) => raw + end);
    const start = `${opening?.text}${end}${heading?.text}${end}`;
    return `${start}${rows.join("")}${last?.text}${last?.end}`;
  }

  #idOf({ cell }: EnteredRow): CellId {
    const at = cell.indexOf("#");
    return at <= 0
      ? `${this.#file}#${cell.slice(at + 1)}`
      : `${cell.slice(0, at)}#${cell.slice(at + 1)}`;
  }

  /** The document without what was taken; without our heading too, where nothing is left under it. */
  left(heading: number): string {
    if (this.#taken.size === 0 && heading < 0)
      return joinLines(this.#document, 0, this.#document.length);
    const before = joinLines(this.#document, 0, heading);
    const under: string[] = [];
    for (let at = heading + 1; at < this.#document.length; ) {
      const taken = this.#taken.get(at);
      if (taken?.instead === "" && under.at(-1)?.trim() === "") under.pop();
      under.push(taken ? taken.instead : joinLines(this.#document, at, at + 1));
      at = taken ? taken.to : at + 1;
    }
    const rest = under.join("");
    const own = rest.trim();
    if (own === "" || own === carriedWords) return withoutGap(before, this.#document[heading]);
    return before + joinLines(this.#document, heading, heading + 1) + rest;
  }
}

/** Without the two line ends that `pack` puts before the heading. */
function withoutGap(before: string, heading: Line | undefined): string {
  const lineEnd = heading?.end === "" ? "\n" : (heading?.end ?? "\n");
  let text = before;
  for (let count = 0; count < 2; count += 1)
    if (text.endsWith(lineEnd)) text = text.slice(0, -lineEnd.length);
  return text;
}

/** What was typed for cells that are not there, of the documents at hand. */
function withoutCell(
  text: string,
  file: string,
  {
    carried,
    entered,
  }: { carried: ReadonlyMap<string, string>; entered: ReadonlyMap<CellId, number> },
): readonly DocumentProblem[] {
  const cells = new Map<string, ReadonlySet<string>>();
  const cellsOf = (of: string): ReadonlySet<string> | undefined => {
    const own = of === file ? text : carried.get(of);
    if (own === undefined) return undefined;
    const known = cells.get(of) ?? namesIn(own, of);
    cells.set(of, known);
    return known;
  };
  return [...entered].flatMap(([id, line]): DocumentProblem[] => {
    const at = id.indexOf("#");
    const of = id.slice(0, at);
    const name = id.slice(at + 1);
    if (cellsOf(of)?.has(name) ?? false) return [];
    const message = `Something was entered for ${name}, but ${of} ${cellsOf(of) ? "has no cell of that name" : "is not carried in this file"}. It is kept.`;
    return [{ code: "entry-without-cell", file, line: line + 1, names: [name], message }];
  });
}

function namesIn(text: string, file: string): ReadonlySet<string> {
  const made = readNotebook(text, file).blocks;
  return new Set(made.flatMap((block) => ("name" in block ? [block.name] : [])));
}
