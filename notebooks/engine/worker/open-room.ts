import { compileNotebook, type Program } from "../compile/index.ts";
import { createSession, type Session } from "../run/index.ts";
import type { CellId, CellState, FromRoom, Host, ToRoom } from "../types/index.ts";

type Opening = Extract<ToRoom, { readonly kind: "open" }>;

/**
 * What speaks with the page inside the closed room: opens the notebook it is given, hands on what
 * is entered, and sends what comes of it. A room holds one notebook; opening ends the one before.
 */
export function openRoom(
  host: Host,
  send: (message: FromRoom) => void,
): { receive(message: ToRoom): void } {
  let live: { readonly session: Session; readonly opening: Opening } | undefined;

  function open(opening: Opening, turn = 0): void {
    live?.session.dispose();
    live = { session: begin(opening, turn, host, send), opening };
  }

  return {
    receive(message) {
      if (message.kind === "open") return open(message);
      if (!live || !("session" in message) || message.session !== live.opening.session) return;
      if (message.kind === "edit") {
        const { documents, entered } = message;
        open({ ...live.opening, documents, entered }, message.turn);
      } else handOn(live.session, message);
    },
  };
}

function handOn(session: Session, message: ToRoom): void {
  if (message.kind === "enter") session.enter(message.changes, message.turn);
  else if (message.kind === "reset") session.reset(message.cells, message.turn);
  else if (message.kind === "units") session.setUnits(message.units, message.turn);
  else if (message.kind === "again") session.again(message.cell, message.turn);
}

function begin(
  opening: Opening,
  turn: number,
  host: Host,
  send: (message: FromRoom) => void,
): Session {
  const { session: number, main, documents, entered, surroundings } = opening;
  const stopped: ReadonlySet<CellId> = new Set(opening.stopped ?? []);
  const names = new Set(Object.keys(host.names));
  const compiled = compileNotebook({ main, documents: new Map(Object.entries(documents)), names });
  const session = createSession({
    host,
    program: withStopped(compiled, stopped),
    entered,
    surroundings,
    turn,
    onStarting: (cell) => send({ kind: "starting", session: number, cell }),
    onValues: (turn, cells) =>
      send({
        kind: "values",
        session: number,
        turn,
        cells: cells.map((state) => (stopped.has(state.id) ? asStopped(state) : state)),
      }),
    onSettled: (turn, working) => send({ kind: "settled", session: number, turn, working }),
    onProgress: (cell, words, fraction) =>
      send({
        kind: "progress",
        session: number,
        cell,
        words,
        ...(fraction === undefined ? {} : { fraction }),
      }),
  });
  const { outline: cells } = session;
  send({ kind: "outline", session: number, cells, problems: compiled.problems });
  return session;
}

/** Cells that ran without an end before are not started: they stand as cells with a problem. */
function withStopped(program: Program, stopped: ReadonlySet<CellId>): Program {
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
