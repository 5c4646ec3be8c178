import type { Hints } from "../types/index.ts";
import { titleFromName } from "./names.ts";

/** What the words after an opening fence say. */
export type Info =
  | {
      readonly kind: "cell" | "table";
      readonly name: string;
      readonly hints: Hints;
      readonly unknown: readonly string[];
    }
  | { readonly kind: "uses"; readonly file: string };

/** Reads the words after a fence; undefined where the block is none of ours. */
export function readInfo(info: string): Info | undefined {
  const [first, second = "", ...rest] = wordsOf(info);
  if (first === "uses") return { kind: "uses", file: info.trim().replace(/^uses\s*/, "") };
  if (first === "js" && second === "cell") return named("cell", rest);
  if (first === "csv" && second === "table") return named("table", rest);
  return undefined;
}

/** Words between spaces; text in double quotes stays one word, its quotes kept. */
function wordsOf(info: string): string[] {
  return info.match(/"[^"]*"|[^\s"]+|"/g) ?? [];
}

function named(kind: "cell" | "table", words: readonly string[]): Info {
  const [first] = words;
  const named = first !== undefined && !first.startsWith('"');
  const name = named ? first : "";
  let title: string | undefined;
  let pinned = false;
  let quiet = false;
  let folded = false;
  const unknown: string[] = [];
  for (const word of words.slice(named ? 1 : 0)) {
    if (word === "pinned") pinned = true;
    else if (word === "quiet") quiet = true;
    else if (word === "folded") folded = true;
    else if (title === undefined && /^"[^"]*\S[^"]*"$/.test(word)) title = word.slice(1, -1).trim();
    else unknown.push(word);
  }
  return {
    kind,
    name,
    hints: { pinned, quiet, folded, title: title ?? titleFromName(name) },
    unknown,
  };
}

/** Undefined where a `uses` block may name the file, else what is wrong with it. */
export function wrongFile(file: string): string | undefined {
  if (file === "") return "it names no file: write one, as in `uses garden.md`";
  const parts = file.split("/");
  const odd = /[\\:#?*|<>"\p{Cc}]/u.test(file) || parts.some((part) => /^\.*$/.test(part));
  if (odd || !file.endsWith(".md")) {
    return `"${file}" is not the name of a notebook: write it relative to this one, as in \`uses garden.md\``;
  }
  return undefined;
}
