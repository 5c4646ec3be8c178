import type { CellId, CellState } from "../types/index.ts";
import { type Book, partsOf } from "./book.ts";
import type { PlacedProblem, ProblemPlaces } from "./context.ts";

/**
 * Gathers what all cells say is wrong with entries and tables, by the name their paths begin with,
 * as the cell that says so knows that name.
 */
export class GatheredProblems implements ProblemPlaces {
  private readonly book: Book;
  private readonly bySayer = new Map<CellId, ReadonlyMap<CellId, readonly PlacedProblem[]>>();

  constructor(book: Book) {
    this.book = book;
  }

  /** Takes in a cell's new state; gives the entries and tables whose problems changed. */
  take(state: CellState): ReadonlySet<CellId> {
    const before = this.bySayer.get(state.id) ?? new Map();
    const now = this.placed(state);
    this.bySayer.set(state.id, now);
    const ids = new Set([...before.keys(), ...now.keys()]);
    const same = (id: CellId) => JSON.stringify(before.get(id)) === JSON.stringify(now.get(id));
    return new Set([...ids].filter((id) => !same(id)));
  }

  /** Forgets what cells said that are there no more; gives the entries and tables it was about. */
  forget(sayers: Iterable<CellId>): ReadonlySet<CellId> {
    const touched = new Set<CellId>();
    for (const sayer of sayers) {
      for (const id of this.bySayer.get(sayer)?.keys() ?? []) touched.add(id);
      this.bySayer.delete(sayer);
    }
    return touched;
  }

  of(id: CellId): readonly PlacedProblem[] {
    const seen = new Set<string>();
    return [...this.bySayer.values()]
      .flatMap((said) => said.get(id) ?? [])
      .filter(({ row, column, sentence }) => {
        const key = `${row} ${column} ${sentence}`;
        return seen.has(key) ? false : seen.add(key);
      });
  }

  private placed(state: CellState): ReadonlyMap<CellId, readonly PlacedProblem[]> {
    const [file] = partsOf(state.id);
    const found = new Map<CellId, PlacedProblem[]>();
    const own = state.error?.kind === "problems" ? state.error.problems : [];
    for (const problem of [...state.problems, ...own])
      for (const path of [problem.path, ...(problem.also ?? [])]) {
        const [name, row, column] = path;
        const id = this.book.find(String(name), file) ?? this.anywhere(String(name));
        if (id === undefined) continue;
        const list = found.get(id) ?? [];
        list.push({
          sentence: problem.sentence,
          code: problem.code,
          row: typeof row === "number" ? row : undefined,
          column: typeof column === "string" ? column : undefined,
        });
        found.set(id, list);
      }
    return found;
  }

  /** A table may be named through a notebook that is used by one that is used. */
  private anywhere(name: string): CellId | undefined {
    for (const [file, { blocks }] of this.book.documents)
      if (blocks.some((block) => block.kind === "table" && block.name === name))
        return `${file}#${name}`;
    return undefined;
  }
}
