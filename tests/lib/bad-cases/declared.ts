import ts from "typescript6";
import type { Part } from "./shape.ts";
import type { Cases } from "./walk.ts";

/** The arguments of a function by name, and of each argument its fields, as the types declare. */
export interface Declared {
  readonly name: string;
  readonly fields: readonly Declared[];
}

/** The arguments of every function that `entry` exports, each overload's apart. */
export function declaredArguments(entry: string): ReadonlyMap<string, readonly Declared[]> {
  const program = ts.createProgram([entry], {
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ["lib.es2023.d.ts"],
    types: [],
    strict: true,
    noEmit: true,
    allowImportingTsExtensions: true,
  });
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(entry);
  const module = file && checker.getSymbolAtLocation(file);
  if (!file || !module) throw new Error(`${entry} exports nothing`);
  const found = new Map<string, readonly Declared[]>();
  for (const symbol of checker.getExportsOfModule(module)) {
    const type = checker.getTypeOfSymbolAtLocation(symbol, file);
    const [signature] = type.getCallSignatures();
    if (signature === undefined) continue;
    const parameters = signature.parameters.map((parameter) => {
      const its = checker.getTypeOfSymbolAtLocation(parameter, file);
      return { name: parameter.name, fields: fieldsOf(checker, its, []) };
    });
    found.set(symbol.name, parameters);
  }
  return found;
}

// What is one value however many fields it has: a quantity, a date, a function, a map.
const isWhole = (names: ReadonlySet<string>): boolean =>
  names.has("si") || names.has("year") || names.has("apply") || names.has("entries");

function fieldsOf(
  checker: ts.TypeChecker,
  type: ts.Type,
  above: readonly ts.Type[],
): readonly Declared[] {
  const parts = type.isUnion() ? type.types : [type];
  const fields = parts.flatMap((part): readonly Declared[] => {
    const [entry] = checker.isArrayType(part)
      ? checker.getTypeArguments(part as ts.TypeReference)
      : [];
    if (entry !== undefined) return fieldsOf(checker, entry, above);
    if ((part.flags & ts.TypeFlags.Object) === 0 || above.includes(part)) return [];
    const properties = checker.getPropertiesOfType(part);
    if (isWhole(new Set(properties.map(({ name }) => name)))) return [];
    if (part.getCallSignatures().length > 0) return [];
    const own = properties.filter(({ name }) => !name.startsWith("__@"));
    return own.map((property) => ({
      name: property.name,
      fields: fieldsOf(checker, checker.getTypeOfSymbol(property), [...above, part]),
    }));
  });
  const byName = new Map(fields.map((field) => [field.name, field]));
  return [...byName.values()];
}

/** A part that is given as it is: what is inside is not tried, and has its reason beside it. */
const isFixed = (part: Part): boolean => part.variants.length === 0 && part.inner.length === 0;

function untriedIn(declared: readonly Declared[], parts: readonly Part[], place: string): string[] {
  // A list's entries stand for the list.
  const entered = parts.flatMap((part) => {
    const entries = part.inner.filter(({ key }) => typeof key === "number");
    return entries.length > 0 ? entries.map(({ part: entry }) => entry) : [part];
  });
  if ([...parts, ...entered].some((part) => isFixed(part) || part.asMade)) return [];
  return declared.flatMap(({ name, fields }) => {
    const here = entered.flatMap(({ inner }) => inner.filter(({ key }) => key === name));
    const at = `${place}.${name}`;
    if (here.length === 0) return [at];
    const inside = here.map(({ part }) => part);
    return untriedIn(fields, inside, at);
  });
}

/** The arguments and fields of a function that its cases don't try, by their places. */
export function untried(declared: readonly Declared[], all: readonly Cases[]): string[] {
  return declared.flatMap(({ name, fields }, at) => {
    const parts = all.flatMap((cases) => Object.values(cases.takes)[at] ?? []);
    return parts.length === 0 ? [name] : untriedIn(fields, parts, name);
  });
}
