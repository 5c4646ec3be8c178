import type { LongWork, LongWorkControl } from "../types/index.ts";
import { notPlain, type Odd } from "./plain-data.ts";
import type { Ask, Cancel, SessionWork, WorkAnswer } from "./work-message.ts";

interface Waiting {
  readonly control: LongWorkControl;
  done(value: unknown): void;
  failed(error: Error): void;
}

/** The error of long work that failed elsewhere; it carries the problems it came with. */
export class LongWorkFailed extends Error {
  override readonly name = "LongWorkFailed";
  readonly problems: unknown;

  constructor(message: string, problems: unknown) {
    super(message);
    this.problems = problems;
  }
}

/** The error of long work that the reader stopped: what it had found by then stands. */
export class LongWorkStopped extends Error {
  override readonly name = "LongWorkStopped";
  readonly stopped = true;
}

/**
 * The room's stand-ins for long work: each call is posted to the frame, which has it worked out in
 * another worker, and gives a promise of the answer.
 */
export class RemoteWork {
  private readonly waiting = new Map<number, Waiting>();
  private readonly post: (message: SessionWork<Ask | Cancel>) => void;
  private count = 0;

  constructor(post: (message: SessionWork<Ask | Cancel>) => void) {
    this.post = post;
  }

  /** The stand-in for one listed function. */
  stand(name: string): LongWork {
    return (data, control) =>
      new Promise((done, failed) => {
        const odd = notPlain(data);
        if (odd !== undefined) throw new TypeError(refusal(name, odd));
        this.count += 1;
        const id = this.count;
        this.waiting.set(id, { control, done, failed });
        control.signal.addEventListener("abort", () => this.cancel(id));
        const { order = 0 } = control;
        this.post({ kind: "work", session: 0, work: { step: "ask", id, name, data, order } });
      });
  }

  /** An answer from the frame. */
  answered(work: WorkAnswer): void {
    const waiting = this.waiting.get(work.id);
    if (!waiting) return;
    if (work.step === "progress") {
      waiting.control.progress(work.words, work.fraction);
      return;
    }
    if (work.step === "improved") {
      waiting.control.improved?.(work.value);
      return;
    }
    this.waiting.delete(work.id);
    if (work.step === "done") waiting.done(work.value);
    else if (work.step === "stopped") waiting.failed(new LongWorkStopped(work.message));
    else waiting.failed(new LongWorkFailed(work.message, work.problems));
  }

  private cancel(id: number): void {
    if (!this.waiting.delete(id)) return;
    this.post({ kind: "work", session: 0, work: { step: "cancel", id } });
  }
}

function refusal(name: string, { what, path }: Odd): string {
  const where = path === "" ? "" : `, at ${path}`;
  return `${name} is worked out apart and takes plain data only; it was handed ${what}${where}. Hand it the values themselves.`;
}
