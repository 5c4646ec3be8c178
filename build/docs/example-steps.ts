import ts from "typescript6";
import type { ExampleStep } from "../../notebooks/engine/types/index.ts";

/** An example of a doc comment as its statements, each with what it says it gives. */
export function exampleSteps(example: string): readonly ExampleStep[] {
  const code = example.replace(/^```\w*\n|\n```$/g, "");
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  return source.statements.map((statement) => {
    const written = statement.getText(source).replace(/;$/, "");
    const rest = code.slice(statement.end).split("\n", 1)[0] ?? "";
    const said = /^;?\s*\/\/\s*=>\s*(.*)$/.exec(rest)?.[1];
    return said === undefined ? { code: written } : { code: written, says: said.trim() };
  });
}

/**
 * An example as it runs in a cell, which is handed the functions that take long without their
 * solver: the session has one of its own.
 */
export function forCells(steps: readonly ExampleStep[]): readonly ExampleStep[] {
  return steps
    .filter(({ code }) => !/^const solve\b/.test(code))
    .map((step) => ({
      ...step,
      code: step.code.replace(/, \{ solve \}/g, "").replace(/\{ solve, /g, "{ "),
    }));
}
