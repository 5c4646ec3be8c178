import type { ReferenceField, ReferenceName } from "../../types/index.ts";

/**
 * The names in which every word is found: in the name, the summary, the rule, the fields of what it
 * takes and gives. Those found by their name come first; else the order of the reference stands.
 */
export function searchNames(
  names: readonly ReferenceName[],
  words: string,
): readonly ReferenceName[] {
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  if (asked.length === 0) return names;
  return names
    .map((name) => ({ name, rank: rankOf(name, asked) }))
    .filter(({ rank }) => rank < notFound)
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ name }) => name);
}

const notFound = 9;

function rankOf(name: ReferenceName, asked: readonly string[]): number {
  const own = spaced(name.name);
  const all = `${own} ${textOf(name)}`;
  if (!asked.every((word) => all.includes(word))) return notFound;
  const [first = ""] = asked;
  if (asked.length === 1 && name.name.toLowerCase() === first) return 0;
  if (own.startsWith(first)) return 1;
  return asked.every((word) => own.includes(word)) ? 2 : name.what === "type" ? 4 : 3;
}

const texts = new WeakMap<ReferenceName, string>();

function textOf(name: ReferenceName): string {
  const known = texts.get(name);
  if (known !== undefined) return known;
  const { summary, rule = "", parameters, returns, fields = [] } = name;
  const all = [...parameters, ...(returns?.fields ?? []), ...fields];
  const text = [summary, rule, returns?.type ?? "", ...all.flatMap(wordsOf)]
    .join(" ")
    .toLowerCase();
  texts.set(name, text);
  return text;
}

function wordsOf(
  field: ReferenceField & { readonly fields?: readonly ReferenceField[] },
): string[] {
  const { name, help = "", fields = [] } = field;
  return [spaced(name), help, ...fields.flatMap(wordsOf)];
}

/** A name as one writes it and as one says it: `planBoards` is found by "plan boards" too. */
function spaced(name: string): string {
  return `${name} ${name.replace(/([a-z0-9])([A-Z])/g, "$1 $2")}`.toLowerCase();
}
