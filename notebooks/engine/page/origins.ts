import type { CellId, OutlineCell } from "../types/index.ts";

export interface Origins {
  /** What the reader can go to: the cells drawn on the page that the figure rests on. */
  readonly takes: readonly CellId[];
  /** Functions with their rules: the figure's own, and those of the steps just before it. */
  readonly functions: OutlineCell["functions"];
}

/**
 * Where a figure comes from, past the quiet steps between: a reader who asks for the working wants
 * the entries and tables it rests on and the rule it was worked out by, not the name of a step that
 * is not drawn.
 */
export function originsOf(cell: OutlineCell, outline: ReadonlyMap<CellId, OutlineCell>): Origins {
  const takes = new Set<CellId>();
  const functions = new Map(cell.functions.map((one) => [one.name, one]));
  const seen = new Set<CellId>([cell.id]);
  const visit = (ids: readonly CellId[], ruled: boolean): void => {
    for (const id of ids) {
      if (seen.has(id)) continue;
      seen.add(id);
      const taken = outline.get(id);
      if (taken === undefined || !taken.hints.quiet) {
        takes.add(id);
        continue;
      }
      // A step without a rule of its own only hands on what the step before it gave.
      if (!ruled) for (const one of taken.functions) functions.set(one.name, one);
      visit(taken.takes, ruled || taken.functions.length > 0);
    }
  };
  visit(cell.takes, false);
  return { takes: [...takes], functions: [...functions.values()] };
}
