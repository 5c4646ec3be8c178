import type { CompiledCell, InputSource } from "../compile/index.ts";
import type { Host } from "../types/index.ts";

type Made = (...values: readonly unknown[]) => unknown;
type Maker = new (...source: string[]) => Made;

const makers: Readonly<Record<"plain" | "async" | "generator" | "asyncGenerator", Maker>> = {
  plain: Function as unknown as Maker,
  async: (async () => {}).constructor as Maker,
  generator: function* () {}.constructor as Maker,
  asyncGenerator: async function* () {}.constructor as Maker,
};

/** Makes the function of a compiled cell; its parameters are the cell's inputs, in their order. */
export function makeFunction({ inputs, body, async, generator }: CompiledCell): Made {
  const kind = generator ? (async ? "asyncGenerator" : "generator") : async ? "async" : "plain";
  const source = body.startsWith('"use strict"') ? body : `"use strict";${body}`;
  return new makers[kind](...inputs.map(({ name }) => name), source);
}

/** The key in the graph of an input that may change, undefined for one that never does. */
export function keyOf(from: InputSource): string | undefined {
  if ("cell" in from) return from.cell;
  return "given" in from ? from.given : undefined;
}

/** What an input that never changes stands for. */
export function fixedValue(from: InputSource, host: Host): unknown {
  if ("library" in from) return host.names[from.library];
  return "operator" in from ? host.operators[from.operator] : undefined;
}
