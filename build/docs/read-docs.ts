import ts from "typescript6";

/** What the doc comment of one public name of the library says. */
export interface PublicName {
  readonly name: string;
  readonly what: "function" | "constant" | "type" | "class";
  /** File relative to the project, with forward slashes. */
  readonly file: string;
  readonly line: number;
  readonly signature: string;
  readonly summary: string;
  readonly rule?: string;
  readonly sources: readonly string[];
  readonly throws: readonly string[];
  readonly examples: readonly string[];
}

/** A module's exported names, and what the compiler knows of their types. */
export interface ReadModule {
  readonly checker: ts.TypeChecker;
  readonly symbols: readonly ts.Symbol[];
}

/** Reads the modules at `entries` together; gives each one's names in the order of the alphabet. */
export function readModules(entries: readonly string[]): readonly ReadModule[] {
  const program = ts.createProgram([...entries], {
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
  return entries.map((entry) => {
    const file = program.getSourceFile(entry);
    const module = file && checker.getSymbolAtLocation(file);
    if (!module) throw new Error(`${entry} exports nothing`);
    const symbols = checker.getExportsOfModule(module);
    return { checker, symbols: symbols.toSorted((a, b) => (a.name < b.name ? -1 : 1)) };
  });
}

/** Reads every name that `entry` exports, with its doc comment, in the order of the alphabet. */
export function readDocs(entry: string, folder: string): readonly PublicName[] {
  return readModules([entry]).flatMap(({ checker, symbols }) =>
    symbols.map((symbol) => publicName(checker, symbol, folder)),
  );
}

/** Where a name is declared, whatever module it was exported through. */
export function declared(
  checker: ts.TypeChecker,
  exported: ts.Symbol,
): { readonly symbol: ts.Symbol; readonly declaration: ts.Declaration } {
  const symbol =
    exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const declaration = symbol.declarations?.[0];
  if (!declaration) throw new Error(`${exported.name} is declared nowhere`);
  return { symbol, declaration };
}

/** What the doc comment of an exported name says. */
export function publicName(
  checker: ts.TypeChecker,
  exported: ts.Symbol,
  folder: string,
): PublicName {
  const { symbol, declaration } = declared(checker, exported);
  const source = declaration.getSourceFile();
  const tags = symbol.getJsDocTags(checker);
  const texts = (name: string) =>
    tags.filter((tag) => tag.name === name).map((tag) => ts.displayPartsToString(tag.text).trim());
  const [rule] = texts("rule");
  return {
    name: exported.name,
    what: kindOf(symbol),
    file: source.fileName.slice(folder.length + 1).replaceAll("\\", "/"),
    line: source.getLineAndCharacterOfPosition(declaration.getStart()).line + 1,
    signature: signatureOf(checker, symbol, declaration),
    summary: ts.displayPartsToString(symbol.getDocumentationComment(checker)),
    ...(rule === undefined ? {} : { rule }),
    sources: texts("source").flatMap((text) => text.split(",").map((id) => id.trim())),
    throws: texts("throws"),
    examples: texts("example"),
  };
}

function kindOf(symbol: ts.Symbol): PublicName["what"] {
  if (symbol.flags & ts.SymbolFlags.Function) return "function";
  if (symbol.flags & ts.SymbolFlags.Class) return "class";
  if (symbol.flags & ts.SymbolFlags.Variable) return "constant";
  return "type";
}

function signatureOf(checker: ts.TypeChecker, symbol: ts.Symbol, node: ts.Declaration): string {
  if (!(symbol.flags & (ts.SymbolFlags.Function | ts.SymbolFlags.Variable))) return symbol.name;
  const type = checker.getTypeOfSymbolAtLocation(symbol, node);
  const [call] = type.getCallSignatures();
  return call
    ? `${symbol.name}${checker.signatureToString(call, node)}`
    : `${symbol.name}: ${checker.typeToString(type, node)}`;
}
