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
      if (work.step !== "progress" && work.step !== "improved") end();
    },
  };
  startLongWork(make, (error) => (error as { problems?: unknown }).problems, scope);
  const send = (data: unknown) => scope.onmessage?.({ data, ports: [] });
  const solver = () => send({ kind: "solver", solver: new ArrayBuffer(4) });
  const ask = (name: string, data: unknown) =>
    send({ kind: "work", work: { step: "ask", id: 1, name, data } });
  const cancel = () => send({ kind: "cancel", id: 1 });
  return { said, ask, cancel, ended, solver };
}

describe("the worker for long work", () => {
  it("works a listed function out, with its progress", async () => {
    const { said, ask, ended, solver } = worker((bytes) => ({
      plan: async ([boards], { progress }) => {
        progress("half way", 0.5);
        return { boards, bytes: (await bytes).byteLength };
      },
    }));
    ask("plan", [34]);
    await Promise.resolve();
    // It is under way before the solver is there.
    expect(said).toHaveLength(1);
    solver();
    await ended;
    expect(said).toEqual([
      { step: "progress", id: 1, words: "half way", fraction: 0.5 },
      { step: "done", id: 1, value: { boards: 34, bytes: 4 } },
    ]);
  });

  it("sends each better result as plain data, and what is held back before it can't be heard", async () => {
    const { said, ask, ended } = worker(() => ({
      plan: async (_, { improved, pause }) => {
        improved?.({ boards: 12, print: () => "12" });
        improved?.({ boards: 11 });
        improved?.({ boards: 10 });
        await pause?.("uninterrupted");
        improved?.({ boards: 9 });
        return { boards: 8 };
      },
    }));
    ask("plan", []);
    await ended;
    expect(said).toEqual([
      { step: "improved", id: 1, value: { boards: 12 } },
      { step: "improved", id: 1, value: { boards: 10 } },
      { step: "done", id: 1, value: { boards: 8 } },
    ]);
  });

  it("hears of a cancelling in a pause, and sends nothing of that work but its end", async () => {
    let turns = 0;
    let told = 0;
    const { said, ask, cancel, ended } = worker(() => ({
      plan: async (_, { improved, progress, pause, signal }) => {
        signal.addEventListener("abort", () => {
          told += 1;
        });
        while (!signal.aborted && turns < 1_000) {
          turns += 1;
          await pause?.();
        }
        improved?.(1);
        progress("late");
        await pause?.("uninterrupted");
        return "a value nobody waits for";
      },
    }));
    ask("plan", []);
    setTimeout(cancel);
    await ended;
    expect(said).toEqual([{ step: "failed", id: 1, message: "cancelled" }]);
    expect(turns).toBeLessThan(1_000);
    expect(told).toBe(1);
  });

  it("lets a flood of words and results through no faster than they are of use", async () => {
    const { said, ask, ended } = worker(() => ({
      plan: async (_, { improved, progress, pause }) => {
        for (let round = 0; round < 50; round += 1) {
          for (let each = 0; each < 200; each += 1) {
            improved?.(round * 200 + each);
            progress(`round ${round}`);
          }
          await pause?.();
        }
        await pause?.("uninterrupted");
        return "done";
      },
    }));
    const began = performance.now();
    ask("plan", []);
    await ended;
    const tenths = Math.ceil((performance.now() - began) / 100) + 2;
    const better = said.flatMap((one) => (one.step === "improved" ? [one.value] : []));
    expect(better.length).toBeLessThanOrEqual(tenths);
    expect(better.at(-1)).toBe(9_999);
    expect(said.filter(({ step }) => step === "progress").length).toBeLessThanOrEqual(2 * tenths);
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
