import { describe, expect, it } from "vitest";
import { LongWorkRelay } from "../../../notebooks/engine/worker/long-work-relay.ts";

class FakeWorker {
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: ((event: { message: string }) => void) | null = null;
  readonly got: unknown[] = [];
  ended = false;
  postMessage(message: unknown) {
    this.got.push(message);
  }
  terminate() {
    this.ended = true;
  }
  get kinds() {
    return this.got.map((one) => (one as { kind: string }).kind);
  }
  get asked() {
    return this.got.filter((one) => (one as { kind: string }).kind === "work");
  }
}

function relay() {
  const workers: FakeWorker[] = [];
  const answers: unknown[] = [];
  const timers: { ms: number; ring: (() => void) | undefined }[] = [];
  let needed = 0;
  const made = new LongWorkRelay({
    after(ms, call) {
      const timer: (typeof timers)[number] = { ms, ring: call };
      timers.push(timer);
      return () => {
        timer.ring = undefined;
      };
    },
    needsCode: () => {
      needed += 1;
    },
    answer: (message) => answers.push(message),
    makeWorker: () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker as unknown as Worker;
    },
  });
  const ask = (id: number, { session = 0, order = 0 } = {}) =>
    made.asked({ kind: "work", session, work: { step: "ask", id, name: "plan", data: [], order } });
  const cancel = (id: number) =>
    made.asked({ kind: "work", session: 0, work: { step: "cancel", id } });
  const say = (data: unknown, at = workers.length - 1) => workers[at]?.onmessage?.({ data });
  return { made, workers, answers, timers, ask, cancel, say, needed: () => needed };
}

describe("the relay of long work", () => {
  it("asks for the code once, when the first work comes, and starts when it is there", () => {
    const { made, workers, ask, needed } = relay();
    ask(1);
    ask(2);
    expect(needed()).toBe(1);
    expect(workers).toHaveLength(0);
    made.ready("code");
    expect(workers).toHaveLength(1);
    expect(workers[0]?.asked).toHaveLength(1);
  });

  it("hands the solver to the worker when it comes, and to each later one at once", () => {
    const { made, workers, timers, ask, cancel } = relay();
    made.ready("code");
    ask(1);
    expect(workers[0]?.kinds).toEqual(["work"]);
    made.hasSolver(new ArrayBuffer(1));
    expect(workers[0]?.kinds).toEqual(["work", "solver"]);
    cancel(1);
    timers.at(-1)?.ring?.();
    ask(2);
    expect(workers[1]?.kinds).toEqual(["solver", "work"]);
  });

  it("works one after another and passes answers on with their session", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code");
    ask(1, { session: 7 });
    ask(2, { session: 7 });
    workers[0]?.onmessage?.({ data: { step: "done", id: 1, value: 34 } });
    expect(answers).toEqual([
      { kind: "work", session: 7, work: { step: "done", id: 1, value: 34 } },
    ]);
    expect(workers[0]?.asked).toHaveLength(2);
    expect(workers).toHaveLength(1);
  });

  it("passes on each better result, and takes the next when the last has come", () => {
    const { made, workers, answers, ask, say } = relay();
    made.ready("code");
    ask(1);
    ask(2);
    say({ step: "improved", id: 1, value: 12 });
    say({ step: "improved", id: 1, value: 11 });
    expect(workers[0]?.asked).toHaveLength(1);
    say({ step: "done", id: 1, value: 10 });
    expect(answers.map((one) => (one as { work: unknown }).work)).toEqual([
      { step: "improved", id: 1, value: 12 },
      { step: "improved", id: 1, value: 11 },
      { step: "done", id: 1, value: 10 },
    ]);
    expect(workers[0]?.asked).toHaveLength(2);
  });

  it("takes what waits by its order, and what is of one order as it came", () => {
    const { made, workers, ask, say } = relay();
    ask(1, { order: 5 });
    ask(2, { order: 3 });
    ask(3, { order: 3 });
    ask(4, { order: 9 });
    made.ready("code");
    for (const id of [2, 3, 1, 4]) say({ step: "done", id, value: id });
    const ids = workers[0]?.asked.map((one) => (one as { work: { id: number } }).work.id);
    expect(ids).toEqual([2, 3, 1, 4]);
  });

  it("lets what is under way make room for a lower order, and begins it anew after", () => {
    const { made, workers, answers, ask, say } = relay();
    made.ready("code");
    ask(1, { order: 5 });
    ask(2, { order: 5 });
    expect(workers[0]?.got.at(-1)).toMatchObject({ work: { id: 1 } });
    ask(3, { order: 2 });
    expect(workers[0]?.got.at(-1)).toEqual({ kind: "cancel", id: 1 });
    say({ step: "improved", id: 1, value: "late" });
    say({ step: "failed", id: 1, message: "cancelled" });
    expect(answers).toEqual([]);
    expect(workers[0]?.got.at(-1)).toMatchObject({ work: { id: 3 } });
    for (const id of [3, 2, 1]) say({ step: "done", id, value: id });
    const done = answers.map((one) => (one as { work: { id: number } }).work.id);
    expect([...done].sort()).toEqual([1, 2, 3]);
    expect(done[0]).toBe(3);
    expect(workers).toHaveLength(1);
  });

  it("forgets what made room and is then cancelled", () => {
    const { made, workers, answers, ask, cancel, say } = relay();
    made.ready("code");
    ask(1, { order: 5 });
    ask(2, { order: 1 });
    cancel(1);
    say({ step: "failed", id: 1, message: "cancelled" });
    say({ step: "done", id: 2, value: 2 });
    expect(workers[0]?.asked).toHaveLength(2);
    expect(answers).toHaveLength(1);
  });

  it("tells the worker what is cancelled, hears no more of it, and takes the next when it has left off", () => {
    const { made, workers, answers, timers, ask, cancel, say } = relay();
    made.ready("code");
    ask(1);
    ask(2);
    cancel(1);
    expect(workers[0]?.got.at(-1)).toEqual({ kind: "cancel", id: 1 });
    say({ step: "improved", id: 1, value: 12 });
    say({ step: "progress", id: 1, words: "late" });
    expect(workers[0]?.asked).toHaveLength(1);
    say({ step: "failed", id: 1, message: "stopped" });
    expect(answers).toEqual([]);
    expect(workers[0]?.asked).toHaveLength(2);
    // What it remembers is kept, and nobody ends it later.
    expect(timers.map(({ ring }) => ring)).toEqual([undefined]);
    expect(workers).toHaveLength(1);
    say({ step: "done", id: 2, value: 20 });
    expect(answers).toHaveLength(1);
  });

  it("ends a worker that does not hear within the grace, and takes the next in a new one", () => {
    const { made, workers, timers, ask, cancel, say, answers } = relay();
    made.ready("code");
    ask(1);
    ask(2);
    cancel(1);
    expect(workers[0]?.ended).toBe(false);
    expect(timers[0]?.ms).toBeLessThanOrEqual(250);
    timers[0]?.ring?.();
    expect(workers[0]?.ended).toBe(true);
    expect(workers[1]?.asked).toHaveLength(1);
    expect(workers[1]?.ended).toBe(false);
    // What was on its way from the old worker belongs to nobody.
    say({ step: "done", id: 2, value: "old" }, 0);
    expect(answers).toEqual([]);
    say({ step: "done", id: 2, value: 20 }, 1);
    expect(answers).toHaveLength(1);
  });

  it("ends at once, with all it waits for", () => {
    const { made, workers, timers, ask, cancel } = relay();
    made.ready("code");
    ask(1);
    cancel(1);
    made.end();
    expect(workers[0]?.ended).toBe(true);
    expect(timers[0]?.ring).toBeUndefined();
    ask(2);
    expect(workers[1]?.asked).toHaveLength(1);
  });

  it("only strikes out what is cancelled before it began", () => {
    const { made, workers, ask, cancel } = relay();
    made.ready("code");
    ask(1);
    ask(2);
    cancel(2);
    expect(workers[0]?.ended).toBe(false);
    workers[0]?.onmessage?.({ data: { step: "done", id: 1, value: 1 } });
    expect(workers[0]?.asked).toHaveLength(1);
  });

  it("hears no answer for work that is not under way", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code");
    ask(1);
    workers[0]?.onmessage?.({ data: { step: "done", id: 99, value: 1 } });
    expect(answers).toEqual([]);
  });

  it("refuses a flood", () => {
    const { answers, ask } = relay();
    for (let id = 1; id <= 100; id += 1) ask(id);
    expect(answers.length).toBe(36);
    expect(answers[0]).toMatchObject({ work: { step: "failed" } });
  });

  it("takes nothing that is not a well-formed request", () => {
    const { made, answers, needed } = relay();
    const odd: unknown[] = [
      null,
      "work",
      { kind: "work" },
      { kind: "work", session: 0, work: null },
      { kind: "work", session: 0, work: { step: "ask", id: "1", name: "plan" } },
      { kind: "work", session: 0, work: { step: "ask", id: 1, name: { toString: () => "plan" } } },
      { kind: "work", session: 0, work: { step: "ask", id: 1, name: "plan", order: "first" } },
      { kind: "work", session: 0, work: { step: "ask", id: 1, name: "plan", order: Number.NaN } },
      { kind: "work", session: 0, work: { step: "done", id: 1, value: 1 } },
      { kind: "start", code: ["steal()"] },
    ];
    for (const message of odd) made.asked(message);
    expect(answers).toEqual([]);
    expect(needed()).toBe(0);
  });

  it("says of each that it was stopped when the reader stops it all", () => {
    const { made, workers, answers, timers, ask, say } = relay();
    made.ready("code");
    ask(1);
    ask(2);
    made.stopAll("stopped by the reader");
    // Nobody waits for the worker to hear of it.
    expect(answers.map((one) => (one as { work: unknown }).work)).toEqual([
      { step: "stopped", id: 1, message: "stopped by the reader" },
      { step: "stopped", id: 2, message: "stopped by the reader" },
    ]);
    say({ step: "done", id: 1, value: 10 });
    expect(answers).toHaveLength(2);
    expect(workers[0]?.ended).toBe(false);
    ask(3);
    made.stopAll("again");
    timers.at(-1)?.ring?.();
    expect(workers[0]?.ended).toBe(true);
    expect(answers).toHaveLength(3);
  });

  it("ends a worker that breaks though nothing is asked of it, and takes the next in a new one", () => {
    const { made, workers, answers, ask, say } = relay();
    made.ready("code");
    ask(1);
    say({ step: "done", id: 1, value: 10 });
    workers[0]?.onerror?.({ message: "out of memory" });
    expect(workers[0]?.ended).toBe(true);
    expect(answers).toHaveLength(1);
    ask(2);
    expect(workers[1]?.asked).toHaveLength(1);
  });

  it("fails the work of a worker that breaks, and goes on with the next", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code");
    ask(1);
    ask(2);
    workers[0]?.onerror?.({ message: "out of memory" });
    expect(answers[0]).toMatchObject({ work: { step: "failed", id: 1 } });
    expect(workers[1]?.asked).toHaveLength(1);
  });
});
