/**
 * Words no cell may be called by: those reserved in strict code, and names that mean something to
 * every formula. `units` and `today` belong to every notebook.
 */
const reserved: ReadonlySet<string> = new Set(
  (
    "arguments await break case catch class const continue debugger default delete do else enum eval " +
    "export extends false finally for function if implements import in instanceof interface let new " +
    "null package private protected public return static super switch this throw true try typeof var " +
    "void while with yield undefined NaN Infinity globalThis __proto__ units today"
  ).split(" "),
);

const identifier = /^[\p{ID_Start}$_][\p{ID_Continue}$\u200c\u200d]*$/u;

/** Undefined where the name may stand for a cell, else what is wrong with it and what to do. */
export function wrongName(name: string): string | undefined {
  if (name === "") return "it has no name: write one after the word before, as in `js cell total`";
  if (name === "units" || name === "today") {
    return `"${name}" is a name that every notebook already has: choose another`;
  }
  if (reserved.has(name))
    return `"${name}" is a word of the language of formulas: choose another name`;
  if (!identifier.test(name)) {
    return `"${name}" is not a name: use letters, digits and _ only, beginning with a letter`;
  }
  return undefined;
}

/** "topDressing" as people read it: "Top dressing". */
export function titleFromName(name: string): string {
  const words = name
    .replace(/[_$]+/g, " ")
    .replace(/(\p{Ll}|\d)(\p{Lu})/gu, "$1 $2")
    .replace(/(\p{Lu})(\p{Lu}\p{Ll})/gu, "$1 $2")
    .trim()
    .split(/\s+/)
    .map((word) => (/^\p{Lu}{2,}$/u.test(word) ? word : word.toLowerCase()));
  const text = words.join(" ");
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
