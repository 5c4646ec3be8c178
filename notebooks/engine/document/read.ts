import type { Block, DocumentProblem, DocumentProblemCode, Notebook } from "../types/index.ts";
import { isClosed } from "./fences.ts";
import { type Info, readInfo, wrongFile } from "./info.ts";
import { joinLines, type Line, linesOf } from "./lines.ts";
import { wrongName } from "./names.ts";
import { type CodeSpan, type Fence, outlineOf } from "./tokens.ts";

/**
 * Reads a document into its blocks. Nothing is lost: the texts of the blocks, joined, are the
 * document. Only fences at the margin of the document are ours; one inside a list item or a
 * quotation is shown like any other code, with a remark.
 */
export function readNotebook(text: string, file: string): Notebook {
  // A byte order mark belongs to the first line's text, but must not hide a fence or a heading.
  const lines = linesOf(text);
  const { fences, spans, title } = outlineOf(text.replace(/^\uFEFF/, ""));
  const blocks: Block[] = [];
  const problems: DocumentProblem[] = [];
  const place: Place = { file, lines, spans, problems };
  let at = 0;
  for (const fence of fences) {
    const info = readInfo(fence.info);
    if (info === undefined) continue;
    if (fence.nested) {
      report(place, "nested-fence", fence.from, [], nestedMessage(info));
      continue;
    }
    if (fence.from > at) blocks.push(prose(place, at, fence.from));
    blocks.push(ours(place, fence, info));
    at = fence.to;
  }
  if (at < lines.length) blocks.push(prose(place, at, lines.length));
  return { file, title: title ?? file, blocks, problems };
}

/** The document's text: the same bytes that were read. */
export function writeNotebook(notebook: Notebook): string {
  return notebook.blocks.map((block) => block.text).join("");
}

interface Place {
  readonly file: string;
  readonly lines: readonly Line[];
  readonly spans: readonly CodeSpan[];
  readonly problems: DocumentProblem[];
}

function report(
  { file, problems }: Place,
  code: DocumentProblemCode,
  line: number,
  names: readonly string[],
  message: string,
): void {
  problems.push({ code, file, line: line + 1, names, message });
}

function nestedMessage(info: Info): string {
  const what = info.kind === "uses" ? "A `uses` block" : `A ${info.kind}`;
  return `${what} inside a list or a quotation is only shown, not run. To run it, begin its fence at the margin, outside the list or quotation.`;
}

function prose(place: Place, from: number, to: number): Block {
  const figures: { name: string; line: number }[] = [];
  for (const { content, line } of place.spans) {
    if (line < from || line >= to) continue;
    const [first, name = "", ...more] = content.trim().split(/\s+/);
    if (first !== "fig" || name === "") continue;
    if (more.length > 0 || !mayStandInSentence(name)) figureProblem(place, content, line);
    else figures.push({ name, line: line + 1 });
  }
  return { kind: "prose", text: joinLines(place.lines, from, to), line: from + 1, figures };
}

/** The two names every notebook has may stand in a sentence, though no cell may be called so. */
function mayStandInSentence(name: string): boolean {
  return name === "units" || name === "today" || wrongName(name) === undefined;
}

function figureProblem(place: Place, content: string, line: number): void {
  report(
    place,
    "bad-name",
    line,
    [],
    `\`${content}\` puts no value into the sentence: write \`fig\` and the name of one cell, as in \`fig total\`.`,
  );
}

function ours(place: Place, fence: Fence, info: Info): Block {
  const base = { text: joinLines(place.lines, fence.from, fence.to), line: fence.from + 1 };
  if (!isClosed(place.lines.slice(fence.from, fence.to))) {
    report(place, "unclosed-fence", fence.from, [], unclosedMessage(info));
  }
  if (info.kind === "uses") {
    const wrong = wrongFile(info.file);
    if (wrong)
      report(place, "bad-name", fence.from, [info.file], `This block can't be used: ${wrong}.`);
    return { ...base, kind: "uses", file: info.file, names: usedNames(place, fence) };
  }
  const { name, hints } = info;
  const wrong = wrongName(name);
  if (wrong)
    report(place, "bad-name", fence.from, [name], `This ${info.kind} can't be used: ${wrong}.`);
  for (const word of info.unknown) {
    report(
      place,
      "unknown-hint",
      fence.from,
      [name],
      `${word} after the name ${name} is not known. What may stand there: pinned, quiet, folded, a title in double quotes.`,
    );
  }
  const content = fence.content.replace(/\n$/, "");
  const contentLine = fence.from + 2;
  return info.kind === "cell"
    ? { ...base, kind: "cell", name, hints, formula: content, formulaLine: contentLine }
    : { ...base, kind: "table", name, hints, csv: content, csvLine: contentLine };
}

function unclosedMessage(info: Info): string {
  const what = info.kind === "uses" ? "block" : info.kind;
  return `The fence of this ${what} is never closed, so it reaches to the end of the document: put a line of the same marks after its last line.`;
}

function usedNames(place: Place, fence: Fence): { name: string; line: number }[] {
  const names: { name: string; line: number }[] = [];
  fence.content.split("\n").forEach((text, index) => {
    for (const name of text.split(/[\s,]+/)) {
      if (name === "") continue;
      const line = fence.from + 1 + index;
      const wrong = wrongName(name);
      if (wrong) report(place, "bad-name", line, [name], `This name can't be used: ${wrong}.`);
      else names.push({ name, line: line + 1 });
    }
  });
  return names;
}
