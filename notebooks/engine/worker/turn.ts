/** What of the platform is needed here; a worker has the one, Node the other too. */
interface Platform {
  readonly MessageChannel?: new () => {
    readonly port1: { onmessage: (() => void) | null };
    readonly port2: { postMessage(message: unknown): void };
  };
  readonly setImmediate?: (callback: () => void) => unknown;
}

/**
 * Makes a function that gives the event loop one turn: messages that have come are heard before its
 * promise settles. A timer would be held back by some milliseconds in a browser, so it is a message
 * there; in Node, where an open port would keep the process from ending, the loop's own next turn.
 */
export function turnGiver(platform: Platform = globalThis as unknown as Platform) {
  const { MessageChannel, setImmediate } = platform;
  if (setImmediate) return () => new Promise<void>((done) => setImmediate(done));
  if (!MessageChannel) throw new Error("there is nothing here to give the event loop a turn by");
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  return () =>
    new Promise<void>((done) => {
      waiting.push(done);
      port2.postMessage(null);
    });
}
