import { join } from "node:path";
import ts from "typescript6";
import type {
  Reference,
  ReferenceField,
  ReferenceName,
  ReferenceParameter,
} from "../../notebooks/engine/types/index.ts";
import { exampleSteps, forCells } from "./example-steps.ts";
import { fieldOf, fieldsOf, oneLine, typeText } from "./fields-of.ts";
import { groupOf, groups } from "./groups.ts";
import { packageDocs } from "./package-docs.ts";
import { declared, type PublicName, publicName, readModules } from "./read-docs.ts";
import { signatureOf } from "./signature.ts";
import { tableDocs } from "./table-docs.ts";

export interface ReferenceParts {
  /** The project's folder. */
  readonly root: string;
  /** The published tables' files, by path. */
  readonly data: Readonly<Record<string, string>>;
  /** Functions that take long: a cell calls them without what the session gives. */
  readonly long: ReadonlySet<string>;
}

/** Options that the session gives a function that takes long, whoever calls it. */
const givenApart: ReadonlySet<string> = new Set([
  "solve",
  "progress",
  "signal",
  "remembered",
  "pause",
  "improved",
]);

/** Everything that cells may name, as the page shows it and as one who writes a formula needs it. */
export function makeReference({ root, data, long }: ReferenceParts): Reference {
  const entries = ["lib/index.ts", "notebooks/fields/index.ts"].map((entry) => join(root, entry));
  const names = readModules(entries).flatMap(({ checker, symbols }) =>
    symbols.map((symbol) => nameOf(checker, symbol, { root, long })).filter(isOfUse),
  );
  const all = [...names, ...tableDocs(data), ...packageDocs];
  return { groups, names: groups.flatMap(({ name }) => all.filter(({ group }) => group === name)) };
}

/**
 * Of the types those of the trades that are records: somebody who writes a formula makes or reads
 * one. What only one function takes as its options stands with that function.
 */
function isOfUse({ what, group, name, fields = [] }: ReferenceName): boolean {
  if (what !== "type") return true;
  const isOfTrade = !["measure", "check", "table", "entries", "session"].includes(group);
  return isOfTrade && fields.length > 0 && !name.endsWith("Options");
}

interface Reading {
  readonly root: string;
  readonly long: ReadonlySet<string>;
}

function nameOf(checker: ts.TypeChecker, exported: ts.Symbol, reading: Reading): ReferenceName {
  const doc = publicName(checker, exported, reading.root);
  const { symbol, declaration } = declared(checker, exported);
  const isLong = reading.long.has(doc.name);
  const [call] = callsOf(checker, symbol, declaration);
  const parameters = call ? parametersOf(checker, call, declaration, isLong) : [];
  const returns = call && returnsOf(checker, call, { symbol, declaration });
  const fields = doc.what === "type" ? recordFields(checker, symbol, declaration) : [];
  return {
    name: doc.name,
    what: whatOf(doc),
    group: groupOf(doc.file),
    signature: returns
      ? signatureOf({ name: doc.name, parameters, returns })
      : doc.signature.replaceAll("readonly ", ""),
    summary: paragraphs(doc.summary),
    ...(doc.rule === undefined ? {} : { rule: withSigns(oneLine(doc.rule)) }),
    sources: doc.sources,
    throws: doc.throws.map(oneLine),
    examples: doc.examples.map((example) => forCells(exampleSteps(example))),
    parameters,
    ...(returns ? { returns } : {}),
    ...(fields.length === 0 ? {} : { fields }),
    ...(isLong ? { long: true as const } : {}),
  };
}

function whatOf({ what, file, name }: PublicName): ReferenceName["what"] {
  if (what === "class") return "type";
  return file.startsWith("notebooks/fields/") && name.endsWith("Entry") ? "entry" : what;
}

function callsOf(checker: ts.TypeChecker, symbol: ts.Symbol, node: ts.Declaration) {
  if (!(symbol.flags & (ts.SymbolFlags.Function | ts.SymbolFlags.Variable))) return [];
  return checker.getTypeOfSymbolAtLocation(symbol, node).getCallSignatures();
}

function parametersOf(
  checker: ts.TypeChecker,
  call: ts.Signature,
  node: ts.Node,
  isLong: boolean,
): readonly ReferenceParameter[] {
  return call.parameters.map((parameter, at) => {
    const type = checker.getTypeOfSymbolAtLocation(parameter, parameter.valueDeclaration ?? node);
    const all = fieldsOf(checker, type, node);
    const isLast = at === call.parameters.length - 1;
    const fields = isLong && isLast ? all.filter(({ name }) => !givenApart.has(name)) : all;
    const { optional, ...field } = fieldOf(checker, parameter, node);
    const may = optional || (fields.length < all.length && fields.every((one) => one.optional));
    return {
      ...field,
      ...(may ? { optional: true as const } : {}),
      ...(fields.length === 0 ? {} : { fields }),
    };
  });
}

function returnsOf(
  checker: ts.TypeChecker,
  call: ts.Signature,
  { symbol, declaration }: { readonly symbol: ts.Symbol; readonly declaration: ts.Declaration },
): NonNullable<ReferenceName["returns"]> {
  const type = call.getReturnType();
  const fields = fieldsOf(checker, type, declaration);
  const tag = symbol.getJsDocTags(checker).find(({ name }) => name === "returns");
  const help = oneLine(ts.displayPartsToString(tag?.text));
  return {
    type: typeText(checker, type, declaration),
    ...(help === "" ? {} : { help }),
    ...(fields.length === 0 ? {} : { fields }),
  };
}

function recordFields(
  checker: ts.TypeChecker,
  symbol: ts.Symbol,
  node: ts.Declaration,
): readonly ReferenceField[] {
  return fieldsOf(checker, checker.getDeclaredTypeOfSymbol(symbol), node);
}

/** A comment's own line ends are those of its file; only paragraphs are kept. */
function paragraphs(text: string): string {
  return text
    .split(/\n\s*\n/)
    .map(oneLine)
    .join("\n\n");
}

/** A rule is typed with the keyboard's signs and read with those of print. */
export function withSigns(rule: string): string {
  return rule.replaceAll(" x ", " × ").replaceAll(" - ", " − ");
}
