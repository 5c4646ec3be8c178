export { type Checkable, checkableText } from "./checkable.ts";
export { compileNotebook, type ToCompile } from "./compile.ts";
export type {
  CompiledCell,
  Input,
  InputSource,
  NamePlace,
  NameUsed,
  Program,
} from "./program.ts";
export { FormulaReader } from "./read-formula.ts";
export { sumPaths, sumText } from "./sum.ts";
