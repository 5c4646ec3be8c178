import { describe, expect, it } from "vitest";
import {
  Keeper,
  loadAllEntered,
  memoryStorage,
  textJournal,
} from "../../../notebooks/engine/store/index.ts";
import { readState } from "../../../notebooks/engine/store/seldom.ts";
import { failing, full, neverWrites, now, textStore } from "./worlds.ts";

const quiet = () => undefined;

describe("the journal", () => {
  it("brings back what a page that ended had not written", async () => {
    const texts = textStore();
    new Keeper(neverWrites(), quiet, { journal: textJournal(texts, "first"), now }).keep(
      "a.md#size",
      "10 ft",
    );
    const storage = memoryStorage();
    await new Keeper(storage, quiet, { journal: textJournal(texts, "second"), now }).takeUp();
    const { entered } = await loadAllEntered(storage, ["a.md"]);
    expect(entered).toEqual({ "a.md#size": "10 ft" });
    expect(texts.held.size).toBe(0);
  });

  it("holds nothing once it is written", async () => {
    const texts = textStore();
    const keeper = new Keeper(memoryStorage(), quiet, {
      journal: textJournal(texts, "first"),
      now,
    });
    keeper.keep("a.md#size", "10 ft");
    expect(texts.held.size).toBe(1);
    await keeper.flush();
    expect(texts.held.size).toBe(0);
  });

  it("brings back a default, and keeps what it cannot write", async () => {
    const texts = textStore();
    const storage = memoryStorage();
    const before = new Keeper(storage, quiet, { now });
    before.keep("a.md#size", "10 ft");
    await before.flush();
    new Keeper(neverWrites(), quiet, { journal: textJournal(texts, "first"), now }).keep(
      "a.md#size",
      undefined,
    );
    await new Keeper(failing(storage, full), quiet, {
      journal: textJournal(texts, "second"),
      now,
    }).takeUp();
    expect(texts.held.size).toBe(1);
    await new Keeper(storage, quiet, { journal: textJournal(texts, "third"), now }).takeUp();
    expect((await loadAllEntered(storage, ["a.md"])).entered).toEqual({});
  });

  it("is not forgotten where an open page holds something newer by now", async () => {
    const texts = textStore();
    const open = textJournal(texts, "open");
    const hold = (text: string) =>
      open.hold({ entries: new Map([["a.md#size", text]]), texts: new Map() });
    hold("10 ft");
    const [left] = textJournal(texts, "next").leftBehind();
    hold("12 ft");
    left?.done();
    expect([...texts.held.values()].join()).toContain("12 ft");
    textJournal(texts, "next").leftBehind()[0]?.done();
    expect(texts.held.size).toBe(0);
  });

  it("keeps what it writes over among the earlier states", async () => {
    const texts = textStore();
    const entries = new Map([["a.md#size", "10 ft"]] as const);
    textJournal(texts, "gone").hold({ entries, texts: new Map() });
    const storage = memoryStorage();
    const since = new Keeper(storage, quiet, { now });
    since.keep("a.md#size", "12 ft");
    await since.flush();
    await new Keeper(storage, quiet, { journal: textJournal(texts, "next"), now }).takeUp();
    expect((await loadAllEntered(storage, ["a.md"])).entered).toEqual({ "a.md#size": "10 ft" });
    expect(await readState(storage, "a.md", 1)).toMatchObject({
      why: "left behind",
      entered: { "a.md#size": "12 ft" },
    });
  });

  it("reads what an earlier version of it held: entries alone", async () => {
    const texts = textStore();
    texts.setItem("bedwright:on-its-way:old", '[["a.md#size","10 ft"],["a.md#lap",null]]');
    const storage = memoryStorage();
    await new Keeper(storage, quiet, { journal: textJournal(texts, "next"), now }).takeUp();
    expect((await loadAllEntered(storage, ["a.md"])).entered).toEqual({ "a.md#size": "10 ft" });
  });

  it("of a newer version is left for that", async () => {
    const texts = textStore();
    const newer = '{"version":2,"entries":[["a.md#size","10 ft"]],"texts":[]}';
    texts.setItem("bedwright:on-its-way:new", newer);
    const storage = memoryStorage();
    await new Keeper(storage, quiet, { journal: textJournal(texts, "next"), now }).takeUp();
    expect(await storage.keys()).toEqual([]);
    expect(texts.getItem("bedwright:on-its-way:new")).toBe(newer);
  });

  it("that is full is said where the storage fails too", async () => {
    const texts = textStore();
    texts.full = true;
    const said: string[] = [];
    const keeper = new Keeper(failing(memoryStorage(), full), (words) => said.push(words), {
      journal: textJournal(texts, "first"),
      now,
    });
    keeper.keep("a.md#size", "10 ft");
    await keeper.flush();
    expect(said.join(" ")).toContain("Save the notebook as a file now");
  });

  it("takes no notice of what is not its own", async () => {
    const texts = textStore();
    texts.setItem("bedwright:on-its-way:x", '[["no cell","y"],["a.md#z",3],{}]');
    texts.setItem("bedwright:on-its-way:y", "not even JSON");
    texts.setItem("somebody else's", '[["a.md#size","9 ft"]]');
    const storage = memoryStorage();
    await new Keeper(storage, quiet, { journal: textJournal(texts, "second"), now }).takeUp();
    expect((await loadAllEntered(storage, ["a.md"])).entered).toEqual({});
    expect(texts.getItem("somebody else's")).not.toBeNull();
  });
});
