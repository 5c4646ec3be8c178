import { createSocket } from "node:dgram";
import { createServer, type Server, type Socket } from "node:net";
import type { Aim } from "./read-probes.ts";

/** What one probe was heard by. */
export type Heard = "http" | "tcp" | "udp" | "dns" | "value" | "page";

/** Names that only our probes ask for: no machine has them. */
export const domain = "ways-out.invalid";

/**
 * Listeners of one probe: a port that takes connections and requests, and the same port for
 * datagrams, as connections over UDP and questions to STUN servers are.
 */
export class Listener {
  readonly heard = new Set<Heard>();
  readonly aim: Aim;
  readonly #server: Server;
  readonly #datagrams: ReturnType<typeof createSocket>;
  readonly #open = new Set<Socket>();

  private constructor(name: string, server: Server, datagrams: ReturnType<typeof createSocket>) {
    this.#server = server;
    this.#datagrams = datagrams;
    const at = server.address();
    const port = typeof at === "object" && at !== null ? at.port : 0;
    this.aim = { at: `127.0.0.1:${port}`, host: `${name}.${domain}:${port}` };
    server.on("connection", (socket) => this.#connected(socket));
    datagrams.on("message", () => this.heard.add("udp"));
  }

  /** Listens on a port that is free for both. */
  static async open(name: string): Promise<Listener> {
    for (let tries = 0; tries < 20; tries += 1) {
      const server = createServer();
      await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
      const at = server.address();
      const datagrams = createSocket("udp4");
      const bound = await new Promise<boolean>((done) => {
        datagrams.once("error", () => done(false));
        datagrams.bind(typeof at === "object" && at ? at.port : 0, "127.0.0.1", () => done(true));
      });
      if (bound) return new Listener(name, server, datagrams);
      server.close();
    }
    throw new Error("no port is free for both kinds of listener");
  }

  #connected(socket: Socket): void {
    this.#open.add(socket);
    this.heard.add("tcp");
    socket.on("error", () => undefined);
    socket.on("data", (data) => {
      if (/^(GET|POST|HEAD|PUT|OPTIONS|PING) /.test(data.toString("latin1"))) {
        this.heard.add("http");
        socket.end(
          "HTTP/1.1 200 OK\r\naccess-control-allow-origin: *\r\ncontent-type: text/plain\r\ncontent-length: 0\r\n\r\n",
        );
      }
    });
  }

  close(): void {
    for (const socket of this.#open) socket.destroy();
    this.#server.close();
    this.#datagrams.close();
  }
}

/** Listeners for all probes. */
export async function listenFor(names: readonly string[]): Promise<ReadonlyMap<string, Listener>> {
  const all = new Map<string, Listener>();
  for (const name of names) all.set(name, await Listener.open(name));
  return all;
}
