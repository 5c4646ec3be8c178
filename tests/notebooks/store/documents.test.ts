import { describe, expect, it } from "vitest";
import {
  createDocument,
  listDocuments,
  loadAllEntered,
  loadDocument,
  memoryStorage,
  noteState,
  setOwnGarden,
} from "../../../notebooks/engine/store/index.ts";
import {
  bringBackDocument,
  keepPlan,
  listRemoved,
  listStates,
  loadPlans,
  readState,
  removeDocument,
  renameDocument,
} from "../../../notebooks/engine/store/seldom.ts";
import { allOf, at, failing, full, made } from "./worlds.ts";

const carried = new Map([["garden.md", "# Garden\n"]]);
const entered = { kerf: "1/8 in", "garden.md#beds": "east" };
const apart = { main: "plot.md", apart: true };

describe("a new document", () => {
  it("is kept with what it carries and what is entered in both", async () => {
    const storage = memoryStorage();
    const record = await made(storage, "plot.md", { carried, entered, title: "My plot" });
    expect(record).toMatchObject({ place: "plot.md", title: "My plot", revision: 1 });
    expect(await loadDocument(storage, "plot.md")).toEqual({ is: "record", record });
    expect(await loadDocument(storage, "plot.md>garden.md")).toMatchObject({
      record: { text: "# Garden\n", place: "plot.md>garden.md" },
    });
    const all = await loadAllEntered(storage, ["plot.md", "garden.md"], apart);
    expect(all.entered).toEqual({ "plot.md#kerf": "1/8 in", "garden.md#beds": "east" });
    expect((await loadAllEntered(storage, ["garden.md"])).entered).toEqual({});
  });

  it("never writes over anything: it gets another name", async () => {
    const storage = memoryStorage();
    await made(storage, "plot.md", { text: "mine" });
    const second = await made(storage, "plot.md", { text: "another", carried, entered });
    expect(second.place).toBe("plot-2.md");
    expect(await loadDocument(storage, "plot.md")).toMatchObject({ record: { text: "mine" } });
    expect((await made(storage, "rebuild.md", { taken: ["rebuild.md"] })).place).toBe(
      "rebuild-2.md",
    );
    expect(await storage.get("entered:plot-2.md")).toMatchObject({ cells: { kerf: "1/8 in" } });
    expect(await storage.get("entered:plot.md")).toBeUndefined();
  });

  it("leaves alone what is kept under its name by somebody gone", async () => {
    const storage = memoryStorage(
      new Map([["plans:plot.md", { kind: "plans", version: 1, main: "plot.md", plans: [] }]]),
    );
    expect((await made(storage, "plot.md")).place).toBe("plot-2.md");
  });

  it("may stand in for a shipped one, with what was entered there", async () => {
    const held = { kind: "entered", version: 1, file: "rebuild.md", cells: { kerf: "1/4" } };
    const storage = memoryStorage(new Map([["entered:rebuild.md", held]]));
    const more = { exact: true, entered: { kerf: "1/16" } };
    expect((await made(storage, "rebuild.md", more)).place).toBe("rebuild.md");
    expect(await storage.get("entered:rebuild.md")).toEqual(held);
    await expect(made(storage, "rebuild.md", more)).rejects.toThrow("already");
  });

  it("is kept whole or not at all", async () => {
    const storage = memoryStorage();
    const outcome = await createDocument(
      failing(storage, () => full()),
      { file: "a.md", text: "", title: "", origin: { from: "new" }, changed: at(0), carried },
    );
    expect(outcome).toMatchObject({ good: false });
    expect(outcome.good ? "" : outcome.words).toContain("no room left");
    expect(await storage.keys()).toEqual([]);
  });
});

describe("the list of documents", () => {
  it("has the reader's own, the last changed first, and nothing they carry", async () => {
    const storage = memoryStorage();
    await made(storage, "old.md", { changed: at(1), carried });
    await made(storage, "new.md", { changed: at(9) });
    await storage.change("document:later.md", () => ({ kind: "document", version: 9 }));
    const { documents, troubles } = await listDocuments(storage);
    expect(documents.map(({ place }) => place)).toEqual(["new.md", "old.md"]);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toContain("newer version");
  });
});

describe("the own garden", () => {
  it("is chosen and given up again; the text is not touched", async () => {
    const storage = memoryStorage();
    const before = await made(storage, "plot.md", { carried });
    expect(await setOwnGarden(storage, "plot.md", true)).toEqual({
      good: true,
      value: { ...before, ownGarden: true },
    });
    await setOwnGarden(storage, "plot.md", false);
    expect(await loadDocument(storage, "plot.md")).toMatchObject({ record: before });
    expect(await setOwnGarden(storage, "none.md", true)).toMatchObject({ good: false });
  });
});

async function fullPlot() {
  const storage = memoryStorage();
  await made(storage, "plot.md", { carried, entered });
  await made(storage, "other.md");
  const plan = { name: "Cedar", entered: { "plot.md#kerf": "1/4", "garden.md#beds": "x" } };
  await keepPlan(storage, "plot.md", { ...plan, made: at(1) });
  await noteState(storage, {
    main: "plot.md",
    at: at(2),
    why: "typing",
    apart: true,
    files: ["plot.md", "garden.md"],
    texts: { "plot.md": "# before\n" },
    entered: { "plot.md#kerf": "1/16" },
  });
  return storage;
}

describe("a document that is removed", () => {
  it("goes with all of it, and comes back as it was", async () => {
    const storage = await fullPlot();
    const before = await allOf(storage);
    expect(await removeDocument(storage, "plot.md", { at: at(9) })).toMatchObject({ good: true });
    const left = (await storage.keys()).filter((key) => /^(document|entered|plans):/.test(key));
    expect(left).toEqual(["document:other.md"]);
    expect(await listRemoved(storage)).toEqual([{ file: "plot.md", title: "plot.md", at: at(9) }]);
    const back = await bringBackDocument(storage, "plot.md");
    expect(back).toMatchObject({ good: true, value: { place: "plot.md" } });
    expect(await allOf(storage)).toMatchObject({
      ...before,
      "states:plot.md": { states: [{ number: 1 }, { number: 2, why: "removing" }] },
    });
    expect(await listRemoved(storage)).toEqual([]);
  });

  it("leaves a state that can be looked at like any other", async () => {
    const storage = await fullPlot();
    await removeDocument(storage, "plot.md", { at: at(9) });
    expect(await readState(storage, "plot.md", 2)).toMatchObject({
      texts: { "plot.md": "# plot.md\n", "garden.md": "# Garden\n" },
      entered: { "plot.md#kerf": "1/8 in", "garden.md#beds": "east" },
    });
  });

  it("keeps its name from others, so that nothing mixes", async () => {
    const storage = await fullPlot();
    await removeDocument(storage, "plot.md", { at: at(9) });
    expect((await made(storage, "plot.md")).place).toBe("plot-2.md");
  });

  it("stays where its last state can't be kept", async () => {
    const storage = await fullPlot();
    const before = await allOf(storage);
    const refused = await removeDocument(failing(storage, full), "plot.md", { at: at(9) });
    expect(refused).toMatchObject({ good: false });
    await storage.change("states:plot.md", () => ({ kind: "states", version: 7 }));
    expect(await removeDocument(storage, "plot.md", { at: at(9) })).toMatchObject({ good: false });
    expect(await allOf(storage)).toEqual({
      ...before,
      "states:plot.md": { kind: "states", version: 7 },
    });
    expect(await removeDocument(storage, "none.md", { at: at(9) })).toMatchObject({ good: false });
  });
});

describe("a document that gets another name", () => {
  it("takes all of it along", async () => {
    const storage = await fullPlot();
    expect(await renameDocument(storage, "plot.md", { to: "North plot" })).toEqual({
      good: true,
      value: "North-plot.md",
    });
    const keys = await storage.keys();
    expect(keys.filter((key) => key.includes("plot.md") && !key.includes("North"))).toEqual([]);
    const scope = { main: "North-plot.md", apart: true };
    expect(await loadAllEntered(storage, ["North-plot.md", "garden.md"], scope)).toEqual({
      entered: { "North-plot.md#kerf": "1/8 in", "garden.md#beds": "east" },
      troubles: [],
    });
    expect((await loadPlans(storage, "North-plot.md")).plans).toMatchObject([
      { entered: { "North-plot.md#kerf": "1/4", "garden.md#beds": "x" } },
    ]);
    const { states } = await listStates(storage, "North-plot.md");
    expect(states.map(({ number }) => number)).toEqual([1]);
    expect(await readState(storage, "North-plot.md", 1)).toMatchObject({
      files: ["North-plot.md", "garden.md"],
      texts: { "North-plot.md": "# before\n" },
      entered: { "North-plot.md#kerf": "1/16" },
    });
  });

  it("never takes a name that is taken", async () => {
    const storage = await fullPlot();
    const renamed = await renameDocument(storage, "plot.md", { to: "other", taken: ["x.md"] });
    expect(renamed).toEqual({ good: true, value: "other-2.md" });
    expect(await renameDocument(storage, "other-2.md", { to: "x", taken: ["x.md"] })).toEqual({
      good: true,
      value: "x-2.md",
    });
    expect(await renameDocument(storage, "x-2.md", { to: "x-2.md" })).toMatchObject({
      value: "x-2.md",
    });
  });

  it("stays where something of it is from a newer version", async () => {
    const storage = await fullPlot();
    await storage.change("plans:plot.md", () => ({ kind: "plans", version: 5 }));
    const before = await allOf(storage);
    const refused = await renameDocument(storage, "plot.md", { to: "other" });
    expect(refused.good ? "" : refused.words).toContain("plans:plot.md");
    expect(await allOf(storage)).toEqual(before);
  });
});
