import ts from "typescript6";
import type { ReferenceField } from "../../notebooks/engine/types/index.ts";

/** A name's type in words of the language, in full. */
export function typeText(checker: ts.TypeChecker, type: ts.Type, node: ts.Node): string {
  const constraint = type.isTypeParameter() ? checker.getBaseConstraintOfType(type) : undefined;
  return (
    checker
      .typeToString(constraint ?? type, node, ts.TypeFormatFlags.NoTruncation)
      .replaceAll("readonly ", "")
      .replace(/import\("[^"]*"\)\./g, "")
      // What an entry's options make of its type is for the compiler.
      .replace(/OrNone<(\w+), O>/g, "$1")
      .replace(/^\(?(.+?)\)? \| undefined$/, "$1")
  );
}

/** The sentence of a doc comment on one line. */
export function oneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/**
 * The fields of a record that the project declares, each with its own comment; of a list, those of
 * its rows; none of a quantity, a text, a function.
 */
export function fieldsOf(
  checker: ts.TypeChecker,
  type: ts.Type,
  node: ts.Node,
): readonly ReferenceField[] {
  const record = recordIn(checker, type);
  if (!record) return [];
  return checker
    .getPropertiesOfType(record)
    .filter(isOurs)
    .map((property) => fieldOf(checker, property, node));
}

export function fieldOf(checker: ts.TypeChecker, symbol: ts.Symbol, node: ts.Node): ReferenceField {
  const help = oneLine(ts.displayPartsToString(symbol.getDocumentationComment(checker)));
  const type = checker.getTypeOfSymbolAtLocation(symbol, symbol.valueDeclaration ?? node);
  return {
    name: symbol.name,
    type: typeText(checker, type, node),
    ...(help === "" ? {} : { help }),
    ...(isOptional(symbol) ? { optional: true as const } : {}),
  };
}

function isOptional({ flags, valueDeclaration }: ts.Symbol): boolean {
  if (flags & ts.SymbolFlags.Optional) return true;
  if (!valueDeclaration || !ts.isParameter(valueDeclaration)) return false;
  return Boolean(valueDeclaration.questionToken ?? valueDeclaration.initializer);
}

/** The record a type stands for: what a promise gives, a row of a list, what a name must at least be. */
function recordIn(checker: ts.TypeChecker, given: ts.Type): ts.Type | undefined {
  const type = checker.getNonNullableType(checker.getBaseConstraintOfType(given) ?? given);
  const awaited = checker.getAwaitedType(type);
  if (awaited && awaited !== type) return recordIn(checker, awaited);
  if (checker.isArrayType(type) || checker.isTupleType(type)) {
    const [row] = checker.getTypeArguments(type as ts.TypeReference);
    return row && recordIn(checker, row);
  }
  const isPlain = (type.flags & ts.TypeFlags.Object) !== 0 || type.isIntersection();
  if (!isPlain || type.getCallSignatures().length > 0) return undefined;
  // A quantity is a value, not a record of its parts; so is a range of them.
  if (type.getProperty("si") && type.getProperty("dim")) return undefined;
  return type;
}

function isOurs(symbol: ts.Symbol): boolean {
  const file = symbol.declarations?.[0]?.getSourceFile().fileName;
  return file !== undefined && !file.includes("node_modules");
}
