import type { FromFrame, FromRoom, ToFrame, ToRoom } from "../types/index.ts";
import { RateGate, readMessage } from "./receive.ts";

/** The scripts the workers are made of; all come from the page's own site. */
export interface RoomCode {
  /** The script of the closed room. */
  room(): Promise<string>;
  /** The script of the worker for long work; asked for when a cell first needs it. */
  longWork(): Promise<string>;
  /** The solver's bytes; asked for with `longWork`. */
  solver(): Promise<ArrayBuffer>;
  /** Larger parts by the name cells call them by (`aq`): sent only where a formula names one. */
  readonly extras: Readonly<Record<string, () => Promise<string>>>;
}

export interface RoomLinkOptions {
  readonly engineUrl: string;
  readonly code: RoomCode;
  received(message: FromRoom): void;
  /** The room cannot go on: its script broke, or it flooded the page. */
  broke(why: string): void;
}

/**
 * The page's end of the closed room: makes the hidden frame once, starts rooms in it, ends them.
 * Whatever comes back is checked before anybody sees it.
 */
export class RoomLink {
  private readonly options: RoomLinkOptions;
  private readonly frame: HTMLIFrameElement;
  private readonly frameReady: Promise<void>;
  private port: MessagePort | undefined;
  private prepared: Promise<void> | undefined;

  constructor(options: RoomLinkOptions) {
    this.options = options;
    this.frame = document.createElement("iframe");
    this.frame.setAttribute("sandbox", "allow-scripts");
    this.frame.hidden = true;
    this.frame.title = "The closed room";
    this.frame.src = options.engineUrl;
    this.frameReady = new Promise((ready) => {
      addEventListener("message", (event: MessageEvent<FromFrame>) => {
        if (event.source !== this.frame.contentWindow) return;
        if (event.data?.kind === "frame-ready") ready();
        else this.heard(event.data);
      });
    });
    // Outside the body: what draws the page may empty that.
    document.documentElement.append(this.frame);
  }

  /** Makes a room in advance, while the documents are still being read. */
  prepare(): void {
    this.prepared = this.make([]);
    // Whoever starts it hears what went wrong.
    this.prepared.catch(() => undefined);
  }

  /** Starts a new room, ending one that runs, and sends it these messages in their order. */
  async start(extras: readonly string[], messages: readonly ToRoom[]): Promise<void> {
    const { prepared } = this;
    this.prepared = undefined;
    await (prepared && extras.length === 0 ? prepared : this.make(extras));
    for (const message of messages) this.send(message);
  }

  private async make(extras: readonly string[]): Promise<void> {
    const parts = extras.map((name) => this.options.code.extras[name]?.() ?? "");
    const [room, ...more] = await Promise.all([this.options.code.room(), ...parts]);
    await Promise.race([this.frameReady, tooLate()]);
    const channel = new MessageChannel();
    this.listen(channel.port1);
    this.tellFrame({ kind: "start", code: [...more, room] }, [channel.port2]);
  }

  private listen(port: MessagePort): void {
    const gate = new RateGate();
    this.port?.close();
    this.port = port;
    port.onmessage = ({ data }) => {
      if (this.port !== port) return;
      if (!gate.admits(performance.now())) {
        this.end();
        this.options.broke("It sent more messages than a page can take.");
        return;
      }
      const message = readMessage(data);
      if (message) this.options.received(message);
    };
  }

  send(message: ToRoom): void {
    this.port?.postMessage(message);
  }

  /** Ends the room at once, whatever it is doing. */
  end(): void {
    this.port?.close();
    this.port = undefined;
    this.tellFrame({ kind: "end" });
  }

  /** Ends the room and takes its frame away. */
  remove(): void {
    this.end();
    this.frame.remove();
  }

  stopLongWork(): void {
    this.tellFrame({ kind: "stop-work" });
  }

  private heard(message: FromFrame | undefined): void {
    if (message?.kind === "needs-long-work")
      // Without its code the work fails in words, instead of being waited for without end.
      this.sendLongWork().catch(() => this.stopLongWork());
    if (message?.kind === "room-broke") this.options.broke(String(message.message).slice(0, 500));
  }

  private async sendLongWork(): Promise<void> {
    const { code } = this.options;
    const sent = async (message: Promise<ToFrame>) => this.tellFrame(await message);
    await Promise.all([
      sent(code.longWork().then((script) => ({ kind: "long-work", code: script }))),
      sent(code.solver().then((solver) => ({ kind: "solver", solver }))),
    ]);
  }

  private tellFrame(message: ToFrame, transfer: Transferable[] = []): void {
    // The frame's origin is opaque, so no other target can be named; the source is checked there.
    this.frame.contentWindow?.postMessage(message, "*", transfer);
  }
}

/** A frame that never says it is ready must not be waited for without end. */
function tooLate(): Promise<never> {
  return new Promise((_, reject) => {
    setTimeout(() => reject(new Error("The closed room did not open within 15 seconds.")), 15_000);
  });
}
