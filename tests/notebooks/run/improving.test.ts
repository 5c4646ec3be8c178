import { describe, expect, it } from "vitest";
import type { CellId, LongWork, LongWorkControl } from "../../../notebooks/engine/types/index.ts";
import { cell, fakeHost, type Opened, open } from "./fake-host.ts";

interface Asked extends LongWorkControl {
  readonly data: readonly unknown[];
  readonly answer: (value: unknown) => void;
  readonly fail: (error: unknown) => void;
}

/** Work whose results the test gives. */
function slowWork() {
  const asked: Asked[] = [];
  const plan: LongWork = (data, control) =>
    new Promise((answer, fail) => {
      asked.push({ data, answer, fail, ...control });
    });
  return { asked, host: fakeHost({ plan }) };
}

const sheet =
  cell("size", 'wholeEntry("4")') +
  cell("cuts", "plan(size)") +
  cell("waste", "cuts + 1") +
  cell("twice", "size * 2");

/** The values a cell was reported with, in order, each once while it stays what it is. */
function shownTexts({ reports }: Opened, id: CellId): string[] {
  const states = reports.flatMap(({ cells }) => cells.filter((state) => state.id === id));
  return states
    .map(({ shown, error }) =>
      shown?.kind === "figure" ? shown.figure.text : (error?.kind ?? "none"),
    )
    .filter((text, at, all) => text !== all[at - 1]);
}

async function started(options: Partial<Parameters<typeof open>[1]> = {}, text = sheet) {
  const { asked, host } = slowWork();
  const opened = open(text, { host, wait: () => Promise.resolve(), ...options });
  await opened.session.settled();
  return { asked, opened, session: opened.session };
}

/** Gives everything that is ready a turn. */
const turn = () => new Promise((resolve) => setTimeout(resolve));

describe("long work that gets better", () => {
  it("gives its cell each better result, what rests on it follows, and it ends with the last", async () => {
    const { asked, opened, session } = await started();
    const [work] = asked;
    const seen: unknown[] = [];
    for (const boards of [12, 11, 10]) {
      work?.improved?.(boards);
      await turn();
      const { working } = await session.settled();
      seen.push([session.value("a.md#cuts"), session.value("a.md#waste"), working]);
    }
    const working = ["a.md#cuts", "a.md#waste"];
    expect(seen).toEqual([
      [12, 13, working],
      [11, 12, working],
      [10, 11, working],
    ]);
    work?.answer(9);
    await session.done();
    expect((await session.settled()).working).toEqual([]);
    expect([session.value("a.md#cuts"), session.value("a.md#waste")]).toEqual([9, 10]);
    expect(shownTexts(opened, "a.md#waste")).toEqual(["13", "12", "11", "10"]);
    expect(opened.settledTurns.at(-1)?.working).toEqual([]);
    expect(session.state("a.md#cuts")?.cutShort).toBeUndefined();
  });

  it("runs the cell's formula once, and nothing that does not rest on it", async () => {
    const { asked, opened, session } = await started();
    const before = opened.started.filter((id) => id === "a.md#twice").length;
    for (const boards of [12, 11]) {
      asked[0]?.improved?.(boards);
      await turn();
    }
    asked[0]?.answer(9);
    await session.done();
    expect(asked).toHaveLength(1);
    expect(opened.started.filter((id) => id === "a.md#cuts")).toHaveLength(1);
    expect(opened.started.filter((id) => id === "a.md#twice")).toHaveLength(before);
  });

  it("keeps nobody waiting that could not be compiled", async () => {
    const text = `${sheet}${cell("odd", "cuts + nosuch")}`;
    const { asked, session } = await started({}, text);
    expect((await session.settled()).working).toEqual(["a.md#cuts", "a.md#waste"]);
    asked[0]?.answer(9);
    await session.done();
  });

  it("still tells its progress after it has a value", async () => {
    const said: unknown[] = [];
    const { asked } = await started({ onProgress: (...words) => said.push(words) });
    asked[0]?.improved?.(12);
    await turn();
    asked[0]?.progress("proving", 0.4);
    expect(said).toEqual([["a.md#cuts", "proving", 0.4]]);
  });

  it("gives a formula that waits for it the final result only", async () => {
    const text =
      cell("size", 'wholeEntry("4")') + cell("cuts", "const n = await plan(size);\nreturn n * 10;");
    const { asked, opened, session } = await started({}, text);
    asked[0]?.improved?.(12);
    await turn();
    expect(session.value("a.md#cuts")).toBeUndefined();
    asked[0]?.answer(9);
    await session.done();
    expect(shownTexts(opened, "a.md#cuts")).toEqual(["90"]);
  });

  it("gives the final result only where nobody watches", async () => {
    const { asked, opened, session } = await started({ improving: false });
    expect(asked[0]?.improved).toBeUndefined();
    asked[0]?.answer(9);
    await session.done();
    expect(shownTexts(opened, "a.md#waste")).toEqual(["10"]);
  });

  it("is an error of its cell where it fails after all", async () => {
    const { asked, session } = await started();
    asked[0]?.improved?.(12);
    await turn();
    asked[0]?.fail(new Error("no board is long enough"));
    await session.done();
    expect(session.value("a.md#cuts")).toBeUndefined();
    expect(session.state("a.md#cuts")?.error?.message).toBe("cuts: no board is long enough");
    expect(session.state("a.md#waste")?.error?.kind).toBe("waits");
  });

  it("cannot flood: of results that come faster than cells follow only the newest counts", async () => {
    const waits: { ms: number; go: () => void }[] = [];
    const wait = (ms: number) =>
      ms === 60 ? Promise.resolve() : new Promise<void>((go) => waits.push({ ms, go }));
    const { asked, opened, session } = await started({ wait });
    const values: unknown[] = [];
    const pass = async () => {
      for (const { go } of waits.splice(0)) go();
      await turn();
      values.push(session.value("a.md#cuts"));
    };
    for (let boards = 9_000; boards > 4_000; boards -= 1) asked[0]?.improved?.(boards);
    // Work that is done at once has no steps.
    for (const { go } of waits.splice(0)) go();
    await turn();
    values.push(session.value("a.md#cuts"));
    for (let boards = 4_000; boards > 1_000; boards -= 1) asked[0]?.improved?.(boards);
    // The graph's own pace, a turn to see how long the cells took, and the pace of results.
    await pass();
    await pass();
    expect(waits[0]?.ms).toBeGreaterThanOrEqual(250);
    await pass();
    expect(values).toEqual([4_001, 4_001, 4_001, 1_001]);
    expect(shownTexts(opened, "a.md#waste")).toEqual(["4002", "1002"]);
    // The final result does not wait for the pace of results.
    await pass();
    await pass();
    asked[0]?.answer(9);
    await turn();
    expect(session.value("a.md#cuts")).toBe(9);
  });
});

describe("long work of several cells", () => {
  it("goes by what stays in sight, then as the document has it", async () => {
    const text =
      cell("compared", 'plan("compared")') +
      cell("drawn", 'plan("drawn")') +
      cell("bought", 'plan("bought")') +
      cell("total pinned", "bought + 1") +
      cell("also pinned", 'plan("also")');
    const { asked } = await started({}, text);
    const byOrder = [...asked].sort((a, b) => (a.order ?? 0) - (b.order ?? 0));
    expect(byOrder.map(({ data }) => data[0])).toEqual(["bought", "also", "compared", "drawn"]);
  });
});

describe("long work that is stopped", () => {
  it("keeps the best result so far, says so, and can be started again", async () => {
    const { asked, session } = await started();
    for (const boards of [12, 11]) {
      asked[0]?.improved?.(boards);
      await turn();
    }
    session.stop(["a.md#cuts"]);
    await session.done();
    expect(asked[0]?.signal.aborted).toBe(true);
    expect(session.value("a.md#waste")).toBe(12);
    expect(session.state("a.md#cuts")).toMatchObject({ cutShort: true });
    expect(session.state("a.md#cuts")?.error).toBeUndefined();
    asked[0]?.improved?.(3);
    asked[0]?.answer(2);
    await turn();
    expect(session.value("a.md#cuts")).toBe(11);
    session.again("a.md#cuts");
    await session.settled();
    expect(asked).toHaveLength(2);
    asked[1]?.answer(9);
    await session.done();
    expect(session.value("a.md#waste")).toBe(10);
    expect(session.state("a.md#cuts")?.cutShort).toBeUndefined();
  });

  it("keeps it where it is stopped from outside, and nothing else's failure", async () => {
    const { asked, opened, session } = await started();
    asked[0]?.improved?.(12);
    asked[0]?.improved?.(11);
    asked[0]?.fail(Object.assign(new Error("stopped"), { stopped: true }));
    await session.done();
    expect(session.value("a.md#waste")).toBe(12);
    const states = opened.reports.flatMap(({ cells }) => cells);
    expect(states.findLast(({ id }) => id === "a.md#cuts")).toMatchObject({ cutShort: true });
  });

  it("is an error where it has no result yet", async () => {
    const { asked, session } = await started();
    asked[0]?.fail(Object.assign(new Error("It was stopped."), { stopped: true }));
    await session.done();
    expect(session.state("a.md#cuts")?.error?.message).toBe("cuts: It was stopped.");
  });

  it("gives its best to a formula that waits for it, with the same note", async () => {
    const { asked, session } = await started({}, cell("cuts", "(await plan(4)) * 10"));
    asked[0]?.improved?.(12);
    session.stop();
    await session.done();
    expect(session.state("a.md#cuts")).toMatchObject({
      cutShort: true,
      shown: { figure: { text: "120" } },
    });
  });

  it("stays stopped, with its note, while its inputs stay what they are", async () => {
    const text =
      cell("size", 'wholeEntry("4")') +
      cell("even", "size % 2 === 0") +
      cell("cuts", "plan(even)") +
      cell("waste", "cuts + 1");
    const { asked, session } = await started({}, text);
    asked[0]?.improved?.(12);
    session.stop();
    await session.done();
    session.enter({ "a.md#size": "6" });
    await session.done();
    expect(asked).toHaveLength(1);
    expect(session.state("a.md#cuts")).toMatchObject({ cutShort: true });
    session.enter({ "a.md#size": "7" });
    await session.settled();
    expect(asked).toHaveLength(2);
  });
});

describe("long work that is overtaken", () => {
  it("is cancelled at once, and what still comes of it is not heard", async () => {
    const { asked, opened, session } = await started();
    asked[0]?.improved?.(12);
    await turn();
    session.enter({ "a.md#size": "5" });
    await session.settled();
    expect(asked.map(({ signal }) => signal.aborted)).toEqual([true, false]);
    asked[0]?.improved?.(3);
    asked[0]?.answer(2);
    await turn();
    expect(session.value("a.md#waste")).toBe(13);
    expect(session.state("a.md#cuts")?.cutShort).toBeUndefined();
    asked[1]?.improved?.(21);
    await turn();
    expect(session.value("a.md#waste")).toBe(22);
    asked[1]?.answer(20);
    await session.done();
    expect(shownTexts(opened, "a.md#waste")).toEqual(["13", "22", "21"]);
  });

  it("does not hand its best on to a formula that was overtaken with it", async () => {
    const later: unknown[] = [];
    const { asked, host } = slowWork();
    const { session } = open(
      cell("size", 'wholeEntry("4")') +
        cell("cuts", "const n = await plan(size);\nheard(n);\nreturn n;"),
      {
        host: { ...host, names: { ...host.names, heard: (n: unknown) => later.push(n) } },
      },
    );
    await session.settled();
    asked[0]?.improved?.(12);
    session.enter({ "a.md#size": "5" });
    await session.settled();
    asked[1]?.answer(20);
    await session.done();
    expect(later).toEqual([20]);
  });

  it("is cancelled when the notebook is closed between two results", async () => {
    const { asked, session, opened } = await started();
    asked[0]?.improved?.(12);
    await turn();
    const count = opened.reports.length;
    session.dispose();
    expect(asked[0]?.signal.aborted).toBe(true);
    asked[0]?.improved?.(3);
    await turn();
    expect(opened.reports).toHaveLength(count);
  });
});
