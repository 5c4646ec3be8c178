import { describe, expect, it } from "vitest";
import type { WorkMessage } from "../../../notebooks/engine/types/index.ts";
import { startLongWork } from "../../../notebooks/engine/worker/long-work.ts";
import type { WorkerScope } from "../../../notebooks/engine/worker/scope.ts";

function worker(make: Parameters<typeof startLongWork>[0]) {
  const said: WorkMessage[] = [];
  let end = () => {};
  const ended = new Promise<void>((done) => {
    end = done;
  });
  const scope: WorkerScope = {
    onmessage: null,
    postMessage(message) {
      const work = message as WorkMessage;
      said.push(work);
      if (work.step !== "progress") end();
    },
  };
  startLongWork(make, (error) => (error as { problems?: unknown }).problems, scope);
  const send = (data: unknown) => scope.onmessage?.({ data, ports: [] });
  send({ kind: "solver", solver: new ArrayBuffer(4) });
  const ask = (name: string, data: unknown) =>
    send({ kind: "work", work: { step: "ask", id: 1, name, data } });
  return { said, ask, ended };
}

describe("the worker for long work", () => {
  it("works a listed function out, with its progress", async () => {
    const { said, ask, ended } = worker((solver) => ({
      plan: async ([boards], { progress }) => {
        progress("half way", 0.5);
        await Promise.resolve();
        return { boards, bytes: solver.byteLength };
      },
    }));
    ask("plan", [34]);
    await ended;
    expect(said).toEqual([
      { step: "progress", id: 1, words: "half way", fraction: 0.5 },
      { step: "done", id: 1, value: { boards: 34, bytes: 4 } },
    ]);
  });

  it("refuses a name that is not on its list, inherited names included", async () => {
    for (const name of ["steal", "constructor", "__proto__", "toString"]) {
      const { said, ask, ended } = worker(() => ({}));
      ask(name, []);
      await ended;
      expect(said[0]).toMatchObject({ step: "failed", id: 1 });
    }
  });

  it("hands on the problems an error carries", async () => {
    const problems = [{ code: "unpriced", path: ["prices"] }];
    const { said, ask, ended } = worker(() => ({
      plan: async () => {
        throw Object.assign(new Error("no price"), { problems });
      },
    }));
    ask("plan", []);
    await ended;
    expect(said[0]).toEqual({ step: "failed", id: 1, message: "no price", problems });
  });

  it("sends no functions: records lose theirs, the rest stays", async () => {
    const { said, ask, ended } = worker(() => ({
      plan: async () => ({ cuts: [{ length: 2.4, print: () => "8 ft" }], by: new Map([["a", 1]]) }),
    }));
    ask("plan", []);
    await ended;
    expect(said[0]).toEqual({
      step: "done",
      id: 1,
      value: { cuts: [{ length: 2.4 }], by: new Map([["a", 1]]) },
    });
  });
});
