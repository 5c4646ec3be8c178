import { describe, expect, it } from "vitest";
import {
  type DocumentRecord,
  Keeper,
  type KeeperOptions,
  loadDocument,
  memoryStorage,
  type Storage,
  textJournal,
} from "../../../notebooks/engine/store/index.ts";
import { listStates, readState, removeDocument } from "../../../notebooks/engine/store/seldom.ts";
import { at, failing, full, made, neverWrites, now, textStore, write } from "./worlds.ts";

async function plot() {
  const storage = memoryStorage();
  await made(storage, "plot.md", { text: "first" });
  return storage;
}

function page(storage: Storage, name: string, options: Partial<KeeperOptions> = {}) {
  const troubles: string[] = [];
  const stands: DocumentRecord[] = [];
  const texts = textStore();
  const keeper = new Keeper(storage, (words) => troubles.push(words), {
    now,
    journal: textJournal(texts, name),
    stands: (record) => stands.push(record),
    ...options,
  });
  return { keeper, troubles, stands, texts };
}

const textOf = async (storage: Storage) => {
  const read = await loadDocument(storage, "plot.md");
  return read.is === "record" ? read.record.text : read.is;
};

/** The texts that went to earlier states, the newest first. */
async function astray(storage: Storage) {
  const { states } = await listStates(storage, "plot.md");
  const all = await Promise.all(states.map(({ number }) => readState(storage, "plot.md", number)));
  return all.map((state) => state?.texts["plot.md"]);
}

describe("a document's text", () => {
  it("is written over what the page knew, as fast as it is typed", async () => {
    const storage = await plot();
    const { keeper, troubles } = page(storage, "a");
    for (const text of ["t", "ty", "typ", "typed"]) write(keeper, text, 1);
    await keeper.flush();
    expect(await loadDocument(storage, "plot.md")).toMatchObject({
      record: { text: "typed", revision: 3, changed: at(1), title: "Plot" },
    });
    write(keeper, "typed on", 1);
    await keeper.flush();
    expect(await textOf(storage)).toBe("typed on");
    expect(troubles).toEqual([]);
    expect(await astray(storage)).toEqual([]);
  });

  it("is no conflict with itself where there is no journal", async () => {
    const storage = await plot();
    const { keeper, troubles } = page(storage, "a", { journal: undefined });
    for (const text of ["t", "ty", "typ", "typed"]) write(keeper, text, 1);
    await keeper.flush();
    expect(await textOf(storage)).toBe("typed");
    expect(troubles).toEqual([]);
    const other = page(storage, "b", { journal: undefined });
    write(other.keeper, "other", 2);
    await other.keeper.flush();
    expect(await textOf(storage)).toBe("typed");
    expect(await astray(storage)).toEqual(["other"]);
  });

  it("gives way to another tab's, and is kept among the earlier states", async () => {
    const storage = await plot();
    const one = page(storage, "a");
    const two = page(storage, "b");
    write(one.keeper, "one's", 1);
    await one.keeper.flush();
    write(two.keeper, "two's", 1);
    await two.keeper.flush();
    expect(await textOf(storage)).toBe("one's");
    expect(await astray(storage)).toEqual(["two's"]);
    expect(two.troubles[0]).toContain("changed in another tab");
    expect(two.stands).toMatchObject([{ text: "one's", revision: 2 }]);
    expect(one.troubles).toEqual([]);
  });

  it("fills one state only, however long one types on beside the text that stands", async () => {
    const storage = await plot();
    const one = page(storage, "a");
    const two = page(storage, "b");
    write(one.keeper, "one's", 1);
    await one.keeper.flush();
    for (let count = 1; count <= 60; count += 1) {
      write(two.keeper, `two's ${count}`, 1);
      await two.keeper.flush();
    }
    expect(await astray(storage)).toEqual(["two's 60"]);
    expect(two.troubles).toHaveLength(1);
    two.keeper.sawText("plot.md", 2);
    write(two.keeper, "both", 1);
    await two.keeper.flush();
    expect(await textOf(storage)).toBe("both");
    expect(await astray(storage)).toEqual(["two's 60"]);
  });

  it("two tabs that see each other's texts go on in turn", async () => {
    const storage = await plot();
    const one = page(storage, "a");
    const two = page(storage, "b");
    for (let revision = 1; revision < 9; revision += 1) {
      const { keeper } = revision % 2 === 0 ? one : two;
      write(keeper, `text ${revision}`, revision);
      await keeper.flush();
    }
    expect(await loadDocument(storage, "plot.md")).toMatchObject({
      record: { text: "text 8", revision: 9 },
    });
    expect(await astray(storage)).toEqual([]);
  });

  it("is not lost where the document was removed in another tab", async () => {
    const storage = await plot();
    const { keeper, troubles } = page(storage, "a");
    await removeDocument(storage, "plot.md", { at: at(5) });
    write(keeper, "written after", 1);
    await keeper.flush();
    expect(await textOf(storage)).toBe("absent");
    expect((await astray(storage))[0]).toBe("written after");
    expect(troubles[0]).toContain("removed in another tab");
  });

  it("never goes over a newer version's, nor over what can't be read", async () => {
    for (const stored of [{ kind: "document", version: 4 }, "rubbish"]) {
      const storage = memoryStorage(new Map<string, unknown>([["document:plot.md", stored]]));
      const { keeper, troubles, texts } = page(storage, "a");
      write(keeper, "mine", 1);
      await keeper.flush();
      expect(await storage.get("document:plot.md")).toEqual(stored);
      expect(await astray(storage)).toEqual(["mine"]);
      expect(troubles[0]).toMatch(/newer version|can't be read/);
      expect(texts.held.size).toBe(0);
    }
  });

  it("stays in the journal where it can go nowhere", async () => {
    const newer = { version: 4 };
    const storage = memoryStorage(
      new Map<string, unknown>([
        ["document:plot.md", { ...newer, kind: "document" }],
        ["states:plot.md", { ...newer, kind: "states" }],
      ]),
    );
    const { keeper, troubles, texts } = page(storage, "a");
    write(keeper, "mine", 1);
    await keeper.flush();
    expect([...texts.held.values()].join()).toContain("mine");
    expect(troubles[0]).toContain("save it as a file");
    expect(await storage.keys()).toHaveLength(2);
  });
});

describe("a page that ended", () => {
  it("has its last text written by the next", async () => {
    const storage = await plot();
    const texts = textStore();
    const gone = new Keeper(neverWrites(), () => undefined, {
      now,
      journal: textJournal(texts, "gone"),
    });
    write(gone, "typed last", 1);
    const next = page(storage, "next", { journal: textJournal(texts, "next") });
    await next.keeper.takeUp();
    expect(await textOf(storage)).toBe("typed last");
    expect(texts.held.size).toBe(0);
    expect(next.troubles).toEqual([]);
  });

  it("is followed on where its own earlier text had come through", async () => {
    const storage = await plot();
    const texts = textStore();
    const gone = page(storage, "gone");
    write(gone.keeper, "typed", 1);
    await gone.keeper.flush();
    const journal = textJournal(texts, "gone");
    const last = { text: "typed more", title: "Plot", revision: 1, changed: at(2) };
    journal.hold({ entries: new Map(), texts: new Map([["plot.md", last]]) });
    const next = page(storage, "next", { journal: textJournal(texts, "next") });
    await next.keeper.takeUp();
    expect(await textOf(storage)).toBe("typed more");
    expect(await astray(storage)).toEqual([]);
  });

  it("gives way to what another wrote after it", async () => {
    const storage = await plot();
    const texts = textStore();
    const last = { text: "left behind", title: "Plot", revision: 1, changed: at(2) };
    textJournal(texts, "gone").hold({ entries: new Map(), texts: new Map([["plot.md", last]]) });
    const other = page(storage, "other");
    write(other.keeper, "written since", 1);
    await other.keeper.flush();
    const next = page(storage, "next", { journal: textJournal(texts, "next") });
    await next.keeper.takeUp();
    expect(await textOf(storage)).toBe("written since");
    expect(await astray(storage)).toEqual(["left behind"]);
    expect(texts.held.size).toBe(0);
  });

  it("loses nothing where the disk is full meanwhile", async () => {
    const storage = await plot();
    const texts = textStore();
    const last = { text: "typed last", title: "Plot", revision: 1, changed: at(2) };
    textJournal(texts, "gone").hold({ entries: new Map(), texts: new Map([["plot.md", last]]) });
    let why: Error | undefined = full();
    let again: () => void = () => undefined;
    const next = page(
      failing(storage, () => why),
      "next",
      {
        journal: textJournal(texts, "next"),
        later(act) {
          again = act;
        },
      },
    );
    await next.keeper.takeUp();
    expect(next.keeper.textOnItsWay("plot.md")).toBe("typed last");
    expect(texts.held.size).toBe(1);
    expect(next.troubles[0]).toContain("no room left");
    why = undefined;
    again();
    await next.keeper.flush();
    expect(await textOf(storage)).toBe("typed last");
    expect(texts.held.size).toBe(0);
  });
});
