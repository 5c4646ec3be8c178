import type { FromFrame, FromRoom, ToFrame, ToRoom } from "../types/index.ts";
import { FloodGate } from "./flood-gate.ts";
import { budgetOfOne, readMessage } from "./receive.ts";
import { Watchdog } from "./watchdog.ts";

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
  /**
   * The browser ended the frame and the room with it, as it does where memory runs out. A new room
   * can be started. Default: `broke`, in words.
   */
  died?(): void;
}

/** A frame that gives no sign for so long (milliseconds) is not there any more: it never runs cells. */
const longestFrameSilence = 6_000;

/**
 * The page's end of the closed room: makes the hidden frame, starts rooms in it, ends them. Whatever
 * comes back is checked before anybody sees it. A room that is ended goes with its frame: what it
 * held of memory is free at once, and a frame that the browser has ended is replaced.
 */
export class RoomLink {
  private readonly options: RoomLinkOptions;
  private frame: HTMLIFrameElement;
  private frameReady: Promise<void>;
  private heardReady: () => void = () => undefined;
  private port: MessagePort | undefined;
  private prepared: Promise<boolean> | undefined;
  private readonly pulse: Watchdog;
  private readonly onMessage = (event: MessageEvent<FromFrame>) => {
    if (event.source === this.frame.contentWindow) this.heard(event.data);
  };

  constructor(options: RoomLinkOptions) {
    this.options = options;
    addEventListener("message", this.onMessage);
    this.pulse = new Watchdog({
      ping: () => this.tellFrame({ kind: "ping" }),
      silent: () => undefined,
      back: () => undefined,
      gone: () => this.died(),
      now: () => performance.now(),
      every: ticking,
      endAfter: longestFrameSilence,
    });
    [this.frame, this.frameReady] = this.newFrame();
  }

  private newFrame(): [HTMLIFrameElement, Promise<void>] {
    const frame = document.createElement("iframe");
    // An answer that comes sandboxed by itself (see `engineUrl`) is refused by the frame's own script
    // where it is not.
    if (!isSealed(this.options.engineUrl)) frame.setAttribute("sandbox", "allow-scripts");
    frame.hidden = true;
    frame.title = "The closed room";
    frame.src = this.options.engineUrl;
    const ready = new Promise<void>((done) => {
      this.heardReady = done;
    });
    // Outside the body: what draws the page may empty that.
    document.documentElement.append(frame);
    return [frame, ready];
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
    const made = await (prepared && extras.length === 0 ? prepared : this.make(extras));
    if (made) for (const message of messages) this.send(message);
  }

  /** Gives whether there is a room now: not where it was ended before it had begun. */
  private async make(extras: readonly string[]): Promise<boolean> {
    const { frame } = this;
    const parts = extras.map((name) => this.options.code.extras[name]?.() ?? "");
    const [room, ...more] = await Promise.all([this.options.code.room(), ...parts]);
    await Promise.race([this.frameReady, tooLate()]);
    if (this.frame !== frame) return false;
    const channel = new MessageChannel();
    this.listen(channel.port1);
    this.tellFrame({ kind: "start", code: [...more, room] }, [channel.port2]);
    this.pulse.start();
    return true;
  }

  private listen(port: MessagePort): void {
    const gate = new FloodGate();
    this.port?.close();
    this.port = port;
    port.onmessage = ({ data }) => {
      if (this.port !== port) return;
      const budget = budgetOfOne();
      const admitted = gate.admits(performance.now());
      const message = admitted ? readMessage(data, budget) : undefined;
      if (!admitted || !gate.took(budget.spent, message !== undefined)) this.flooded();
      else if (message) this.options.received(message);
    };
  }

  private flooded(): void {
    this.end();
    this.options.broke("It sent more than a page can take, and was ended.");
  }

  private died(): void {
    this.end();
    const { died, broke } = this.options;
    if (died) died();
    else broke("The browser ended it: it may have taken more memory than there is.");
  }

  send(message: ToRoom): void {
    this.port?.postMessage(message);
  }

  /** Ends the room at once, whatever it is doing. */
  end(): void {
    this.takeAway();
    [this.frame, this.frameReady] = this.newFrame();
  }

  /** Ends the room and takes its frame away. */
  remove(): void {
    this.takeAway();
    removeEventListener("message", this.onMessage);
  }

  private takeAway(): void {
    this.pulse.stop();
    this.port?.close();
    this.port = undefined;
    this.prepared = undefined;
    // The worker is ended by word too: it may outlive its frame by seconds.
    this.tellFrame({ kind: "end" });
    this.frame.remove();
    // Whoever waits for it waits no longer.
    this.heardReady();
  }

  stopLongWork(): void {
    this.tellFrame({ kind: "stop-work" });
  }

  private heard(message: FromFrame | undefined): void {
    this.pulse.sign();
    if (message?.kind === "frame-ready") this.heardReady();
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

function ticking(milliseconds: number, tick: () => void): () => void {
  const timer = setInterval(tick, milliseconds);
  return () => clearInterval(timer);
}

/** A frame that never says it is ready must not be waited for without end. */
function tooLate(): Promise<never> {
  return new Promise((_, reject) => {
    setTimeout(() => reject(new Error("The closed room did not open within 15 seconds.")), 15_000);
  });
}

/** Whether whoever serves the frame sandboxes it by the header of its answer. */
function isSealed(address: string): boolean {
  return new URL(address, location.href).searchParams.has("sealed");
}
