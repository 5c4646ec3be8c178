import type { Notebook } from "../types/index.ts";
import { isClosed, openingOf } from "./fences.ts";
import { linesOf } from "./lines.ts";
import { outlineOf } from "./tokens.ts";

/** The text with its last fence closed, where that would swallow what comes after. */
export function withFenceClosed(text: string, lineEnd: string): string {
  if (!/`{3}|~{3}/.test(text)) return text;
  const lines = linesOf(text);
  const last = outlineOf(text.replace(/^\uFEFF/, "")).fences.findLast(({ nested }) => !nested);
  if (last === undefined || isClosed(lines.slice(last.from, last.to))) return text;
  // The reader of CommonMark does not count a last line of blanks alone.
  if (lines.slice(last.to).some((line) => line.text.trim() !== "" || line.end !== "")) return text;
  const { indent = "", marks = "```" } = openingOf(lines[last.from]?.text ?? "") ?? {};
  const ended = /[\r\n]$/.test(text) ? text : text + lineEnd;
  return `${ended}${indent}${marks}${lineEnd}`;
}

/**
 * Words as they may stand in a document: in its line ends, and with no fence left open that would
 * swallow what follows.
 */
export function wordsFor(
  { blocks }: Notebook,
  words: string,
  { isLast }: { readonly isLast: boolean },
): string {
  const lineEnd = blocks.map(({ text }) => /\r\n|\n|\r/.exec(text)?.[0]).find((end) => end) ?? "\n";
  const text = words.replace(/\r\n|\n|\r/g, lineEnd);
  return isLast ? text : withFenceClosed(text, lineEnd);
}
