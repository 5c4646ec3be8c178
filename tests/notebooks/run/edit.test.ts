import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileNotebook, FormulaReader } from "../../../notebooks/engine/compile/index.ts";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";
import type { Session } from "../../../notebooks/engine/run/index.ts";
import type { Entered, Host, LongWork } from "../../../notebooks/engine/types/index.ts";
import { cell, fakeHost, open, table } from "./fake-host.ts";

type Texts = Readonly<Record<string, string>>;

function programOf(texts: Texts, host: Host, reader = new FormulaReader()) {
  const documents = documentsOf(texts);
  const names = new Set(Object.keys(host.names));
  return compileNotebook({ main: "a.md", documents, names, reader });
}

/** Edits an open session's one document. */
function edit(session: Session, text: string, entered: Entered = {}, host = fakeHost()): void {
  session.edit(programOf({ "a.md": text }, host), entered);
}

describe("an edit", () => {
  const size = cell("size", 'wholeEntry("4")');
  const sheet = (twice: string) =>
    size + cell("twice", twice) + cell("more", "twice + 1") + cell("apart", "5 + 5");

  it("runs what was edited and what rests on it, and nothing else", async () => {
    const { session, started, reports } = open(sheet("size * 2"));
    await session.settled();
    started.length = 0;
    edit(session, sheet("size * 3"));
    await session.settled();
    expect(started).toEqual(["a.md#twice", "a.md#more"]);
    expect(session.value("a.md#more")).toBe(13);
    expect(reports.at(-1)?.cells.map(({ id }) => id)).toEqual(["a.md#twice", "a.md#more"]);
  });

  it("that only moves cells runs none, and errors name their new lines", async () => {
    const broken = cell("bad", 'fail("no")');
    const { session, started } = open(sheet("size * 2") + broken);
    await session.settled();
    const before = session.state("a.md#bad")?.error?.line ?? 0;
    started.length = 0;
    edit(session, `Some words.\n\n${sheet("size * 2")}${broken}`);
    await session.settled();
    expect(started).toEqual([]);
    expect(session.state("a.md#bad")?.error?.line).toBe(before + 2);
    expect(session.outline.find(({ name }) => name === "size")?.line).toBe(3);
  });

  it("keeps what is entered, and takes what is entered anew", async () => {
    const { session, started } = open(sheet("size * 2"), { entered: { "a.md#size": "9" } });
    await session.settled();
    started.length = 0;
    edit(session, sheet("size + 1"), { "a.md#size": "9" });
    await session.settled();
    expect(session.value("a.md#twice")).toBe(10);
    expect(started).not.toContain("a.md#size");
    edit(session, sheet("size + 1"), {});
    await session.settled();
    expect(session.value("a.md#twice")).toBe(5);
  });

  it("that breaks a formula disturbs no other; what rests on it waits, and both recover", async () => {
    const { session, started } = open(sheet("size * 2"));
    await session.settled();
    started.length = 0;
    edit(session, sheet("size * ("));
    await session.settled();
    expect(session.state("a.md#twice")?.error?.kind).toBe("document");
    expect(session.state("a.md#more")?.error?.kind).toBe("waits");
    expect(session.value("a.md#apart")).toBe(10);
    expect(started).toEqual([]);
    edit(session, sheet("size * 2"));
    await session.settled();
    expect(session.value("a.md#more")).toBe(9);
  });

  it("adds, renames and takes out cells", async () => {
    const { session } = open(sheet("size * 2"));
    await session.settled();
    edit(session, size + cell("double", "size * 2") + cell("more", "double + 1"));
    await session.settled();
    expect(session.outline.map(({ name }) => name)).toEqual(["size", "double", "more"]);
    expect(session.value("a.md#more")).toBe(9);
    expect(session.state("a.md#twice")).toBeUndefined();
    edit(session, size + cell("more", "double + 1"));
    await session.settled();
    expect(session.state("a.md#more")?.error?.message).toContain("double is not known");
  });

  it("makes a table of a cell, and a cell of a table", async () => {
    const read = cell("sum", "readSizes(sizes).rows.length");
    const { session } = open(table("sizes", "size\n1\n2") + read);
    await session.settled();
    expect(session.value("a.md#sum")).toBe(2);
    edit(
      session,
      cell("sizes", '({ kind: "table", name: "x", columns: ["size"], rows: [["1"]] })') + read,
    );
    await session.settled();
    expect(session.value("a.md#sum")).toBe(1);
    edit(session, table("sizes", "size\n1\n2\n3") + read);
    await session.settled();
    expect(session.value("a.md#sum")).toBe(3);
  });

  it("lets long work go on where it is not concerned, and cancels it where its cell is taken out", async () => {
    const asked: { answer: (value: unknown) => void; cancelled: () => boolean }[] = [];
    const plan: LongWork = (_data, { signal }) =>
      new Promise((answer) => {
        asked.push({ answer, cancelled: () => signal.aborted });
      });
    const host = fakeHost({ plan });
    const slow = size + cell("cuts", "plan(size)") + cell("waste", "cuts + 1");
    const { session } = open(slow, { host });
    await session.settled();
    edit(session, `${slow}${cell("apart", "1 + 1")}`, {}, host);
    await session.settled();
    expect(asked).toHaveLength(1);
    expect(asked[0]?.cancelled()).toBe(false);
    asked[0]?.answer(10);
    await session.done();
    expect(session.value("a.md#waste")).toBe(11);
    edit(session, slow.replace("plan(size)", "plan(size + 1)"), {}, host);
    await session.settled();
    expect(asked).toHaveLength(2);
    edit(session, size, {}, host);
    const { working } = await session.settled();
    expect(working).toEqual([]);
    expect(asked[1]?.cancelled()).toBe(true);
  });
});

describe("after any edits", () => {
  const names = ["a", "b", "c", "d", "twice"] as const;
  const name = fc.constantFrom(...names);
  const formula = fc.oneof(
    { weight: 4, arbitrary: fc.tuple(name, name).map(([one, other]) => `${one} + ${other}`) },
    { weight: 4, arbitrary: fc.nat(9).map(String) },
    { weight: 2, arbitrary: fc.nat(9).map((n) => `wholeEntry("${n}")`) },
    { weight: 1, arbitrary: fc.constantFrom("1 +", 'fail("no")', "unknown", "", "span(2)") },
    { weight: 1, arbitrary: name.map((one) => `readSizes(${one}).rows.length`) },
  );
  const block = fc.oneof(
    { weight: 6, arbitrary: fc.tuple(name, formula).map(([one, text]) => cell(one, text)) },
    { weight: 1, arbitrary: name.map((one) => table(one, "size\n1\nx\n3")) },
    { weight: 1, arbitrary: fc.constant("Words with `fig a`.\n\n") },
    { weight: 1, arbitrary: fc.constant("```uses b.md\nc\nd\n```\n\n") },
  );
  const document = fc.array(block, { maxLength: 7 }).map((blocks) => blocks.join(""));
  const texts = fc.record({ "a.md": document, "b.md": document });
  const entered = fc.dictionary(
    fc.tuple(fc.constantFrom("a.md", "b.md"), name).map(([file, one]) => `${file}#${one}`),
    fc.constantFrom("1", "2", "bad"),
    { maxKeys: 3 },
  );

  const stateOf = (session: Session) => ({
    outline: session.outline,
    states: session.outline.map(({ id }) => session.state(id)),
  });

  it("a session knows the same as one opened anew", async () => {
    const step = fc.record({ texts, entered });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 2, maxLength: 5 }), async ([first, ...more]) => {
        if (first === undefined) return;
        const host = fakeHost();
        const reader = new FormulaReader();
        const { session } = open(first.texts, { entered: first.entered });
        for (const next of more) {
          session.edit(programOf(next.texts, host, reader), next.entered);
          await session.settled();
          const anew = open(next.texts, { entered: next.entered }).session;
          await anew.settled();
          expect(stateOf(session)).toEqual(stateOf(anew));
          anew.dispose();
        }
        session.dispose();
      }),
      { numRuns: 300 },
    );
  });
});
