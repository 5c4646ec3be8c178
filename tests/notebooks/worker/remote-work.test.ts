import { describe, expect, it } from "vitest";
import { type LongWorkFailed, RemoteWork } from "../../../notebooks/engine/worker/remote-work.ts";

function remote() {
  const posted: { work: { step: string; id: number } }[] = [];
  const made = new RemoteWork((message) => posted.push(message));
  let abort = () => {};
  const said: string[] = [];
  const better: unknown[] = [];
  const control = {
    order: 7,
    improved: (value: unknown) => better.push(value),
    signal: {
      aborted: false,
      addEventListener: (_: "abort", listener: () => void) => {
        abort = listener;
      },
    },
    progress: (words: string) => said.push(words),
  };
  return { made, posted, control, said, better, abort: () => abort() };
}

describe("stand-ins for long work", () => {
  it("ask, hear of progress, and give the answer", async () => {
    const { made, posted, control, said } = remote();
    const answer = made.stand("planBoards")([{ bed: "1" }], control);
    expect(posted).toEqual([
      {
        kind: "work",
        session: 0,
        work: { step: "ask", id: 1, name: "planBoards", data: [{ bed: "1" }], order: 7 },
      },
    ]);
    made.answered({ step: "progress", id: 1, words: "12 patterns" });
    made.answered({ step: "done", id: 1, value: 34 });
    expect(await answer).toBe(34);
    expect(said).toEqual(["12 patterns"]);
  });

  it("fail with the words and problems of the failure", async () => {
    const { made, control } = remote();
    const answer = made.stand("planBoards")([], control);
    made.answered({ step: "failed", id: 1, message: "no price", problems: [1] });
    await expect(answer).rejects.toThrow("no price");
    await answer.catch((error: LongWorkFailed) => expect(error.problems).toEqual([1]));
  });

  it("hand on each better result until the end", async () => {
    const { made, control, better } = remote();
    const answer = made.stand("planBoards")([], control);
    made.answered({ step: "improved", id: 1, value: 12 });
    made.answered({ step: "improved", id: 2, value: "another's" });
    made.answered({ step: "done", id: 1, value: 10 });
    made.answered({ step: "improved", id: 1, value: "late" });
    expect(await answer).toBe(10);
    expect(better).toEqual([12]);
  });

  it.each([
    ["a function", [{ pieces: [{ price: () => 1 }] }], "a function, at [0].pieces[0].price"],
    ["a symbol", [Symbol("a")], "a symbol, at [0]"],
    ["a promise", [{ rows: Promise.resolve() }], "a promise, at [0].rows"],
    ["a function in a map", [new Map([["a", () => 1]])], "a function, at [0](a)"],
  ])("refuse %s with its place, and ask for nothing", async (_, data, place) => {
    const { made, posted, control } = remote();
    await expect(made.stand("planBoards")(data, control)).rejects.toThrow(
      `planBoards is worked out apart and takes plain data only; it was handed ${place}.`,
    );
    expect(posted).toEqual([]);
  });

  it("take data that holds itself, as sending does", async () => {
    const { made, posted, control } = remote();
    const data: unknown[] = [];
    data.push(data);
    void made.stand("planBoards")(data, control);
    expect(posted).toHaveLength(1);
  });

  it("fail as stopped where the reader stopped them", async () => {
    const { made, control } = remote();
    const answer = made.stand("planBoards")([], control);
    made.answered({ step: "stopped", id: 1, message: "It was stopped." });
    await expect(answer).rejects.toMatchObject({ stopped: true, message: "It was stopped." });
  });

  it("cancel once when they are superseded, and hear no later answer", () => {
    const { made, posted, control, better, abort } = remote();
    void made.stand("planBoards")([], control);
    abort();
    abort();
    made.answered({ step: "improved", id: 1, value: 2 });
    made.answered({ step: "done", id: 1, value: 1 });
    expect(better).toEqual([]);
    expect(posted.map(({ work }) => work.step)).toEqual(["ask", "cancel"]);
  });
});
