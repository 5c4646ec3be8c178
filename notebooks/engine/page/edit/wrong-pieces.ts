import type { CellError } from "../../types/index.ts";
import type { WrongPiece } from "./field-marks.ts";

/**
 * The pieces of a formula that an error is about: the names it gives on its line, or the word at its
 * column, or the whole line. None where the error stands in a field of a table or an entry.
 */
export function wrongIn(
  formula: string,
  firstLine: number,
  { file, line, column, names, kind }: CellError,
  ownFile: string,
): readonly WrongPiece[] {
  if (file !== ownFile || kind === "waits" || kind === "stopped") return [];
  const lines = formula.split("\n");
  const text = lines[line - firstLine];
  if (text === undefined || line < firstLine) return [];
  const start = lines.slice(0, line - firstLine).reduce((sum, one) => sum + one.length + 1, 0);
  const marked = new Set(names);
  const words = [...text.matchAll(/[\p{L}_$][\p{L}\p{N}_$]*/gu)];
  const named = words.filter(([word]) => marked.has(word));
  if (named.length > 0)
    return named.map(({ 0: word, index }) => ({
      from: start + index,
      to: start + index + word.length,
    }));
  if (column !== undefined) {
    const at = Math.min(column - 1, Math.max(0, text.length - 1));
    const word = words.find(({ 0: found, index }) => index <= at && at < index + found.length);
    const from = start + (word?.index ?? at);
    return [{ from, to: word ? from + word[0].length : from + 1 }];
  }
  const indent = text.length - text.trimStart().length;
  return text.trim() === "" ? [] : [{ from: start + indent, to: start + text.trimEnd().length }];
}
