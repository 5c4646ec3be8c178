import type { Operators } from "../types/index.ts";

export type Operator = keyof Operators;

/** The function that stands for each operator in a formula. */
export const operatorOf: Readonly<Record<string, Operator>> = {
  "+": "plus",
  "-": "minus",
  "*": "times",
  "/": "over",
  "%": "remainder",
  "**": "power",
  "<": "less",
  "<=": "atMost",
  ">": "more",
  ">=": "atLeast",
  "===": "same",
  "!==": "same",
  "==": "same",
  "!=": "same",
};
