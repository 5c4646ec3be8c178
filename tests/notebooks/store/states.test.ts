import { describe, expect, it } from "vitest";
import {
  memoryStorage,
  type NewState,
  noteState,
  StateKeeper,
  type Storage,
} from "../../../notebooks/engine/store/index.ts";
import { listStates, readState } from "../../../notebooks/engine/store/seldom.ts";
import { allOf, at, failing, full } from "./worlds.ts";

const entered = (kerf: string) => ({ "rebuild.md#kerf": kerf });

function state(kerf: string, more: Partial<NewState> = {}): NewState {
  return {
    main: "rebuild.md",
    at: at(0),
    why: "typing",
    apart: false,
    files: ["rebuild.md", "garden.md"],
    texts: {},
    entered: entered(kerf),
    ...more,
  };
}

async function kerfs(storage: Storage) {
  const { states } = await listStates(storage, "rebuild.md");
  const all = await Promise.all(
    states.map(({ number }) => readState(storage, "rebuild.md", number)),
  );
  return all.map((one) => one?.entered["rebuild.md#kerf"]);
}

describe("earlier states", () => {
  it("are listed with their times, the newest first, and read one by one", async () => {
    const storage = memoryStorage();
    await noteState(storage, state("1/8"));
    await noteState(storage, state("1/4", { at: at(60), why: "putting back" }));
    expect((await listStates(storage, "rebuild.md")).states).toEqual([
      { number: 2, at: at(60), why: "putting back" },
      { number: 1, at: at(0), why: "typing" },
    ]);
    expect(await readState(storage, "rebuild.md", 1)).toMatchObject(state("1/8"));
    expect(await readState(storage, "rebuild.md", 9)).toBeUndefined();
    expect((await listStates(storage, "garden.md")).states).toEqual([]);
  });

  it("are the last 50; the oldest are dropped, records and all", async () => {
    const storage = memoryStorage();
    for (let count = 1; count <= 60; count += 1) await noteState(storage, state(`${count}/64`));
    const kept = await kerfs(storage);
    expect(kept).toHaveLength(50);
    expect([kept[0], kept[49]]).toEqual(["60/64", "11/64"]);
    const records = (await storage.keys()).filter((key) => key.startsWith("state:"));
    expect(records).toHaveLength(50);
  });

  it("are not kept twice where nothing changed, in whatever order it was entered", async () => {
    const storage = memoryStorage();
    const two = { "rebuild.md#kerf": "1/4", "garden.md#beds": "x" } as const;
    const turned = { "garden.md#beds": "x", "rebuild.md#kerf": "1/4" } as const;
    await noteState(storage, state("", { entered: two }));
    await noteState(storage, state("", { entered: turned, at: at(99) }));
    expect(await kerfs(storage)).toHaveLength(1);
    await noteState(storage, state("", { entered: turned, texts: { "rebuild.md": "#" } }));
    await noteState(storage, state("", { entered: turned, texts: {} }));
    expect(await kerfs(storage)).toHaveLength(3);
  });

  it("of a newer version's index are left alone", async () => {
    const newer = { kind: "states", version: 3, main: "rebuild.md" };
    const storage = memoryStorage(new Map([["states:rebuild.md", newer]]));
    expect(await noteState(storage, state("1/8"))).toBeUndefined();
    expect(await allOf(storage)).toEqual({ "states:rebuild.md": newer });
    expect((await listStates(storage, "rebuild.md")).trouble).toContain("newer version");
  });

  it("of two notebooks whose names begin alike are apart", async () => {
    const storage = memoryStorage();
    await noteState(storage, state("1/8", { main: "a.md" }));
    await noteState(storage, state("1/4", { main: "a.md:1" }));
    expect(await readState(storage, "a.md", 1)).toMatchObject({ main: "a.md" });
  });
});

describe("StateKeeper", () => {
  function keeping(storage: Storage) {
    const troubles: string[] = [];
    const keeper = new StateKeeper(storage, (words) => troubles.push(words));
    let taken = 0;
    const change = (kerf: string, seconds: number, why: NewState["why"] = "typing") =>
      keeper.note(
        () => {
          taken += 1;
          const { at: _at, why: _why, ...content } = state(kerf);
          return content;
        },
        { at: at(seconds), why },
      );
    return { keeper, troubles, change, taken: () => taken };
  }

  it("takes one before the first change after a pause of ten seconds", async () => {
    const storage = memoryStorage();
    const { change, taken } = keeping(storage);
    for (const seconds of [0, 1, 9, 18, 27.9]) await change(`at ${seconds}`, seconds);
    expect(taken()).toBe(1);
    await change("after the pause", 38);
    expect(await kerfs(storage)).toEqual(["after the pause", "at 0"]);
  });

  it("takes one before what changes much at once, pause or not", async () => {
    const storage = memoryStorage();
    const { change } = keeping(storage);
    await change("1", 0);
    await change("2", 1, "editing");
    await change("3", 2, "putting back");
    await change("4", 3, "bringing back");
    await change("5", 4, "typing");
    expect(await kerfs(storage)).toEqual(["4", "3", "1"]);
  });

  it("takes it at once: what changes after is not in it", async () => {
    const storage = memoryStorage();
    const keeper = new StateKeeper(storage, () => undefined);
    const live = { ...entered("before") };
    const noted = keeper.note(() => ({ ...state(""), entered: live }), {
      at: at(0),
      why: "typing",
    });
    live["rebuild.md#kerf"] = "after";
    await noted;
    expect(await kerfs(storage)).toEqual(["before"]);
  });

  it("says when none can be kept, and tries again with the next", async () => {
    const good = memoryStorage();
    let why: Error | undefined = full();
    const { change, troubles } = keeping(failing(good, () => why));
    await change("1", 0);
    expect(troubles[0]).toContain("no room left");
    expect(await kerfs(good)).toEqual([]);
    why = undefined;
    await change("2", 60);
    expect(await kerfs(good)).toEqual(["2", "1"]);
  });
});
