import { describe, expect, it } from "vitest";
import type { CancelSignal, LongWork } from "../../../notebooks/engine/types/index.ts";
import { cell, fakeHost, open } from "./fake-host.ts";

interface Asked {
  readonly data: readonly unknown[];
  readonly signal: CancelSignal;
  readonly progress: (words: string, fraction?: number) => void;
  readonly answer: (value: unknown) => void;
  readonly fail: (error: unknown) => void;
}

/** Work whose answers the test gives. */
function slowWork() {
  const asked: Asked[] = [];
  const plan: LongWork = (data, { signal, progress }) =>
    new Promise((answer, fail) => {
      asked.push({ data, signal, progress: (...said) => progress(...said), answer, fail });
    });
  return { asked, host: fakeHost({ plan }) };
}

const sheet =
  cell("size", 'wholeEntry("4")') +
  cell("cuts", "plan(size)") +
  cell("waste", "cuts + 1") +
  cell("twice", "size * 2");

describe("long work", () => {
  it("holds up nobody who does not need it, and says who still waits", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet, { host });
    const { working } = await session.settled();
    expect(working).toEqual(["a.md#cuts", "a.md#waste"]);
    expect(session.value("a.md#twice")).toBe(8);
    expect(asked[0]?.data).toEqual([4]);
    asked[0]?.answer(10);
    await session.done();
    expect(session.value("a.md#waste")).toBe(11);
    expect((await session.settled()).working).toEqual([]);
  });

  it("keeps the last value while it is worked out again", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet, { host });
    await session.settled();
    asked[0]?.answer(10);
    await session.done();
    session.enter({ "a.md#size": "5" });
    await session.settled();
    expect(session.value("a.md#twice")).toBe(10);
    expect(session.value("a.md#waste")).toBe(11);
    asked[1]?.answer(20);
    await session.done();
    expect(session.value("a.md#waste")).toBe(21);
  });

  it("is cancelled when overtaken, and a late answer changes nothing", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet, { host });
    await session.settled();
    session.enter({ "a.md#size": "5" });
    await session.settled();
    expect(asked.map(({ signal }) => signal.aborted)).toEqual([true, false]);
    asked[1]?.answer(20);
    asked[0]?.answer(10);
    await session.done();
    expect(session.value("a.md#waste")).toBe(21);
  });

  it("is not asked again for a change it does not rest on", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet + cell("other", 'wholeEntry("1")'), { host });
    await session.settled();
    session.enter({ "a.md#other": "2" });
    expect((await session.settled()).working).toEqual(["a.md#cuts", "a.md#waste"]);
    expect(asked).toHaveLength(1);
  });

  it("tells its progress by cell, and no more once overtaken", async () => {
    const { asked, host } = slowWork();
    const said: unknown[] = [];
    const { session } = open(sheet, { host, onProgress: (...words) => said.push(words) });
    await session.settled();
    asked[0]?.progress("listing patterns", 0.5);
    session.enter({ "a.md#size": "5" });
    await session.settled();
    asked[0]?.progress("too late");
    expect(said).toEqual([["a.md#cuts", "listing patterns", 0.5]]);
  });

  it("can be stopped, named as stopped, and started again", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet, { host });
    await session.settled();
    session.stop(["a.md#cuts"]);
    await session.done();
    expect(asked[0]?.signal.aborted).toBe(true);
    expect(session.state("a.md#cuts")?.error?.kind).toBe("stopped");
    expect(session.state("a.md#waste")?.error).toMatchObject({ kind: "waits", names: ["cuts"] });
    session.again("a.md#cuts");
    await session.settled();
    asked[1]?.answer(3);
    await session.done();
    expect(session.value("a.md#waste")).toBe(4);
  });

  it("is not begun by a run that has been overtaken", async () => {
    const { asked, host } = slowWork();
    let go: () => void = () => undefined;
    const gate = new Promise<void>((resolve) => {
      go = resolve;
    });
    const names = { ...host.names, gate: () => gate };
    const late = "if (size < 5) await gate();\nreturn plan(size);";
    const { session } = open(cell("size", 'wholeEntry("4")') + cell("cuts", late), {
      host: { ...host, names },
    });
    await new Promise((resolve) => setTimeout(resolve));
    session.enter({ "a.md#size": "5" });
    await session.settled();
    go();
    await new Promise((resolve) => setTimeout(resolve));
    expect(asked.map(({ data }) => data)).toEqual([[5]]);
  });

  it("that fails is an error of its cell", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet, { host });
    await session.settled();
    asked[0]?.fail(new Error("no board is long enough"));
    await session.done();
    expect(session.state("a.md#cuts")?.error).toMatchObject({
      kind: "formula",
      message: "cuts: no board is long enough",
    });
  });

  it("is cancelled when the notebook is closed", async () => {
    const { asked, host } = slowWork();
    const { session } = open(sheet, { host });
    await session.settled();
    session.dispose();
    expect(asked[0]?.signal.aborted).toBe(true);
  });
});

describe("promises and series", () => {
  it("a promise that never settles blocks nothing once its cell is asked again", async () => {
    const { session, started } = open(
      cell("size", 'wholeEntry("0")') +
        cell("later", "size === 0 ? new Promise(() => {}) : size") +
        cell("next", "later + 1"),
    );
    while (!started.includes("a.md#later")) await Promise.resolve();
    session.enter({ "a.md#size": "7" });
    await session.settled();
    expect(session.value("a.md#next")).toBe(8);
  });

  it("tells which cells have not come to an end", async () => {
    const { session } = open(cell("never", "new Promise(() => {})") + cell("next", "never + 1"));
    await Promise.resolve();
    await Promise.resolve();
    expect(session.unfinished()).toEqual(["a.md#never", "a.md#next"]);
    session.dispose();
  });

  it("gives values one after the other", async () => {
    const waits: (() => void)[] = [];
    const wait = (ms: number) =>
      ms > 50 ? new Promise<void>(() => {}) : new Promise<void>((resolve) => waits.push(resolve));
    const { session } = open(
      cell("count", "for (let i = 1; i < 3; i++) yield i;") + cell("twice", "count * 2"),
      { wait },
    );
    await session.settled();
    expect(session.value("a.md#twice")).toBe(2);
    // The next value is asked for, and held back by the pace.
    while (waits.length === 0) await Promise.resolve();
    const settled = new Promise<void>((resolve) => {
      void (async () => {
        while (session.value("a.md#twice") !== 4) await Promise.resolve();
        resolve();
      })();
    });
    waits.shift()?.();
    await settled;
    expect(session.value("a.md#count")).toBe(2);
    session.dispose();
  });
});
