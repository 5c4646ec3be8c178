import type { CancelSignal, Host } from "../types/index.ts";
import { Stopped } from "./failures.ts";

/** One run of a cell: what it may still be doing is ended when the run is superseded or stopped. */
export interface Run {
  /** A stand-in for a listed function: asks for the work and gives a promise of its answer. */
  stand(name: string): (...data: readonly unknown[]) => Promise<unknown>;
  /** How many calls of this run are being worked on. */
  readonly working: number;
  /** Ends what the run is still doing; its calls fail as stopped. */
  end(): void;
}

export interface RunReports {
  progress(words: string, fraction: number | undefined): void;
  /** A call has begun (1) or ended (-1). */
  calls(more: 1 | -1): void;
}

export function beginRun(host: Host, reports: RunReports): Run {
  const ending = new Ending();
  let working = 0;

  function ask(name: string, data: readonly unknown[]): Promise<unknown> {
    const work = host.longWork[name];
    if (work === undefined) throw new TypeError(`${name} is not a function`);
    if (ending.signal.aborted) throw new Stopped();
    const control = {
      signal: ending.signal,
      progress(words: string, fraction?: number) {
        if (!ending.signal.aborted) reports.progress(words, fraction);
      },
    };
    working += 1;
    reports.calls(1);
    return Promise.race([work(data, control), ending.stopped]).finally(() => {
      working -= 1;
      reports.calls(-1);
    });
  }

  return {
    stand:
      (name) =>
      async (...data) =>
        ask(name, data),
    get working() {
      return working;
    },
    end: ending.end,
  };
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
