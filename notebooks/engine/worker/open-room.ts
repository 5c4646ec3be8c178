import { compileNotebook, FormulaReader, type Program } from "../compile/index.ts";
import { createSession, type Session, type SessionOptions } from "../run/index.ts";
import type { CellId, CellState, FromRoom, Host, ToRoom } from "../types/index.ts";

type Opening = Extract<ToRoom, { readonly kind: "open" }>;

type Edit = Extract<ToRoom, { readonly kind: "edit" }>;

/**
 * What speaks with the page inside the closed room: opens the notebook it is given, hands on what
 * is entered, and sends what comes of it. A room holds one notebook; opening ends the one before.
 */
export function openRoom(
  host: Host,
  send: (message: FromRoom) => void,
): { receive(message: ToRoom): void } {
  let live: OpenNotebook | undefined;
  return {
    receive(message) {
      if (message.kind === "open") {
        live?.session.dispose();
        live = new OpenNotebook(message, host, send);
      } else if (live && "session" in message && message.session === live.number) {
        if (message.kind === "edit") live.edit(message);
        else handOn(live.session, message);
      }
    },
  };
}

function handOn(session: Session, message: ToRoom): void {
  if (message.kind === "enter") session.enter(message.changes, message.turn);
  else if (message.kind === "reset") session.reset(message.cells, message.turn);
  else if (message.kind === "units") session.setUnits(message.units, message.turn);
  else if (message.kind === "again") session.again(message.cell, message.turn);
}

class OpenNotebook {
  readonly number: number;
  readonly session: Session;
  readonly #main: string;
  readonly #names: ReadonlySet<string>;
  readonly #send: (message: FromRoom) => void;
  readonly #reader = new FormulaReader();
  /** What is wrong with the documents as they are, and belongs to no cell. */
  #problems: Program["problems"] = [];
  /** Cells that ran without an end, with the formula they had when they were first seen. */
  readonly #stopped: Map<CellId, string | undefined>;

  constructor(opening: Opening, host: Host, send: (message: FromRoom) => void) {
    const { session: number, main, documents, entered, surroundings, stopped = [] } = opening;
    this.number = number;
    this.#main = main;
    this.#names = new Set(Object.keys(host.names));
    this.#send = send;
    this.#stopped = new Map(stopped.map((id) => [id, undefined]));
    const program = this.#compile(documents);
    this.session = createSession({ host, program, entered, surroundings, ...this.#told() });
  }

  edit({ documents, entered, turn }: Edit): void {
    this.session.edit(this.#compile(documents), entered, turn);
  }

  #compile(documents: Opening["documents"]): Program {
    const compiled = compileNotebook({
      main: this.#main,
      documents: new Map(Object.entries(documents)),
      names: this.#names,
      reader: this.#reader,
    });
    this.#problems = compiled.problems;
    for (const { id, formula } of compiled.cells) {
      if (!this.#stopped.has(id)) continue;
      const then = this.#stopped.get(id) ?? formula;
      // Once it was edited it may come to an end.
      if (then === formula) this.#stopped.set(id, formula);
      else this.#stopped.delete(id);
    }
    return withStopped(compiled, this.#stopped);
  }

  #told(): Omit<SessionOptions, "host" | "program" | "entered" | "surroundings"> {
    const send = this.#send;
    const { number: session } = this;
    return {
      onOutline: (cells) => send({ kind: "outline", session, cells, problems: this.#problems }),
      onStarting: (cell) => send({ kind: "starting", session, cell }),
      onValues: (turn, cells) =>
        send({
          kind: "values",
          session,
          turn,
          cells: cells.map((state) => (this.#stopped.has(state.id) ? asStopped(state) : state)),
        }),
      onSettled: (turn, working) => send({ kind: "settled", session, turn, working }),
      onProgress: (cell, words, fraction) =>
        send({
          kind: "progress",
          session,
          cell,
          words,
          ...(fraction === undefined ? {} : { fraction }),
        }),
    };
  }
}

/** Cells that ran without an end before are not started: they stand as cells with a problem. */
function withStopped(program: Program, stopped: ReadonlyMap<CellId, unknown>): Program {
  const cells = program.cells.map((cell) =>
    stopped.has(cell.id)
      ? {
          ...cell,
          problem: {
            code: "cycle" as const,
            file: cell.file,
            line: cell.formulaLine,
            names: [cell.name],
            message: "It ran without coming to an end and was stopped.",
          },
        }
      : cell,
  );
  return { ...program, cells };
}

function asStopped(state: CellState): CellState {
  return state.error ? { ...state, error: { ...state.error, kind: "stopped" } } : state;
}
