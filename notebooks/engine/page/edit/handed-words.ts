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
  const { what, summary, parameters, returns } = name;
  const isCalled = what === "function" || what === "entry";
  const gives = isCalled && returns ? ` Gives: ${typeInWords(returns.type)}.` : "";
  return {
    name: name.name,
    what: whatInWords(name),
    ...(isCalled ? { call: callOf(name) } : {}),
    help: firstSentence(summary) + (gives.length > 60 ? "" : gives),
    options: parameters.map(({ fields = [] }) => fields.map(fieldWord)),
    fields: [...(before?.fields ?? []), ...(returns?.fields ?? []).map(fieldWord)],
  };
}

const mostOptions = 8;

/** As it is called, its options by name: `boardsFor(bed, { kerf, spare })`. */
function callOf({ name, parameters }: ReferenceName): string {
  const handed = parameters.map(({ name: parameter, optional, fields = [] }) => {
    if (!optional || fields.length === 0) return parameter;
    const options = fields.slice(0, mostOptions).map((field) => field.name);
    return `{ ${options.join(", ")}${fields.length > mostOptions ? ", …" : ""} }`;
  });
  return `${name}(${handed.join(", ")})`;
}

function whatInWords({ what, returns, group }: ReferenceName): string {
  if (what === "entry") return "an entry";
  if (what === "table") return "a table";
  if (what === "package") return "a package";
  const type = typeInWords(returns?.type ?? "");
  return type === "" || type.length > 28 ? group : type;
}

const plainTypes: Readonly<Record<string, string>> = {
  string: "text",
  boolean: "true or false",
  null: "none",
};

/** A type as one may say it: `Range<Volume>` is a range of volume, `string[]` a list of text. */
function typeInWords(type: string): string {
  const words = type
    .replace(/^readonly /, "")
    .replace(/^Range<(\w+)>$/, "range of $1")
    .replace(/^(?:Promise|Readonly)<(.+)>$/, "$1")
    .replace(/^(\w+)\[\]$/, "list of $1");
  return words
    .split(" | ")
    .map((part) => part.replace(/\b\w+$/, (word) => plainTypes[word] ?? lowerFirst(word)))
    .join(" or ");
}

function lowerFirst(word: string): string {
  return word.charAt(0).toLowerCase() + word.slice(1);
}

function fieldWord({ name, type, help }: ReferenceField): FieldWord {
  const what = typeInWords(type);
  return {
    name,
    ...(what.length > 28 ? {} : { what }),
    ...(help === undefined ? {} : { help: firstSentence(help) }),
  };
}

/** The first sentence of a text, on one line. */
function firstSentence(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  const [found = line] = /^.*?[.:;](?=\s|$)/.exec(line) ?? [];
  const sentence = found.replace(/[:;]$/, ".");
  return sentence.length > 160 ? `${sentence.slice(0, 159)}…` : sentence;
}
