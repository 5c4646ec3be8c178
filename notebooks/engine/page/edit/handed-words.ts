import type { ReferenceField, ReferenceName } from "../../types/index.ts";
import type { FieldWord, HandedWord } from "./suggestions.ts";

/**
 * The names handed to all cells, as a formula may write them, from the reference made of the doc
 * comments. A name in a group of its own, `published.species`, is a field of the first.
 */
export function handedWords(names: readonly ReferenceName[]): readonly HandedWord[] {
  const words = new Map<string, HandedWord>();
  for (const name of names) {
    if (name.what === "type") continue;
    const [first = "", ...rest] = name.name.split(".");
    if (rest.length === 0) words.set(first, wordOf(name, words.get(first)));
    else {
      const whole = words.get(first) ?? { name: first, what: name.group, options: [], fields: [] };
      const field = { name: rest.join("."), help: firstSentence(name.summary) };
      words.set(first, { ...whole, fields: [...whole.fields, field] });
    }
  }
  return [...words.values()];
}

function wordOf(name: ReferenceName, before: HandedWord | undefined): HandedWord {
  const { what, summary, signature, parameters, returns } = name;
  const isCalled = what === "function" || what === "entry";
  return {
    name: name.name,
    what: whatInWords(name),
    ...(isCalled ? { call: signature } : {}),
    help: firstSentence(summary),
    options: parameters.map(({ fields = [] }) => fields.map(fieldWord)),
    fields: [...(before?.fields ?? []), ...(returns?.fields ?? []).map(fieldWord)],
  };
}

function whatInWords({ what, returns, group }: ReferenceName): string {
  if (what === "entry") return "an entry";
  if (what === "table") return "a table";
  if (what === "package") return "a package";
  const type = returns?.type ?? "";
  return type === "" || type.length > 28 ? group : type;
}

function fieldWord({ name, type, help }: ReferenceField): FieldWord {
  const what = type.length > 28 ? undefined : type;
  return {
    name,
    ...(what === undefined ? {} : { what }),
    ...(help === undefined ? {} : { help: firstSentence(help) }),
  };
}

/** The first sentence of a text, on one line. */
function firstSentence(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  const [sentence = line] = /^.*?[.:;](?=\s|$)/.exec(line) ?? [];
  return sentence.length > 160 ? `${sentence.slice(0, 159)}…` : sentence;
}
