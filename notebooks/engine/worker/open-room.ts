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
  /** Cells that ran without an end, with the formula they had then. */
  readonly #stopped: Map<CellId, string>;

  constructor(opening: Opening, host: Host, send: (message: FromRoom) => void) {
    const { session: number, main, documents, entered, surroundings, stopped = [] } = opening;
    this.number = number;
    this.#main = main;
    this.#names = new Set(Object.keys(host.names));
    this.#send = send;
    this.#stopped = new Map(stopped.map((id) => [id, ""]));
    const { program, problems } = this.#compile(documents);
    for (const { id, formula } of program.cells)
      if (this.#stopped.has(id)) this.#stopped.set(id, formula);
    this.session = createSession({ host, program, entered, surroundings, ...this.#told() });
    this.#sendOutline(problems);
  }

  edit({ documents, entered, turn }: Edit): void {
    const { program, problems } = this.#compile(documents);
    this.session.edit(program, entered, turn);
    this.#sendOutline(problems);
  }

  #compile(documents: Opening["documents"]) {
    const compiled = compileNotebook({
      main: this.#main,
      documents: new Map(Object.entries(documents)),
      names: this.#names,
      reader: this.#reader,
    });
    // Once it was edited it may come to an end.
    for (const { id, formula } of compiled.cells) {
      const then = this.#stopped.get(id);
      if (then !== undefined && then !== "" && then !== formula) this.#stopped.delete(id);
    }
    return { program: withStopped(compiled, this.#stopped), problems: compiled.problems };
  }

  #sendOutline(problems: Program["problems"]): void {
    this.#send({ kind: "outline", session: this.number, cells: this.session.outline, problems });
  }

  #told(): Pick<SessionOptions, "onStarting" | "onValues" | "onSettled" | "onProgress"> {
    const send = this.#send;
    const { number: session } = this;
    return {
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
function withStopped(program: Program, stopped: ReadonlyMap<CellId, string>): Program {
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
