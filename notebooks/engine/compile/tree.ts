import type { AnyNode } from "acorn";

export function isNode(value: unknown): value is AnyNode {
  return (
    typeof value === "object" &&
    value !== null &&
    "type" in value &&
    typeof value.type === "string" &&
    "start" in value
  );
}

export function childrenOf(node: AnyNode): AnyNode[] {
  const children: AnyNode[] = [];
  for (const value of Object.values(node)) {
    if (Array.isArray(value)) children.push(...value.filter(isNode));
    else if (isNode(value)) children.push(value);
  }
  return children;
}

/** Visits a node and all below it, the outer before the inner; `false` keeps out of what is below. */
export function walk(node: AnyNode, visit: (node: AnyNode) => unknown): void {
  if (visit(node) === false) return;
  for (const child of childrenOf(node)) walk(child, visit);
}

export function isFunction(node: AnyNode): boolean {
  return (
    node.type === "FunctionDeclaration" ||
    node.type === "FunctionExpression" ||
    node.type === "ArrowFunctionExpression"
  );
}

/** Where a node begins and ends, the parentheses around it included. */
export type Extents = WeakMap<AnyNode, { readonly start: number; readonly end: number }>;

/**
 * Takes parentheses out of the tree, so that `(a) = 1` is seen as what it is, and keeps what they
 * enclose: an operator has to be looked for outside them.
 */
export function stripParentheses(root: AnyNode): Extents {
  const extents: Extents = new WeakMap();
  const strip = (value: unknown): unknown => {
    if (!isNode(value)) return value;
    let inner: AnyNode = value;
    while (inner.type === "ParenthesizedExpression") inner = inner.expression;
    if (inner !== value) extents.set(inner, { start: value.start, end: value.end });
    return inner;
  };
  walk(root, (node) => {
    const record = node as unknown as Record<string, unknown>;
    for (const [key, value] of Object.entries(record)) {
      record[key] = Array.isArray(value) ? value.map(strip) : strip(value);
    }
  });
  return extents;
}

export function extentOf(
  node: AnyNode,
  extents: Extents,
): { readonly start: number; readonly end: number } {
  return extents.get(node) ?? node;
}
