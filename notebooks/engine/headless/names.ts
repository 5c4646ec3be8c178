import type { Program } from "../compile/index.ts";
import type { Session } from "../run/index.ts";
import type { CellId, OutlineCell } from "../types/index.ts";
import { choiceOf, WrongUsage } from "./usage.ts";

/** What finding a cell takes. */
type Named = Pick<OutlineCell, "id" | "name" | "what">;

/** Finds cells by name: those the notebook itself can name, else the one of that name in what it uses. */
export class Names<Cell extends Named = OutlineCell> {
  readonly #own: ReadonlyMap<string, CellId>;
  readonly #cells: readonly Cell[];

  constructor(program: Program, outline: readonly Cell[]) {
    this.#own = program.scopes.get(program.main) ?? new Map();
    this.#cells = outline;
  }

  find(name: string): Cell | undefined {
    const id = this.#own.get(name);
    const named = this.#cells.filter((cell) =>
      id === undefined ? cell.name === name : cell.id === id,
    );
    return named.length === 1 ? named[0] : undefined;
  }

  /** @throws WrongUsage listing the cells there are */
  cell(name: string): Cell {
    return this.find(name) ?? this.#refuse("--cell", name, "cells", () => true);
  }

  /** @throws WrongUsage listing the tables there are */
  table(name: string): Cell {
    const found = this.find(name);
    const isTable = (cell: Cell) => cell.what === "table";
    return found !== undefined && isTable(found)
      ? found
      : this.#refuse("--table", name, "tables", isTable);
  }

  /**
   * Whether a cell is an entry is only known once its formula has run. One whose formula failed is
   * let pass: its error says more.
   * @throws WrongUsage listing the entries there are
   */
  entry(name: string, session: Session): Cell {
    const isEntry = ({ id }: Cell) => session.state(id)?.entry !== undefined;
    const found = this.find(name);
    const kind = found === undefined ? undefined : session.state(found.id)?.error?.kind;
    const passes = found !== undefined && (isEntry(found) || (kind && kind !== "waits"));
    return passes ? found : this.#refuse("--set", name, "entries", isEntry);
  }

  #refuse(option: string, name: string, what: string, fits: (cell: Cell) => boolean): never {
    const names = new Set(this.#cells.filter(fits).map((cell) => cell.name));
    const reachable = [...names].filter((known) => this.find(known) !== undefined);
    throw new WrongUsage(`${option} “${name}” is not among them. ${choiceOf(what, reachable)}`);
  }
}
