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
  /** It, or a part of it, is given another value. */
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
  const changed = changedPlaces(root);
  const places = new Map<string, Map<number, FreePlace>>();
  for (const reference of scopes.globalScope?.through ?? []) {
    const { name, range } = reference.identifier;
    const at = range?.[0];
    if (at === undefined) continue;
    const known = places.get(name) ?? new Map<number, FreePlace>();
    const write = reference.isWrite() || changed.has(at) || (known.get(at)?.write ?? false);
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

/** Where names stand of which a part is changed: `bed.length = x`, `rows[0]++`, `delete a.b`. */
function changedPlaces(root: AnyNode): ReadonlySet<number> {
  const targets: AnyNode[] = [];
  walk(root, (node) => {
    if (node.type === "AssignmentExpression") targets.push(...targetsIn(node.left));
    if (node.type === "ForOfStatement" || node.type === "ForInStatement")
      targets.push(...targetsIn(node.left));
    if (node.type === "UpdateExpression") targets.push(node.argument);
    if (node.type === "UnaryExpression" && node.operator === "delete") targets.push(node.argument);
  });
  return new Set(targets.flatMap(ownerOf));
}

/** What a pattern gives values to; what it works out on the way, as an index, is not changed. */
function targetsIn(pattern: AnyNode | null): AnyNode[] {
  switch (pattern?.type) {
    case "ArrayPattern":
      return pattern.elements.flatMap(targetsIn);
    case "ObjectPattern":
      return pattern.properties.flatMap((part) =>
        targetsIn(part.type === "Property" ? part.value : part),
      );
    case "AssignmentPattern":
      return targetsIn(pattern.left);
    case "RestElement":
      return targetsIn(pattern.argument);
    case "MemberExpression":
      return [pattern];
    default:
      return [];
  }
}

/** Where the name stands of which a member is meant; nothing where it is the member of no name. */
function ownerOf(member: AnyNode): number[] {
  let owner = member;
  while (owner.type === "MemberExpression") owner = owner.object;
  return owner !== member && owner.type === "Identifier" ? [owner.start] : [];
}
