import type { Notebook } from "../types/index.ts";
import { joinLines, linesOf } from "./lines.ts";
import { readNotebook, writeNotebook } from "./read.ts";
import { outlineOf } from "./tokens.ts";

/**
 * The document with another title: in its first level-1 heading, or in a new one before everything.
 * Every other byte stays. Signs that would mean something in a heading are escaped.
 *
 * @throws RangeError where the title is blank
 */
export function withTitle(notebook: Notebook, title: string): string {
  const words = title.trim().replace(/\s+/g, " ");
  if (words === "") throw new RangeError("A notebook's title has at least one letter.");
  const whole = writeNotebook(notebook);
  const mark = whole.startsWith("\uFEFF") ? "\uFEFF" : "";
  const text = whole.slice(mark.length);
  const escaped = words.replace(/[!-/:-@[-`{-~]/g, "\\$&");
  const ways = [inPlace(text, words), inPlace(text, escaped), before(text, words)];
  const good = ways.find((way) => way !== undefined && reads(way, notebook, words));
  return mark + (good ?? before(text, escaped));
}

/** Whether a text has the title, and every cell it had. */
function reads(text: string, { file, blocks }: Notebook, title: string): boolean {
  const again = readNotebook(text, file);
  return again.title === title && again.blocks.length >= blocks.length;
}

/** The title in the heading that is there; one underlined is written with a `#` instead. */
function inPlace(text: string, written: string): string | undefined {
  const [from, to] = outlineOf(text).titleLines ?? [];
  if (from === undefined || to === undefined) return undefined;
  const lines = linesOf(text);
  const [head] = /^[^#]*#[ \t]+/.exec(lines[from]?.text ?? "") ?? [];
  const end = lines[to - 1]?.end ?? "";
  const heading = `${to - from === 1 ? (head ?? "# ") : "# "}${written}${end}`;
  return joinLines(lines, 0, from) + heading + joinLines(lines, to, lines.length);
}

function before(text: string, written: string): string {
  const lineEnd = /\r\n|\n|\r/.exec(text)?.[0] ?? "\n";
  return `# ${written}${lineEnd}${text === "" ? "" : lineEnd}${text}`;
}
