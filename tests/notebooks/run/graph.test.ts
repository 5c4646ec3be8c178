import { readFileSync } from "node:fs";
import { Runtime } from "@observablehq/runtime";
import { describe, expect, it } from "vitest";
import { createGraph, type GraphEvents } from "../../../notebooks/engine/run/graph.ts";

function recorded() {
  const log: string[] = [];
  const events: GraphEvents = {
    started: (key) => log.push(`${key} starts`),
    value: (key, value) => log.push(`${key} = ${String(value)}`),
    failed: (key, error, input) =>
      log.push(`${key} fails: ${(error as Error).message}${input ? `, for want of ${input}` : ""}`),
    stepping: () => undefined,
    passed: () => log.push("pass"),
  };
  return { log, graph: createGraph(events, () => new Promise(() => {})) };
}

/** Lets everything that needs no timer come to its end. */
const turns = async () => {
  for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
};

describe("what the graph relies on inside the runtime", () => {
  // The cover replaces one internal method; another release may work otherwise.
  it("is the release this was written for", () => {
    const file = new URL(
      "../../../node_modules/@observablehq/runtime/package.json",
      import.meta.url,
    );
    expect(JSON.parse(readFileSync(file, "utf8")).version).toBe("6.0.1");
  });

  it("begins passes through methods that can be replaced", () => {
    for (const name of ["_computeSoon", "_computeNow"])
      expect(Object.getOwnPropertyDescriptor(Runtime.prototype, name)).toMatchObject({
        writable: true,
        value: expect.any(Function),
      });
  });
});

describe("a graph", () => {
  it("works values out in one pass for all that was defined together, without a timer", async () => {
    const { log, graph } = recorded();
    graph.define("b", ["a"], (a) => Number(a) + 1);
    graph.define("a", [], () => 1);
    expect(graph.scheduled).toBe(true);
    await turns();
    expect(graph.scheduled).toBe(false);
    expect(log).toEqual(["a starts", "b starts", "pass", "a = 1", "b = 2"]);
  });

  it("says for want of what a value failed", async () => {
    const { log, graph } = recorded();
    graph.define("a", [], () => {
      throw new Error("no");
    });
    graph.define("b", ["a"], (a) => a);
    await turns();
    expect(log.slice(-2)).toEqual(["a fails: no", "b fails: no, for want of a"]);
  });

  it("lets go of a promise without an end when the value is defined anew", async () => {
    const { log, graph } = recorded();
    graph.define("a", [], () => new Promise(() => {}));
    graph.define("b", ["a"], (a) => Number(a) + 1);
    await turns();
    graph.define("a", [], () => 5);
    await turns();
    expect(log.slice(-2)).toEqual(["a = 5", "b = 6"]);
  });

  it("lets go of it too when only what it rests on changes", async () => {
    const { log, graph } = recorded();
    graph.define("a", [], () => 0);
    graph.define("b", ["a"], (a) => (a === 0 ? new Promise(() => {}) : a));
    await turns();
    graph.define("a", [], () => 7);
    await turns();
    expect(log.at(-1)).toBe("b = 7");
  });

  it("shows only the last of many changes", async () => {
    const { log, graph } = recorded();
    for (let value = 0; value < 20; value += 1) graph.define("a", [], () => value);
    await turns();
    expect(log.filter((line) => line.startsWith("a ="))).toEqual(["a = 19"]);
  });

  it("takes keys away, and says nothing once it is disposed of", async () => {
    const { log, graph } = recorded();
    graph.define("a", [], () => 1);
    graph.remove("a");
    graph.define("b", [], () => 2);
    await turns();
    expect(log.filter((line) => line.includes("="))).toEqual(["b = 2"]);
    graph.define("b", [], () => 3);
    graph.dispose();
    await turns();
    expect(log.at(-1)).toBe("b = 2");
  });
});
