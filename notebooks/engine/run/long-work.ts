import type { CancelSignal, Host, LongWorkControl } from "../types/index.ts";
import { Call } from "./call.ts";
import { Stopped } from "./failures.ts";
import { Steps } from "./steps.ts";

/** One run of a cell: what it may still be doing is ended when the run is superseded or stopped. */
export interface Run {
  /** A stand-in for a listed function: asks for the work and gives a promise of its final result. */
  stand(name: string): (...data: readonly unknown[]) => Promise<unknown>;
  /**
   * Where this is the very promise of a stand-in, each of its results one after another; any other
   * value is given back.
   */
  stepwise(given: unknown): unknown;
  /** How many calls of this run are being worked on. */
  readonly working: number;
  /** Whether what it gave step by step may still get better. */
  readonly improving: boolean;
  /** Whether somebody stopped a call of it, and the best result so far stands for the final one. */
  readonly cutShort: boolean;
  /** Ends what the run is still doing: it is superseded, and nobody hears more of it. */
  end(): void;
  /** Ends what the run is still doing: its calls give their best so far, or fail as stopped. */
  stop(): void;
}

export interface RunReports {
  progress(words: string, fraction: number | undefined): void;
  /** A call has begun (1) or ended (-1). */
  calls(more: 1 | -1): void;
  /** Gives a promise that settles after so many milliseconds. */
  wait(ms: number): Promise<void>;
  /** Which work goes before another: the lower. */
  order(): number;
  /** Whether better results are of use before the final one. */
  readonly improving: boolean;
}

export function beginRun(host: Host, reports: RunReports): Run {
  return new LiveRun(host, reports);
}

class LiveRun implements Run {
  readonly #host: Host;
  readonly #reports: RunReports;
  readonly #ending = new Ending();
  readonly #calls = new WeakMap<object, Call>();
  #steps: Steps | undefined;
  #superseded = false;
  working = 0;
  cutShort = false;

  constructor(host: Host, reports: RunReports) {
    this.#host = host;
    this.#reports = reports;
  }

  get improving(): boolean {
    return this.#steps !== undefined && !this.#steps.ended;
  }

  stand(name: string): (...data: readonly unknown[]) => Promise<unknown> {
    return (...data) => {
      const call = new Call((made) => this.#worked(name, data, made));
      this.#calls.set(call.result, call);
      return call.result;
    };
  }

  stepwise(given: unknown): unknown {
    const call = given instanceof Promise ? this.#calls.get(given) : undefined;
    if (call === undefined || !this.#reports.improving) return given;
    this.#steps = new Steps(call, this.#reports.wait);
    return this.#steps;
  }

  async #worked(name: string, data: readonly unknown[], call: Call): Promise<unknown> {
    const work = this.#host.longWork[name];
    if (work === undefined) throw new TypeError(`${name} is not a function`);
    if (this.#ending.signal.aborted) throw new Stopped();
    this.working += 1;
    this.#reports.calls(1);
    try {
      return await Promise.race([work(data, this.#control(call)), this.#ending.stopped]);
    } catch (error) {
      const { best } = call;
      if (best === undefined || this.#superseded || !isStop(error)) throw error;
      this.cutShort = true;
      return best.value;
    } finally {
      this.working -= 1;
      this.#reports.calls(-1);
    }
  }

  #control(call: Call): LongWorkControl {
    const { signal } = this.#ending;
    const { progress, order, improving } = this.#reports;
    return {
      signal,
      order: order(),
      progress(words, fraction) {
        if (!signal.aborted) progress(words, fraction);
      },
      ...(improving ? { improved: (value: unknown) => call.improved(value) } : {}),
    };
  }

  end(): void {
    this.#superseded = true;
    this.#ending.end();
  }

  stop(): void {
    this.#ending.end();
  }
}

/** Whether somebody stopped it: here, or where it is worked out. */
function isStop(error: unknown): boolean {
  if (error instanceof Stopped) return true;
  return error instanceof Error && (error as { stopped?: unknown }).stopped === true;
}

/** The end of a run, as a signal for the work and as a promise for whoever waits for it. */
class Ending {
  readonly signal: CancelSignal;
  readonly stopped: Promise<never>;
  readonly end: () => void;

  constructor() {
    const listeners: (() => void)[] = [];
    let aborted = false;
    let fail: (reason: unknown) => void = () => {};
    this.stopped = new Promise<never>((_, reject) => {
      fail = reject;
    });
    this.stopped.catch(() => {});
    this.signal = {
      get aborted() {
        return aborted;
      },
      addEventListener: (_type, listener) => {
        listeners.push(listener);
      },
    };
    this.end = () => {
      if (aborted) return;
      aborted = true;
      fail(new Stopped());
      for (const listener of listeners) listener();
    };
  }
}
