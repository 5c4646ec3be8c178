import type { WorkMessage } from "../types/index.ts";
import {
  type Ask,
  readRequest,
  type SessionWork,
  type ToLongWork,
  type WorkAnswer,
} from "./work-message.ts";

interface RelayOptions {
  needsCode(): void;
  answer(message: SessionWork<WorkMessage>): void;
  makeWorker(code: readonly string[]): Worker;
  /** Calls back after so many milliseconds, unless the function it gives is called before. */
  after?(ms: number, call: () => void): () => void;
}

/** More requests than a notebook has use for; what comes above is refused. */
const mostWaiting = 64;

/**
 * How long cancelled work may take to hear of it, in milliseconds. The library hears within some
 * twenty; a solver deep in its search hears nothing, and stopping must take effect within half a
 * second.
 */
const grace = 200;

/**
 * Stands between the room and the worker for long work. Requests are worked out one after another,
 * by their order; one that is under way when a lower one comes makes room for it and begins anew
 * after it, for which what the worker remembers helps. One that is cancelled while it runs is told so, and where it does not hear, its worker is ended
 * and a new one takes the next. Whoever asked hears no more of it either way.
 */
export class LongWorkRelay {
  private waiting: SessionWork<Ask>[] = [];
  private running: SessionWork<Ask> | undefined;
  /** The request that was cancelled and has not come to its end. */
  private leaving: { readonly id: number; readonly keepWaiting: () => void } | undefined;
  private worker: Worker | undefined;
  private code: string | undefined;
  private solver: ArrayBuffer | undefined;
  private asking = false;
  private readonly options: RelayOptions;

  constructor(options: RelayOptions) {
    this.options = options;
  }

  /** Takes what the room posted, well-formed or not. */
  asked(data: unknown): void {
    const request = readRequest(data);
    if (!request) return;
    const { session, work } = request;
    if (work.step === "cancel") this.cancel(session, work.id);
    else this.take({ kind: "work", session, work });
  }

  private take(request: SessionWork<Ask>): void {
    if (this.waiting.length >= mostWaiting)
      this.fail(request, "too much long work was asked for at once");
    else {
      this.waiting.push(request);
      this.giveWay(request);
      this.next();
    }
  }

  private giveWay({ work: { order } }: SessionWork<Ask>): void {
    const { running } = this;
    if (!running || running.work.order <= order) return;
    this.waiting.push(running);
    this.leave();
  }

  /** The code has come; work can begin. */
  ready(code: string): void {
    this.code = code;
    this.next();
  }

  /** The solver has come: whoever waits for it goes on. */
  hasSolver(solver: ArrayBuffer): void {
    this.solver = solver;
    this.post({ kind: "solver", solver });
  }

  /** Whoever asked for work hears at once that it was stopped; what it had found by then stands. */
  stopAll(message: string): void {
    const stopped = this.running ? [this.running, ...this.waiting] : this.waiting;
    this.waiting = [];
    this.leave();
    for (const { session, work } of stopped)
      this.options.answer({
        kind: "work",
        session,
        work: { step: "stopped", id: work.id, message },
      });
  }

  end(): void {
    this.waiting = [];
    this.dropWorker();
  }

  private cancel(session: number, id: number): void {
    const is = (request: SessionWork<Ask>) => request.session === session && request.work.id === id;
    this.waiting = this.waiting.filter((request) => !is(request));
    if (this.running && is(this.running)) this.leave();
    this.next();
  }

  /** Tells the worker to leave off; one that does not hear of it is ended. */
  private leave(): void {
    if (!this.running) return;
    const { id } = this.running.work;
    this.running = undefined;
    this.post({ kind: "cancel", id });
    const { after = afterTime } = this.options;
    const keepWaiting = after(grace, () => {
      this.dropWorker();
      this.next();
    });
    this.leaving = { id, keepWaiting };
  }

  private left(): void {
    this.leaving?.keepWaiting();
    this.leaving = undefined;
  }

  private dropWorker(): void {
    if (this.running || this.leaving) {
      this.worker?.terminate();
      this.worker = undefined;
    }
    this.left();
    this.running = undefined;
  }

  private next(): void {
    if (this.running || this.leaving || this.waiting.length === 0) return;
    if (this.code === undefined) {
      if (!this.asking) this.options.needsCode();
      this.asking = true;
      return;
    }
    const first = this.waiting.reduce((a, b) => (b.work.order < a.work.order ? b : a));
    this.waiting = this.waiting.filter((request) => request !== first);
    this.running = first;
    this.worker ??= this.start(this.code);
    this.post({ kind: "work", work: first.work });
  }

  private post(message: ToLongWork): void {
    this.worker?.postMessage(message);
  }

  private start(code: string): Worker {
    const worker = this.options.makeWorker([code]);
    worker.onmessage = (event: MessageEvent<WorkAnswer>) => {
      if (this.worker === worker) this.answered(event.data);
    };
    worker.onerror = (event) => {
      if (this.worker !== worker) return;
      const broken = this.running;
      this.dropWorker();
      worker.terminate();
      this.worker = undefined;
      if (broken) this.fail(broken, `the worker for long work broke: ${event.message}`);
      this.next();
    };
    // A copy: the bytes are needed again whenever a worker is ended.
    const { solver } = this;
    if (solver) worker.postMessage({ kind: "solver", solver } satisfies ToLongWork);
    return worker;
  }

  private answered(work: WorkAnswer): void {
    const over = work.step !== "progress" && work.step !== "improved";
    if (this.leaving) {
      if (over && work.id === this.leaving.id) this.left();
      this.next();
      return;
    }
    const { running } = this;
    if (!running || work.id !== running.work.id) return;
    this.options.answer({ kind: "work", session: running.session, work });
    if (!over) return;
    this.running = undefined;
    this.next();
  }

  private fail({ session, work: { id } }: SessionWork<Ask>, message: string): void {
    this.options.answer({ kind: "work", session, work: { step: "failed", id, message } });
  }
}

function afterTime(ms: number, call: () => void): () => void {
  const timer = setTimeout(call, ms);
  return () => clearTimeout(timer);
}
