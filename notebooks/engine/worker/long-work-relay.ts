import type { WorkMessage } from "../types/index.ts";
import { type Ask, readRequest, type SessionWork, type WorkAnswer } from "./work-message.ts";

interface RelayOptions {
  needsCode(): void;
  answer(message: SessionWork<WorkMessage>): void;
  makeWorker(code: readonly string[]): Worker;
}

/** More requests than a notebook has use for; what comes above is refused. */
const mostWaiting = 64;

/**
 * Stands between the room and the worker for long work. Requests are worked out one after another;
 * one that is cancelled while it runs ends the worker, because a solver deep in its search hears
 * nothing, and a new worker takes the next.
 */
export class LongWorkRelay {
  private waiting: SessionWork<Ask>[] = [];
  private running: SessionWork<Ask> | undefined;
  private worker: Worker | undefined;
  private parts: { readonly code: string; readonly solver: ArrayBuffer } | undefined;
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
      this.next();
    }
  }

  /** The code and the solver have come. */
  ready(code: string, solver: ArrayBuffer): void {
    this.parts = { code, solver };
    this.next();
  }

  stopAll(message: string): void {
    const stopped = this.running ? [this.running, ...this.waiting] : this.waiting;
    this.end();
    for (const request of stopped) this.fail(request, message);
  }

  end(): void {
    this.waiting = [];
    this.dropWorker();
  }

  private cancel(session: number, id: number): void {
    const is = (request: SessionWork<Ask>) => request.session === session && request.work.id === id;
    this.waiting = this.waiting.filter((request) => !is(request));
    if (this.running && is(this.running)) this.dropWorker();
    this.next();
  }

  private dropWorker(): void {
    if (this.running) {
      this.worker?.terminate();
      this.worker = undefined;
    }
    this.running = undefined;
  }

  private next(): void {
    if (this.running || this.waiting.length === 0) return;
    if (!this.parts) {
      if (!this.asking) this.options.needsCode();
      this.asking = true;
      return;
    }
    this.running = this.waiting.shift();
    this.worker ??= this.start(this.parts);
    this.worker.postMessage({ kind: "work", work: this.running?.work });
  }

  private start({ code, solver }: { code: string; solver: ArrayBuffer }): Worker {
    const worker = this.options.makeWorker([code]);
    worker.onmessage = (event: MessageEvent<WorkAnswer>) => this.answered(event.data);
    worker.onerror = (event) => {
      const broken = this.running;
      this.dropWorker();
      if (broken) this.fail(broken, `the worker for long work broke: ${event.message}`);
      this.next();
    };
    // A copy: the bytes are needed again whenever a worker is ended.
    worker.postMessage({ kind: "solver", solver });
    return worker;
  }

  private answered(work: WorkAnswer): void {
    const { running } = this;
    if (!running || work.id !== running.work.id) return;
    this.options.answer({ kind: "work", session: running.session, work });
    if (work.step === "progress") return;
    this.running = undefined;
    this.next();
  }

  private fail({ session, work: { id } }: SessionWork<Ask>, message: string): void {
    this.options.answer({ kind: "work", session, work: { step: "failed", id, message } });
  }
}
