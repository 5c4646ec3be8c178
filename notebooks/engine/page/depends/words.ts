import type { CellId } from "../../types/index.ts";
import type { Edge } from "./graph.ts";

/** What a cell takes and gives to, of the cells a picture shows. */
export interface Near {
  readonly takes: readonly CellId[];
  readonly gives: readonly CellId[];
}

export function nearOf(id: CellId, edges: readonly Edge[]): Near {
  return {
    takes: edges.filter(({ to }) => to === id).map(({ from }) => from),
    gives: edges.filter(({ from }) => from === id).map(({ to }) => to),
  };
}

/** "Takes 4, gives to 7". */
export function countsInWords({ takes, gives }: Near): string {
  const taken = takes.length === 0 ? "Takes nothing" : `Takes ${takes.length}`;
  const given = gives.length === 0 ? "gives to nothing" : `gives to ${gives.length}`;
  return `${taken}, ${given}`;
}
