import type { AnyNode } from "acorn";
import { analyze } from "eslint-scope";
import type { ParsedCell } from "./parse-cell.ts";
import { walk } from "./tree.ts";

/** A name the formula does not define itself. */
export interface FreeName {
  readonly name: string;
  readonly places: readonly FreePlace[];
}

export interface FreePlace {
  /** Offset in the formula. */
  readonly start: number;
  readonly write: boolean;
  readonly shorthand: boolean;
}

type Analysed = Parameters<typeof analyze>[0];

/** In the order in which they first stand in the formula. */
export function freeNames({ program, root, offset }: ParsedCell): readonly FreeName[] {
  const scopes = analyze(program as unknown as Analysed, {
    ecmaVersion: 2024,
    sourceType: "script",
  });
  const shorthands = shorthandPlaces(root);
  const places = new Map<string, Map<number, FreePlace>>();
  for (const reference of scopes.globalScope?.through ?? []) {
    const { name, range } = reference.identifier;
    const at = range?.[0];
    if (at === undefined) continue;
    const known = places.get(name) ?? new Map<number, FreePlace>();
    const write = reference.isWrite() || (known.get(at)?.write ?? false);
    known.set(at, { start: at - offset, write, shorthand: shorthands.has(at) });
    places.set(name, known);
  }
  return [...places]
    .map(([name, found]) => ({
      name,
      places: [...found.values()].sort((a, b) => a.start - b.start),
    }))
    .sort((a, b) => (a.places[0]?.start ?? 0) - (b.places[0]?.start ?? 0));
}

function shorthandPlaces(root: AnyNode): ReadonlySet<number> {
  const found = new Set<number>();
  walk(root, (node) => {
    if (node.type === "Property" && node.shorthand) found.add(node.key.start);
  });
  return found;
}
