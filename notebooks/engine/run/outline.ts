import type { CompiledCell } from "../compile/index.ts";
import type { CellId, Host, OutlineCell } from "../types/index.ts";

/** What is known of the cells before anything runs, in the program's order. */
export function outlineOf(cells: readonly CompiledCell[], host: Host): readonly OutlineCell[] {
  const gives = new Map<CellId, CellId[]>(cells.map(({ id }) => [id, []]));
  for (const { id, takes } of cells) for (const taken of takes) gives.get(taken)?.push(id);
  return cells.map((cell) => ({
    id: cell.id,
    name: cell.name,
    file: cell.file,
    line: cell.line,
    what: cell.what,
    hints: cell.hints,
    formula: cell.formula,
    takes: cell.takes,
    gives: gives.get(cell.id) ?? [],
    ...(namesLongWork(cell, host) ? { longWork: true } : {}),
    functions: functionsOf(cell, host),
  }));
}

function namesLongWork({ namesUsed }: CompiledCell, host: Host): boolean {
  return namesUsed.some(
    ({ kind, name }) => kind === "library" && Object.hasOwn(host.longWork, name),
  );
}

function functionsOf(cell: CompiledCell, host: Host): OutlineCell["functions"] {
  const names = cell.namesUsed.filter(({ kind }) => kind === "library").map(({ name }) => name);
  return names.map((name) => {
    const doc = host.docs.get(name);
    return {
      name,
      ...(doc?.rule === undefined ? {} : { rule: doc.rule }),
      sources: doc?.sources ?? [],
    };
  });
}
