import type { AnyNode } from "acorn";

function isNode(value: unknown): value is AnyNode {
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

/** Takes parentheses out of the tree, so that `(a) = 1` is seen as what it is. */
export function stripParentheses(root: AnyNode): void {
  walk(root, (node) => {
    const record = node as unknown as Record<string, unknown>;
    for (const [key, value] of Object.entries(record)) {
      record[key] = Array.isArray(value) ? value.map(inside) : inside(value);
    }
  });
}

function inside(value: unknown): unknown {
  let inner = value;
  while (isNode(inner) && inner.type === "ParenthesizedExpression") inner = inner.expression;
  return inner;
}
