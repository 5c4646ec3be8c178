import { describe, expect, it } from "vitest";
import {
  Keeper,
  loadAllEntered,
  memoryStorage,
  textJournal,
} from "../../../notebooks/engine/store/index.ts";
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
