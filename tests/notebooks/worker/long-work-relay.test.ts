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
  get asked() {
    return this.got.filter((one) => (one as { kind: string }).kind === "work");
  }
}

function relay() {
  const workers: FakeWorker[] = [];
  const answers: unknown[] = [];
  let needed = 0;
  const made = new LongWorkRelay({
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
  const ask = (id: number, session = 0) =>
    made.asked({ kind: "work", session, work: { step: "ask", id, name: "plan", data: [] } });
  const cancel = (id: number) =>
    made.asked({ kind: "work", session: 0, work: { step: "cancel", id } });
  return { made, workers, answers, ask, cancel, needed: () => needed };
}

describe("the relay of long work", () => {
  it("asks for the code once, when the first work comes, and starts when it is there", () => {
    const { made, workers, ask, needed } = relay();
    ask(1);
    ask(2);
    expect(needed()).toBe(1);
    expect(workers).toHaveLength(0);
    made.ready("code", new ArrayBuffer(1));
    expect(workers).toHaveLength(1);
    expect(workers[0]?.asked).toHaveLength(1);
  });

  it("works one after another and passes answers on with their session", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code", new ArrayBuffer(1));
    ask(1, 7);
    ask(2, 7);
    workers[0]?.onmessage?.({ data: { step: "done", id: 1, value: 34 } });
    expect(answers).toEqual([
      { kind: "work", session: 7, work: { step: "done", id: 1, value: 34 } },
    ]);
    expect(workers[0]?.asked).toHaveLength(2);
    expect(workers).toHaveLength(1);
  });

  it("ends the worker when what it works on is cancelled, and takes the next in a new one", () => {
    const { made, workers, ask, cancel } = relay();
    made.ready("code", new ArrayBuffer(1));
    ask(1);
    ask(2);
    cancel(1);
    expect(workers[0]?.ended).toBe(true);
    expect(workers[1]?.asked).toHaveLength(1);
    expect(workers[1]?.ended).toBe(false);
  });

  it("only strikes out what is cancelled before it began", () => {
    const { made, workers, ask, cancel } = relay();
    made.ready("code", new ArrayBuffer(1));
    ask(1);
    ask(2);
    cancel(2);
    expect(workers[0]?.ended).toBe(false);
    workers[0]?.onmessage?.({ data: { step: "done", id: 1, value: 1 } });
    expect(workers[0]?.asked).toHaveLength(1);
  });

  it("hears no answer for work that is not under way", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code", new ArrayBuffer(1));
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
      { kind: "work", session: 0, work: { step: "done", id: 1, value: 1 } },
      { kind: "start", code: ["steal()"] },
    ];
    for (const message of odd) made.asked(message);
    expect(answers).toEqual([]);
    expect(needed()).toBe(0);
  });

  it("says of each that it was stopped when the reader stops it all", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code", new ArrayBuffer(1));
    ask(1);
    ask(2);
    made.stopAll("stopped by the reader");
    expect(workers[0]?.ended).toBe(true);
    expect(answers).toHaveLength(2);
    expect(answers[1]).toMatchObject({
      work: { step: "failed", message: "stopped by the reader" },
    });
  });

  it("fails the work of a worker that breaks, and goes on with the next", () => {
    const { made, workers, answers, ask } = relay();
    made.ready("code", new ArrayBuffer(1));
    ask(1);
    ask(2);
    workers[0]?.onerror?.({ message: "out of memory" });
    expect(answers[0]).toMatchObject({ work: { step: "failed", id: 1 } });
    expect(workers[1]?.asked).toHaveLength(1);
  });
});
