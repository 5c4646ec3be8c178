import { describe, expect, it } from "vitest";
import { memoryStorage, type Storage } from "../../../notebooks/engine/store/index.ts";
import {
  keepPlan,
  loadPlans,
  orderPlans,
  plansFollow,
  removePlan,
  renamePlan,
} from "../../../notebooks/engine/store/seldom.ts";
import { at, failing, full } from "./worlds.ts";

const main = "rebuild.md";
const entered = { "rebuild.md#timber": "cedar" } as const;
const keep = (storage: Storage, name: string) =>
  keepPlan(storage, main, { name, entered, made: at(0) });
const names = async (storage: Storage) =>
  (await loadPlans(storage, main)).plans.map(({ name }) => name);

async function three() {
  const storage = memoryStorage();
  for (const name of ["Pine", "Cedar", "Steel"]) await keep(storage, name);
  return storage;
}

describe("kept plans", () => {
  it("stand in the order they were kept, with all that was entered", async () => {
    const storage = await three();
    const kept = await keep(storage, "  Larch ");
    expect(kept).toMatchObject({ good: true });
    expect(await names(storage)).toEqual(["Pine", "Cedar", "Steel", "Larch"]);
    expect((await loadPlans(storage, main)).plans[3]).toEqual({
      name: "Larch",
      entered,
      made: at(0),
    });
    expect((await loadPlans(storage, "garden.md")).plans).toEqual([]);
  });

  it.each([
    ["one of that name", "Cedar", "already"],
    ["no name", "  ", "needs a name"],
    ["a name too long", "x".repeat(81), "at most 80 letters; this one has 81"],
  ])("refuse %s", async (_, name, words) => {
    const storage = await three();
    const kept = await keep(storage, name);
    expect(kept.good ? "" : kept.words).toContain(words);
    expect(await names(storage)).toEqual(["Pine", "Cedar", "Steel"]);
  });

  it("take a name of 80 letters", async () => {
    expect(await keep(memoryStorage(), "x".repeat(80))).toMatchObject({ good: true });
  });

  it("are renamed in their place, but not onto another", async () => {
    const storage = await three();
    await renamePlan(storage, main, { from: "Cedar", to: "Red cedar" });
    expect(await names(storage)).toEqual(["Pine", "Red cedar", "Steel"]);
    expect(await renamePlan(storage, main, { from: "Pine", to: "Steel" })).toMatchObject({
      good: false,
    });
    expect(await renamePlan(storage, main, { from: "Pine", to: "Pine" })).toMatchObject({
      good: true,
    });
    expect(await renamePlan(storage, main, { from: "Oak", to: "Ash" })).toMatchObject({
      good: false,
    });
    expect(await names(storage)).toEqual(["Pine", "Red cedar", "Steel"]);
  });

  it("are removed, and kept again", async () => {
    const storage = await three();
    const removed = await removePlan(storage, main, "Cedar");
    expect(await names(storage)).toEqual(["Pine", "Steel"]);
    if (!removed.good) throw new Error(removed.words);
    await keepPlan(storage, main, removed.value);
    await orderPlans(storage, main, ["Pine", "Cedar"]);
    expect(await loadPlans(storage, main)).toEqual(await loadPlans(await three(), main));
    expect(await removePlan(storage, main, "Oak")).toMatchObject({ good: false });
  });

  it("are put into another order, and none is lost by it", async () => {
    const storage = await three();
    await orderPlans(storage, main, ["Steel", "Oak", "Steel"]);
    expect(await names(storage)).toEqual(["Steel", "Pine", "Cedar"]);
  });

  it("are both kept where two tabs keep one at the same time", async () => {
    const storage = memoryStorage();
    await Promise.all([keep(storage, "One"), keep(storage, "Two")]);
    expect(await names(storage)).toEqual(["One", "Two"]);
  });

  it("are never written over where they can't be read, or the disk is full", async () => {
    for (const stored of [{ kind: "plans", version: 2 }, "rubbish"]) {
      const storage = memoryStorage(new Map<string, unknown>([["plans:rebuild.md", stored]]));
      expect(await keep(storage, "Cedar")).toMatchObject({ good: false });
      expect(await storage.get("plans:rebuild.md")).toEqual(stored);
      expect((await loadPlans(storage, main)).trouble).toMatch(/newer version|can't be read/);
    }
    const kept = await keep(failing(memoryStorage(), full), "Cedar");
    expect(kept.good ? "" : kept.words).toContain("no room left");
  });

  it("hold under a cell's new name what they held under the old one, which stays for undoing", async () => {
    const storage = await three();
    await keepPlan(storage, main, { name: "Bare", entered: {}, made: at(0) });
    await plansFollow(storage, main, new Map([["rebuild.md#timber", "rebuild.md#wood"]]));
    const { plans } = await loadPlans(storage, main);
    expect(plans[0]?.entered).toEqual({ ...entered, "rebuild.md#wood": "cedar" });
    expect(plans[3]?.entered).toEqual({});
  });
});
