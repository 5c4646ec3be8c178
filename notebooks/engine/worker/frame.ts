import type { FromFrame, ToFrame } from "../types/index.ts";
import { LongWorkRelay } from "./long-work-relay.ts";

/**
 * The script of the hidden frame. It is ours and holds no cell's code: all it does is make workers
 * and end them. It starts nowhere but as a sandboxed frame of its page; opened in a tab of its own
 * it would have the site's real origin together with the right to compile.
 */
export function startFrame(): void {
  if (self.origin !== "null" || parent === self)
    throw new Error("This page only works as the closed frame of a notebook.");

  const tell = (message: FromFrame) => parent.postMessage(message, "*");
  let room: Worker | undefined;
  const relay = new LongWorkRelay({
    needsCode: () => tell({ kind: "needs-long-work" }),
    answer: (message) => room?.postMessage(message),
    makeWorker,
  });

  function end(): void {
    room?.terminate();
    room = undefined;
    relay.end();
  }

  function start(code: readonly string[], port: MessagePort): void {
    end();
    const made = makeWorker(code);
    room = made;
    made.onmessage = (event: MessageEvent<unknown>) => {
      if (room === made) relay.asked(event.data);
    };
    made.onerror = (event) => {
      // The page says it in words; the browser's console need not.
      event.preventDefault();
      if (room === made) tell({ kind: "room-broke", message: String(event.message) });
    };
    made.postMessage({ kind: "port" }, [port]);
  }

  addEventListener("message", (event: MessageEvent<ToFrame>) => {
    if (event.source !== parent) return;
    const message = event.data;
    const port = event.ports[0];
    if (message.kind === "start" && port) start(message.code, port);
    if (message.kind === "end") end();
    if (message.kind === "ping") tell({ kind: "alive" });
    if (message.kind === "long-work") relay.ready(message.code);
    if (message.kind === "solver") relay.hasSolver(message.solver);
    if (message.kind === "stop-work")
      relay.stopAll("It was stopped. Change anything it takes to start it again.");
  });
  tell({ kind: "frame-ready" });
}

function makeWorker(code: readonly string[]): Worker {
  const blob = new Blob(
    code.flatMap((script) => [script, "\n;\n"]),
    { type: "text/javascript" },
  );
  const address = URL.createObjectURL(blob);
  const worker = new Worker(address);
  URL.revokeObjectURL(address);
  return worker;
}
