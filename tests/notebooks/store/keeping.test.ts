import { describe, expect, it } from "vitest";
import {
  Keeper,
  loadAllEntered,
  loadEntered,
  memoryStorage,
  readRecord,
  type Storage,
} from "../../../notebooks/engine/store/index.ts";
import { failing, now } from "./worlds.ts";

const table = {
  kind: "table" as const,
  name: "beds",
  columns: ["bed", "length"],
  rows: [["1", "8 ft"]],
  decimal: "." as const,
};

function keeper(storage: Storage) {
  const troubles: string[] = [];
  return { troubles, keep: new Keeper(storage, (words) => troubles.push(words), { now }) };
}

describe("Keeper", () => {
  it("keeps entries and tables, each with the notebook they belong to", async () => {
    const storage = memoryStorage();
    const { keep } = keeper(storage);
    keep.keep("rebuild.md#kerf", "1/8");
    keep.keep("garden.md#beds", table);
    await keep.flush();
    const { entered, troubles } = await loadAllEntered(storage, ["rebuild.md", "garden.md"]);
    expect(entered).toEqual({ "rebuild.md#kerf": "1/8", "garden.md#beds": table });
    expect(troubles).toEqual([]);
  });

  it("begins to write at once, and gathers what comes meanwhile", async () => {
    const good = memoryStorage();
    let writes = 0;
    const storage: Storage = {
      ...good,
      together(act) {
        writes += 1;
        return good.together(act);
      },
    };
    const keep = new Keeper(storage, () => {}, { now });
    for (const text of ["1", "1/", "1/4"]) keep.keep("rebuild.md#kerf", text);
    expect(writes).toBe(1);
    await keep.flush();
    expect(writes).toBe(2);
    expect((await loadAllEntered(storage, ["rebuild.md"])).entered).toEqual({
      "rebuild.md#kerf": "1/4",
    });
  });

  it("forgets what is put back", async () => {
    const storage = memoryStorage();
    const { keep } = keeper(storage);
    keep.keep("rebuild.md#kerf", "1/4");
    await keep.flush();
    keep.keep("rebuild.md#kerf", undefined);
    await keep.flush();
    expect((await loadAllEntered(storage, ["rebuild.md"])).entered).toEqual({});
  });

  it("leaves alone what another tab has entered in other cells", async () => {
    const storage = memoryStorage();
    const one = keeper(storage).keep;
    const two = keeper(storage).keep;
    one.keep("rebuild.md#kerf", "1/4");
    two.keep("rebuild.md#lap", "ends");
    await Promise.all([one.flush(), two.flush()]);
    expect((await loadAllEntered(storage, ["rebuild.md"])).entered).toEqual({
      "rebuild.md#kerf": "1/4",
      "rebuild.md#lap": "ends",
    });
  });

  it("never writes over a record of a newer version, and says so", async () => {
    const newer = { kind: "entered", version: 2, file: "rebuild.md", cells: { kerf: ["?"] } };
    const storage = memoryStorage(new Map([["entered:rebuild.md", newer]]));
    const { keep, troubles } = keeper(storage);
    keep.keep("rebuild.md#kerf", "1/4");
    await keep.flush();
    expect(await storage.get("entered:rebuild.md")).toEqual(newer);
    expect(troubles[0]).toContain("newer version");
    expect((await loadAllEntered(storage, ["rebuild.md"])).troubles[0]).toContain("newer version");
  });

  it("never writes over what it can't read", async () => {
    const storage = memoryStorage(new Map<string, unknown>([["entered:rebuild.md", "rubbish"]]));
    const { keep, troubles } = keeper(storage);
    keep.keep("rebuild.md#kerf", "1/4");
    await keep.flush();
    expect(await storage.get("entered:rebuild.md")).toBe("rubbish");
    expect(troubles[0]).toContain("can't be read");
  });

  it("says when nothing can be kept, and tries again with the next change", async () => {
    const good = memoryStorage();
    let full = true;
    const storage = failing(good, () => (full ? new Error("the disk is full") : undefined));
    const { keep, troubles } = keeper(storage);
    keep.keep("rebuild.md#kerf", "1/4");
    await keep.flush();
    expect(troubles[0]).toContain("the disk is full");
    full = false;
    keep.keep("rebuild.md#lap", "ends");
    await keep.flush();
    expect((await loadAllEntered(good, ["rebuild.md"])).entered).toEqual({
      "rebuild.md#kerf": "1/4",
      "rebuild.md#lap": "ends",
    });
  });
});

describe("readRecord", () => {
  it.each([
    ["nothing", undefined, "absent"],
    ["a text", "x", "broken"],
    ["null", null, "broken"],
    ["another kind", { kind: "settings", version: 1, units: "us" }, "broken"],
    ["no version", { kind: "entered", file: "a.md", cells: {} }, "broken"],
    ["version 0", { kind: "entered", version: 0, file: "a.md", cells: {} }, "broken"],
    ["a later version", { kind: "entered", version: 9 }, "newer"],
    [
      "a number as text typed",
      { kind: "entered", version: 1, file: "a.md", cells: { k: 1 } },
      "broken",
    ],
    [
      "a table with a short row",
      { kind: "entered", version: 1, file: "a.md", cells: { beds: { ...table, rows: [["1"]] } } },
      "broken",
    ],
    ["a good one", { kind: "entered", version: 1, file: "a.md", cells: { beds: table } }, "record"],
  ])("reads %s", (_, stored, is) => {
    expect(readRecord("entered", stored).is).toBe(is);
  });

  it("finds nothing where nothing was kept", async () => {
    expect(await loadEntered(memoryStorage(), "rebuild.md")).toEqual({ is: "absent" });
  });
});
