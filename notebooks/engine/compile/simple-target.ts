import type { AnyNode } from "acorn";
import { type Operator, operatorOf } from "./operators.ts";

/**
 * The text of a target that may be written twice without doing anything twice: names, members,
 * indices made of those. Undefined for any other, as one that calls a function.
 */
export function plainText(node: AnyNode, call: (operator: Operator) => string): string | undefined {
  switch (node.type) {
    case "Identifier":
      return node.name;
    case "ThisExpression":
      return "this";
    case "Literal":
      return node.raw;
    case "MemberExpression":
      return member(node.object, node.property, node.computed, call);
    case "BinaryExpression": {
      const operator = operatorOf[node.operator];
      const left = plainText(node.left, call);
      const right = plainText(node.right, call);
      if (
        operator === undefined ||
        operator === "same" ||
        left === undefined ||
        right === undefined
      ) {
        return undefined;
      }
      return `${call(operator)}(${left}, ${right})`;
    }
    default:
      return undefined;
  }
}

function member(
  object: AnyNode,
  property: AnyNode,
  computed: boolean,
  call: (operator: Operator) => string,
): string | undefined {
  const base = plainText(object, call);
  const key =
    property.type === "PrivateIdentifier" ? `#${property.name}` : plainText(property, call);
  if (base === undefined || key === undefined) return undefined;
  const whole = object.type === "Literal" ? `(${base})` : base;
  return computed ? `${whole}[${key}]` : `${whole}.${key}`;
}
