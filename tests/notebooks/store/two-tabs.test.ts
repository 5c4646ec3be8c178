import { describe, expect, it } from "vitest";
import {
  Keeper,
  loadAllEntered,
  memoryStorage,
  type OtherTabs,
  otherTabs,
  type Storage,
} from "../../../notebooks/engine/store/index.ts";
import { listStates, readState } from "../../../notebooks/engine/store/seldom.ts";
import { at, made, newsOf, now, tabs, write } from "./worlds.ts";

const files = ["rebuild.md", "garden.md"];
const scope = { main: "rebuild.md", apart: false };

async function tab(storage: Storage, others?: OtherTabs) {
  const troubles: string[] = [];
  const keeper = new Keeper(storage, (words) => troubles.push(words), { now, scope, others });
  const { entered } = await keeper.load(files);
  return { keeper, troubles, entered };
}

async function states(storage: Storage) {
  const { states } = await listStates(storage, "rebuild.md");
  return Promise.all(states.map(({ number }) => readState(storage, "rebuild.md", number)));
}

describe("two tabs that type in the same cell", () => {
  it("keep what was typed last, and the other among the earlier states", async () => {
    const storage = memoryStorage();
    const [one, two] = [await tab(storage), await tab(storage)];
    one.keeper.keep("rebuild.md#lap", "ends");
    one.keeper.keep("rebuild.md#kerf", "1/4");
    await one.keeper.flush();
    two.keeper.keep("rebuild.md#kerf", "3/16");
    await two.keeper.flush();
    expect((await loadAllEntered(storage, files)).entered).toEqual({
      "rebuild.md#lap": "ends",
      "rebuild.md#kerf": "3/16",
    });
    expect(await states(storage)).toMatchObject([
      {
        why: "two tabs",
        files,
        entered: { "rebuild.md#lap": "ends", "rebuild.md#kerf": "1/4" },
      },
    ]);
    expect(two.troubles).toHaveLength(1);
    expect(two.troubles[0]).toContain("kerf");
    two.keeper.keep("rebuild.md#kerf", "3/16 in");
    await two.keeper.flush();
    expect(await states(storage)).toHaveLength(1);
  });

  it("is no accident where the page shows what the other typed", async () => {
    const storage = memoryStorage();
    const [one, two] = [await tab(storage), await tab(storage)];
    one.keeper.keep("rebuild.md#kerf", "1/4");
    await one.keeper.flush();
    two.keeper.saw(new Map([["rebuild.md#kerf", "1/4"]]));
    two.keeper.keep("rebuild.md#kerf", "3/16");
    await two.keeper.flush();
    expect(two.troubles).toEqual([]);
    expect(await states(storage)).toEqual([]);
  });

  it("counts what was loaded, and a default put back, as seen", async () => {
    const storage = memoryStorage();
    const one = await tab(storage);
    one.keeper.keep("rebuild.md#kerf", "1/4");
    await one.keeper.flush();
    const two = await tab(storage);
    expect(two.entered).toEqual({ "rebuild.md#kerf": "1/4" });
    two.keeper.keep("rebuild.md#kerf", undefined);
    await two.keeper.flush();
    one.keeper.keep("rebuild.md#kerf", "1/8");
    await one.keeper.flush();
    // The first tab had never seen it put back: what it held by then was nothing.
    expect(await states(storage)).toMatchObject([{ entered: {} }]);
  });

  it("is no accident in a document that came to be used later", async () => {
    const storage = memoryStorage();
    const [one, two] = [await tab(storage), await tab(storage)];
    one.keeper.keep("prices.md#tax", "7 %");
    await one.keeper.flush();
    two.keeper.keep("prices.md#tax", "8 %");
    await two.keeper.flush();
    expect(two.troubles).toEqual([]);
    await two.keeper.load(["prices.md"]);
    one.keeper.keep("prices.md#tax", "9 %");
    one.keeper.keep("rebuild.md#kerf", "1/4");
    await one.keeper.flush();
    two.keeper.keep("rebuild.md#kerf", "1/8");
    two.keeper.keep("prices.md#tax", "10 %");
    await two.keeper.flush();
    // What was loaded before is still known.
    expect(two.troubles.join(" ")).toMatch(/kerf.*tax/);
  });

  it("keeps a state or nothing at all, never the new value alone", async () => {
    const good = memoryStorage();
    const one = await tab(good);
    let puts = 0;
    const failsLate: Storage = {
      ...good,
      together: (act) =>
        good.together((step) =>
          act({
            ...step,
            put(key, record) {
              puts += 1;
              if (key.startsWith("state:")) throw new Error("no room for the state");
              return step.put(key, record);
            },
          }),
        ),
    };
    const two = await tab(failsLate);
    one.keeper.keep("rebuild.md#kerf", "1/4");
    await one.keeper.flush();
    two.keeper.keep("rebuild.md#kerf", "3/16");
    await two.keeper.flush();
    expect(puts).toBeGreaterThan(1);
    expect((await loadAllEntered(good, files)).entered).toEqual({ "rebuild.md#kerf": "1/4" });
  });
});

describe("what tabs tell each other", () => {
  it("is what was written, once it was", async () => {
    const storage = memoryStorage();
    await made(storage, "plot.md");
    const [own, other] = tabs(2);
    if (!own || !other) throw new Error("two tabs are needed");
    const [mine, heard] = [newsOf(own), newsOf(other)];
    const { keeper } = await tab(storage, own);
    keeper.keep("rebuild.md#kerf", "1/4");
    keeper.keep("rebuild.md#lap", undefined);
    expect(heard).toEqual([]);
    await keeper.flush();
    write(keeper, "# new\n", 1);
    await keeper.flush();
    expect(heard).toEqual([
      { what: "entered", place: "rebuild.md", cells: { kerf: "1/4" } },
      { what: "entered", place: "rebuild.md", cells: { lap: null } },
      { what: "text", place: "plot.md", text: "# new\n", title: "Plot", revision: 2 },
    ]);
    expect(mine).toEqual([]);
  });

  it("is told by the place, where a notebook keeps things apart", async () => {
    const [own, other] = tabs(2);
    if (!own || !other) throw new Error("two tabs are needed");
    const heard = newsOf(other);
    const keeper = new Keeper(memoryStorage(), () => undefined, {
      now,
      others: own,
      scope: { main: "plot.md", apart: true },
    });
    keeper.keep("garden.md#beds", "x");
    await keeper.flush();
    expect(heard).toEqual([{ what: "entered", place: "plot.md>garden.md", cells: { beds: "x" } }]);
  });

  it.each([
    ["nothing", undefined],
    ["something of another program", { hello: 1 }],
    ["another version", { bedwright: 2, news: { what: "plans", main: "a.md" } }],
    ["a value that is no text", { what: "entered", place: "a.md", cells: { x: 1 } }],
    ["no place", { what: "entered", cells: { x: "1" } }],
    ["a text without its revision", { what: "text", place: "a.md", text: "", title: "" }],
    ["an unknown kind", { what: "weather", place: "a.md" }],
  ])("is not heard where it is %s", (_, news) => {
    let tell: (event: { readonly data: unknown }) => void = () => undefined;
    const others = otherTabs({
      postMessage: () => undefined,
      addEventListener(_type, listener) {
        tell = listener;
      },
    });
    const heard = newsOf(others);
    tell({ data: news });
    tell({ data: { bedwright: 1, news } });
    expect(heard).toEqual([]);
    tell({ data: { bedwright: 1, news: { what: "plans", main: "a.md" } } });
    expect(heard).toHaveLength(1);
  });

  it("may be told to a channel that was closed", () => {
    const others = otherTabs({
      postMessage() {
        throw new DOMException("closed", "InvalidStateError");
      },
      addEventListener: () => undefined,
    });
    expect(() => others.changed({ what: "plans", main: at(0) })).not.toThrow();
  });
});
