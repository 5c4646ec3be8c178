import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  keepUnits,
  loadAllEntered,
  loadDocument,
  memoryStorage,
  noteState,
  type Storage,
} from "../../../notebooks/engine/store/index.ts";
import {
  exportAll,
  importAll,
  keepPlan,
  listStates,
  loadPlans,
  readState,
  removeDocument,
} from "../../../notebooks/engine/store/seldom.ts";
import { allOf, at, failing, full, made } from "./worlds.ts";

const table = {
  kind: "table" as const,
  name: "beds",
  columns: ["bed"],
  rows: [["1"]],
  decimal: "." as const,
};
const state = {
  main: "rebuild.md",
  at: at(1),
  why: "typing" as const,
  apart: false,
  files: ["rebuild.md"],
  texts: {},
  entered: { "rebuild.md#kerf": "1/16" },
};

/** A browser in which something of every kind is kept. */
async function everyKind(): Promise<Storage> {
  const storage = memoryStorage();
  await made(storage, "plot.md", {
    text: "# Plot\n",
    carried: new Map([["garden.md", "# Garden\n"]]),
    entered: { kerf: "1/8 in", "garden.md#beds": table },
  });
  await made(storage, "gone.md");
  await removeDocument(storage, "gone.md", { at: at(3) });
  await enter(storage, "rebuild.md", { kerf: "1/4" });
  await enter(storage, "garden.md", { beds: table });
  await plan(storage, "Cedar", "1/8");
  await noteState(storage, state);
  await keepUnits(storage, "metric");
  return storage;
}

function enter(storage: Storage, file: string, cells: Record<string, unknown>) {
  return storage.change(`entered:${file}`, () => ({ kind: "entered", version: 1, file, cells }));
}

function plan(storage: Storage, name: string, kerf: string) {
  const entered = { "rebuild.md#kerf": kerf } as const;
  return keepPlan(storage, "rebuild.md", { name, entered, made: at(2) });
}

async function take(storage: Storage, text: string, taken: readonly string[] = []) {
  const came = await importAll(storage, text, { at: at(50), taken });
  if (!came.good) throw new Error(came.words);
  return came.value;
}

describe("everything in one file", () => {
  it("comes out in another browser just as it was", async () => {
    const storage = await everyKind();
    const text = await exportAll(storage);
    expect(JSON.parse(text)).toMatchObject({ kind: "bedwright-all", version: 1 });
    const other = memoryStorage();
    const said = await take(other, text);
    expect(await allOf(other)).toEqual(await allOf(storage));
    expect(said.join(" ")).toContain("“plot.md” (plot.md) came in.");
    expect(await exportAll(other)).toBe(text);
  });

  it("changes nothing where it is taken in again", async () => {
    const storage = await everyKind();
    const before = await allOf(storage);
    expect(await take(storage, await exportAll(storage))).toEqual([
      "Everything in the file was here already.",
    ]);
    expect(await allOf(storage)).toEqual(before);
  });

  it("has in it what this version can't read, and leaves alone what is none of ours", async () => {
    const storage = memoryStorage(
      new Map<string, unknown>([
        ["entered:a.md", { kind: "entered", version: 9, secret: 1 }],
        ["of another program", { x: 1 }],
      ]),
    );
    const text = await exportAll(storage);
    expect(Object.keys(JSON.parse(text).records)).toEqual(["entered:a.md"]);
    const other = memoryStorage();
    const said = await take(other, text);
    expect(said).toEqual([
      "entered:a.md was written by a newer version of the workbook; it was left out.",
    ]);
    expect(await other.keys()).toEqual([]);
  });
});

describe("a notebook that differs from the one kept", () => {
  it("comes in under another name with all of it, once", async () => {
    const text = await exportAll(await everyKind());
    const storage = memoryStorage();
    await made(storage, "plot.md", { text: "# Mine\n" });
    const mine = await allOf(storage);
    const said = await take(storage, text);
    expect(said[0]).toContain("came in as plot-2.md");
    expect(await allOf(storage)).toMatchObject(mine);
    expect(await loadDocument(storage, "plot-2.md>garden.md")).toMatchObject({
      record: { text: "# Garden\n" },
    });
    const { entered } = await loadAllEntered(storage, ["plot-2.md", "garden.md"], {
      main: "plot-2.md",
      apart: true,
    });
    expect(entered).toEqual({ "plot-2.md#kerf": "1/8 in", "garden.md#beds": table });
    const after = await allOf(storage);
    await take(storage, text);
    expect(await allOf(storage)).toEqual(after);
  });

  it("does not hide a shipped one of its name", async () => {
    const storage = memoryStorage();
    await take(storage, await exportAll(await everyKind()), ["plot.md"]);
    expect(await loadDocument(storage, "plot.md")).toEqual({ is: "absent" });
    expect(await loadDocument(storage, "plot-2.md")).toMatchObject({ is: "record" });
  });
});

describe("entries and plans that differ", () => {
  it("stay, and those of the file become an earlier state", async () => {
    const storage = memoryStorage();
    await enter(storage, "rebuild.md", { kerf: "3/16" });
    await plan(storage, "Cedar", "3/16");
    await plan(storage, "Mine", "3/16");
    const said = await take(storage, await exportAll(await everyKind()));
    expect(await storage.get("entered:rebuild.md")).toMatchObject({ cells: { kerf: "3/16" } });
    const { plans } = await loadPlans(storage, "rebuild.md");
    expect(plans.map(({ name, entered }) => [name, entered["rebuild.md#kerf"]])).toEqual([
      ["Cedar", "3/16"],
      ["Mine", "3/16"],
    ]);
    const { states } = await listStates(storage, "rebuild.md");
    const all = await Promise.all(
      states.map(({ number }) => readState(storage, "rebuild.md", number)),
    );
    expect(all).toMatchObject([
      { why: "from a file", plan: "Cedar", entered: { "rebuild.md#kerf": "1/8" } },
      { why: "from a file", at: at(50), entered: { "rebuild.md#kerf": "1/4" } },
      { why: "typing", at: at(1), entered: { "rebuild.md#kerf": "1/16" } },
    ]);
    expect(said.join("\n")).toMatch(/entered in rebuild\.md differs: yours stays/);
    expect(said.join("\n")).toMatch(/plan “Cedar” differs: yours stays/);
    expect((await loadAllEntered(storage, ["garden.md"])).entered).toEqual({
      "garden.md#beds": table,
    });
  });

  it("come in where nothing of the kind is kept", async () => {
    const storage = memoryStorage();
    await plan(storage, "Mine", "3/16");
    const said = await take(storage, await exportAll(await everyKind()));
    const { plans } = await loadPlans(storage, "rebuild.md");
    expect(plans.map(({ name }) => name)).toEqual(["Mine", "Cedar"]);
    expect(said).toContain("Plans of rebuild.md came in: Cedar.");
  });

  it("leave alone what a newer version keeps here", async () => {
    const storage = memoryStorage();
    for (const key of ["entered:rebuild.md", "plans:rebuild.md", "states:rebuild.md"])
      await storage.change(key, () => ({ kind: key.split(":")[0], version: 9 }));
    const before = await allOf(storage);
    const said = await take(storage, await exportAll(await everyKind()));
    expect(await allOf(storage)).toMatchObject(before);
    expect(said.join("\n")).toContain("left out");
  });

  it("never push out the states that are kept", async () => {
    const storage = memoryStorage();
    for (let count = 0; count < 49; count += 1)
      await noteState(storage, {
        ...state,
        at: at(10 + count),
        entered: { "rebuild.md#kerf": `${count}` },
      });
    const from = memoryStorage();
    for (let count = 0; count < 5; count += 1)
      await noteState(from, {
        ...state,
        at: at(count),
        entered: { "rebuild.md#kerf": `f${count}` },
      });
    const said = await take(storage, await exportAll(from));
    const { states } = await listStates(storage, "rebuild.md");
    expect(states).toHaveLength(50);
    expect(states.at(-1)?.at).toBe(at(4));
    expect(states.at(-2)?.at).toBe(at(10));
    expect(said).toContain(
      "4 earlier states of rebuild.md were left out: 50 are kept, and yours stay.",
    );
  });
});

describe("a file that can't be taken in", () => {
  it.each([
    ["no JSON", "# A notebook", "not JSON"],
    ["JSON of something else", "[1]", "Choose a file"],
    ["of a newer version", '{"kind":"bedwright-all","version":2,"records":{}}', "newer version"],
    ["without records", '{"kind":"bedwright-all","version":1}', "missing or broken"],
    ["of a version that never was", '{"kind":"bedwright-all","version":0,"records":{}}', "broken"],
  ])("is refused where it is %s, and nothing changes", async (_, text, words) => {
    const storage = memoryStorage();
    const came = await importAll(storage, text, { at: at(0) });
    expect(came.good ? "" : came.words).toContain(words);
    expect(await storage.keys()).toEqual([]);
  });

  it("leaves out records that are not what their key says", async () => {
    const entered = { kind: "entered", version: 1, file: "a.md", cells: { x: "1" } };
    const records = {
      "entered:b.md": entered,
      "entered:a.md": { ...entered, cells: { x: 1 } },
      "plans:a.md": entered,
      "nonsense:a.md": entered,
      ["__proto__"]: entered,
    };
    const text = JSON.stringify({ kind: "bedwright-all", version: 1, records });
    const storage = memoryStorage();
    expect(await take(storage, text)).toHaveLength(5);
    expect(await storage.keys()).toEqual([]);
  });

  it("says what came in where the disk is full half way, and can be taken in again", async () => {
    const from = await everyKind();
    const good = memoryStorage();
    let writes = 0;
    const storage = failing(good, () => {
      writes += 1;
      return writes > 2 ? full() : undefined;
    });
    const came = await importAll(storage, await exportAll(from), { at: at(50) });
    expect(came.good ? "" : came.words).toContain("no room left");
    expect(came.good ? "" : came.words).toContain("This much came in");
    await take(good, await exportAll(from));
    expect(await allOf(good)).toEqual(await allOf(from));
  });
});

describe("whatever two browsers hold", () => {
  const file = fc.constantFrom("a.md", "b.md");
  const act = fc.oneof(
    fc.record({ do: fc.constant("make" as const), file, text: fc.constantFrom("# 1\n", "# 2\n") }),
    fc.record({ do: fc.constant("enter" as const), file, text: fc.constantFrom("1", "2") }),
    fc.record({ do: fc.constant("plan" as const), file, text: fc.constantFrom("1", "2") }),
    fc.record({ do: fc.constant("state" as const), file, text: fc.constantFrom("1", "2") }),
    fc.record({ do: fc.constant("remove" as const), file, text: fc.constant("") }),
  );

  async function play(acts: readonly (typeof act extends fc.Arbitrary<infer A> ? A : never)[]) {
    const storage = memoryStorage();
    for (const { do: what, file: main, text } of acts) {
      if (what === "make") await made(storage, main, { text });
      if (what === "enter") await enter(storage, main, { x: text });
      if (what === "plan")
        await keepPlan(storage, main, {
          name: text,
          entered: { [`${main}#x`]: text },
          made: at(1),
        });
      if (what === "state")
        await noteState(storage, {
          ...state,
          main,
          files: [main],
          entered: { [`${main}#x`]: text },
        });
      if (what === "remove") await removeDocument(storage, main, { at: at(4) });
    }
    return storage;
  }

  it("a file goes round, never writes over anything, and is taken in once", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(act, { maxLength: 8 }),
        fc.array(act, { maxLength: 8 }),
        async (theirs, ours) => {
          const from = await play(theirs);
          const text = await exportAll(from);
          const empty = memoryStorage();
          await take(empty, text);
          expect(await allOf(empty)).toEqual(await allOf(from));

          const storage = await play(ours);
          const before = await allOf(storage);
          await take(storage, text);
          const after = await allOf(storage);
          for (const [key, record] of Object.entries(before))
            if (/^(document|entered|state):/.test(key)) expect(after[key]).toEqual(record);
          for (const [key, record] of Object.entries(before)) {
            const { plans = [] } = record as { plans?: readonly unknown[] };
            expect((after[key] as { plans?: readonly unknown[] }).plans ?? []).toEqual(
              expect.arrayContaining([...plans]),
            );
          }
          await take(storage, text);
          expect(await allOf(storage)).toEqual(after);
        },
      ),
      { numRuns: 150 },
    );
  });
});
