import type { Host, LongWork, ToRoom } from "../types/index.ts";
import { left } from "./before.ts";
import { closeScope } from "./close-scope.ts";
import { openRoom } from "./open-room.ts";
import { RemoteWork } from "./remote-work.ts";
import type { Port, WorkerScope } from "./scope.ts";
import type { SessionWork, WorkAnswer } from "./work-message.ts";

/** Makes the host of the cells; `remote` gives the stand-in for a function of long work. */
export type MakeHost = (remote: (name: string) => LongWork) => Host;

/**
 * The script of the closed worker. It waits for the port that leads to the page, then lets the
 * session speak through it. What it needs of the scope it takes hold of now: before the first cell
 * runs in the same scope, everything else is taken away and what stays is fixed.
 */
export function startRoom(
  makeHost: MakeHost,
  scope: WorkerScope = globalThis as unknown as WorkerScope,
): void {
  refuseIfLeft(left);
  const toFrame = scope.postMessage.bind(scope);
  const remote = new RemoteWork(toFrame);
  const host = makeHost((name) => remote.stand(name));

  function connect(port: Port): void {
    const toPage = port.postMessage.bind(port);
    const room = openRoom(host, toPage);
    port.onmessage = ({ data }) => {
      const message = data as ToRoom;
      if (message.kind === "ping") toPage({ kind: "alive" });
      else room.receive(message);
    };
    toPage({ kind: "ready" });
  }

  scope.onmessage = ({ data, ports }) => {
    const message = data as { readonly kind: "port" } | SessionWork<WorkAnswer>;
    const [port] = ports;
    if (message.kind === "work") remote.answered(message.work);
    else if (message.kind === "port" && port) connect(port);
  };
  refuseIfLeft(closeScope(scope));
}

function refuseIfLeft(names: readonly string[]): void {
  if (names.length > 0) throw new Error(`This browser does not let go of: ${names.join(", ")}.`);
}
