/** What the watchdog is told and does; the clock and the timer are passed in. */
export interface WatchdogOptions {
  ping(): void;
  /** No sign for `reportAfter`: said once for each silence. */
  silent(): void;
  /** A sign came after all. */
  back(): void;
  /** No sign for `endAfter`: the room is to be ended. */
  gone(): void;
  now(): number;
  /** Calls `tick` again and again until the function it gives is called. */
  every(milliseconds: number, tick: () => void): () => void;
  readonly reportAfter?: number;
  readonly endAfter?: number;
}

const step = 250;

/**
 * Watches that the closed room gives signs of life. It counts its own ticks instead of trusting the
 * clock alone: after the machine has slept, the hours count as one tick.
 */
export class Watchdog {
  private readonly options: WatchdogOptions;
  private stopTicking: (() => void) | undefined;
  private waited = 0;
  private last = 0;
  private awaiting = false;
  private reported = false;

  constructor(options: WatchdogOptions) {
    this.options = options;
  }

  start(): void {
    this.stop();
    this.last = this.options.now();
    this.stopTicking = this.options.every(step, () => this.tick());
  }

  stop(): void {
    this.stopTicking?.();
    this.stopTicking = undefined;
    this.waited = 0;
    this.awaiting = false;
    this.reported = false;
  }

  /** Anything came from the room. */
  sign(): void {
    this.waited = 0;
    this.awaiting = false;
    if (this.reported) this.options.back();
    this.reported = false;
  }

  private tick(): void {
    const { options } = this;
    const now = options.now();
    const passed = Math.min(now - this.last, 2 * step);
    this.last = now;
    if (!this.awaiting) {
      this.awaiting = true;
      this.waited = 0;
      options.ping();
      return;
    }
    this.waited += passed;
    if (this.waited >= (options.endAfter ?? 15_000)) {
      this.stop();
      options.gone();
    } else if (!this.reported && this.waited >= (options.reportAfter ?? 2_000)) {
      this.reported = true;
      options.silent();
    }
  }
}
