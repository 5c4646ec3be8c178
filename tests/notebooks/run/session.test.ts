import { describe, expect, it } from "vitest";
import { cell, fakeHost, open, table } from "./fake-host.ts";

describe("values", () => {
  it("works cells out in any order of standing", async () => {
    const { session } = open(cell("b", "a + 1") + cell("a", "2 * 3"));
    await session.settled();
    expect(session.value("a.md#b")).toBe(7);
    session.dispose();
  });

  it("gives one report a turn, with only what changed", async () => {
    const { session, reports } = open(
      cell("size", 'wholeEntry("4")') + cell("twice", "size * 2") + cell("apart", "5 + 5"),
    );
    await session.settled();
    expect(reports).toHaveLength(1);
    session.enter({ "a.md#size": "6" }, 7);
    await session.settled();
    expect(reports).toHaveLength(2);
    expect(reports[1]?.turn).toBe(7);
    expect(reports[1]?.cells.map(({ id }) => id)).toEqual(["a.md#size", "a.md#twice"]);
    expect(session.value("a.md#twice")).toBe(12);
  });

  it("says nothing again where the shown value is the same", async () => {
    const { session, reports } = open(cell("size", 'wholeEntry("4")') + cell("even", "[size % 2]"));
    await session.settled();
    session.enter({ "a.md#size": "6" });
    await session.settled();
    expect(reports[1]?.cells.map(({ id }) => id)).toEqual(["a.md#size"]);
  });

  it("runs only what something changed for", async () => {
    const { session, started } = open(
      cell("size", 'wholeEntry("4")') + cell("twice", "size * 2") + cell("apart", "5 + 5"),
    );
    await session.settled();
    started.length = 0;
    session.enter({ "a.md#size": "6" });
    await session.settled();
    expect(started).toEqual(["a.md#twice"]);
  });
});

describe("a cell whose inputs are the very same", () => {
  const text =
    cell("size", 'wholeEntry("4")') +
    cell("fixed", "({ list: [1, 2] })") +
    cell("pair", "({ size, list: fixed.list })") +
    cell("list", "pair.list") +
    cell("length", "list.length");

  it("keeps its value, and what depends on it is not run", async () => {
    const { session, started } = open(text);
    await session.settled();
    started.length = 0;
    session.enter({ "a.md#size": "6" });
    await session.settled();
    expect(started).toEqual(["a.md#pair", "a.md#list"]);
    expect(session.value("a.md#length")).toBe(2);
  });

  it("gives its values one after another again where it gives several", async () => {
    const { session } = open(
      cell("size", 'wholeEntry("4")') +
        cell("big", "size > 3") +
        cell("steps", "yield big;\nyield 2;"),
    );
    await session.done();
    await expect.poll(() => session.value("a.md#steps")).toBe(2);
    session.enter({ "a.md#size": "9" });
    await session.settled();
    await expect.poll(() => session.value("a.md#steps")).toBe(2);
  });

  it("runs again once they differ", async () => {
    const { session } = open(
      cell("size", 'wholeEntry("4")') + cell("half", "size > 4 ? 1 : 2") + cell("out", "half + 1"),
    );
    await session.settled();
    expect(session.value("a.md#out")).toBe(3);
    session.enter({ "a.md#size": "6" });
    await session.settled();
    expect(session.value("a.md#out")).toBe(2);
  });
});

describe("entries", () => {
  it("tell their text, limits and a problem with a path that names them", async () => {
    const { session } = open(cell("size", 'wholeEntry("4")') + cell("twice", "size * 2"));
    await session.settled();
    expect(session.state("a.md#size")?.entry).toMatchObject({ text: "4", limits: "0 to 99" });
    session.enter({ "a.md#size": "lots" });
    await session.settled();
    const state = session.state("a.md#size");
    expect(state?.entry?.text).toBe("lots");
    expect(state?.entry?.problem?.path).toEqual(["size"]);
    expect(state?.error?.kind).toBe("problems");
    const waiting = session.state("a.md#twice")?.error;
    expect(waiting?.kind).toBe("waits");
    expect(waiting?.names).toEqual(["size"]);
  });

  it("heal, and go back to their default", async () => {
    const { session } = open(cell("size", 'wholeEntry("4")') + cell("twice", "size * 2"));
    session.enter({ "a.md#size": "lots" });
    await session.settled();
    session.enter({ "a.md#size": "5" });
    await session.settled();
    expect(session.value("a.md#twice")).toBe(10);
    session.reset(["a.md#size"]);
    await session.settled();
    expect(session.value("a.md#twice")).toBe(8);
    expect(session.entered).toEqual({});
  });

  it("and tables that have their default are not read again by putting it back", async () => {
    const { session, started } = open(table("sizes", "size\n3") + cell("read", "readSizes(sizes)"));
    await session.settled();
    started.length = 0;
    session.reset(["a.md#sizes"]);
    await session.settled();
    expect(started).toEqual([]);
  });
});

describe("what a value carries", () => {
  const caution = '{ id: "lift", fact: "Heavy.", advice: "Two trips.", defersTo: "", sources: [] }';

  it("gives its cautions and its parts' cautions, each once", async () => {
    const { session } = open(
      cell("a", `({ cautions: [${caution}], part: { cautions: [${caution}] }, count: 1 })`),
    );
    await session.settled();
    expect(session.state("a.md#a")?.cautions.map(({ id }) => id)).toEqual(["lift"]);
    expect(session.state("a.md#a")?.shown).toMatchObject({
      fields: [{ title: "Count" }],
    });
  });

  it("shows of a step between only the beginning", async () => {
    const rows = "Array.from({ length: 100 }, (_, at) => ({ at }))";
    const { session } = open(cell("a quiet", rows) + cell("b", rows));
    await session.settled();
    expect(session.state("a.md#a")?.shown).toMatchObject({ more: 88 });
    expect(session.state("a.md#b")?.shown).toMatchObject({ more: 0 });
    expect(session.value("a.md#a")).toHaveLength(100);
  });
});

describe("surroundings", () => {
  it("prints again in the other units without running, but for cells that name them", async () => {
    const { session, started } = open(
      cell("wide", "span(10)") + cell("which", "units") + cell("day", "today"),
    );
    await session.settled();
    expect(session.value("a.md#day")).toEqual({ date: "2026-04-25" });
    started.length = 0;
    session.setUnits("metric");
    await session.settled();
    expect(session.state("a.md#wide")?.shown).toMatchObject({ figure: { text: "3.048 m" } });
    expect(started).toEqual(["a.md#which"]);
    expect(session.value("a.md#which")).toBe("metric");
    started.length = 0;
    session.setUnits("metric");
    await session.settled();
    expect(started).toEqual([]);
  });
});

describe("tables", () => {
  const sizes = table("sizes", "size\n3\nx\n5") + cell("read", "readSizes(sizes)");
  const all = sizes + cell("count", "read.rows.length");

  it("leaves bad rows out and says so wherever they are missed", async () => {
    const { session } = open(all);
    await session.settled();
    expect(session.value("a.md#count")).toBe(2);
    expect(session.state("a.md#count")?.leftOut).toBe("2 of 3 sizes");
    const { problems } = session.state("a.md#read") ?? {};
    expect(problems?.map(({ path }) => path)).toEqual([["sizes", 2, "size"]]);
    expect(session.state("a.md#sizes")?.shown).toMatchObject({ kind: "table-text" });
  });

  it("says it of each table that a cell rests on", async () => {
    const two = table("widths", "size\nx\n4") + cell("wide", "readSizes(widths)");
    const { session } = open(all + two + cell("both", "read.given + wide.given"));
    await session.settled();
    expect(session.state("a.md#both")?.leftOut).toBe("2 of 3 sizes, 1 of 2 widths");
  });

  it("is refused where what was entered is no table", async () => {
    const { session } = open(all);
    session.enter({ "a.md#sizes": { kind: "table", name: "sizes" } as never });
    await session.settled();
    expect(session.state("a.md#sizes")?.error).toMatchObject({ kind: "problems" });
    expect(session.state("a.md#count")?.error?.kind).toBe("waits");
  });

  it("tells of more rows left out where the value stays what it was", async () => {
    const { session, reports } = open(all + cell("twice", "count * 2"));
    await session.settled();
    session.enter({ "a.md#sizes": "size\n3\nx\ny\n5" });
    await session.settled();
    const state = reports.at(-1)?.cells.find(({ id }) => id === "a.md#twice");
    expect(state?.leftOut).toBe("2 of 4 sizes");
  });

  it("takes the rows that were entered, frozen", async () => {
    const { session } = open(all);
    const rows = [["1"], ["2"], ["3"], ["4"]];
    const entered = { kind: "table", name: "?", columns: ["size"], rows, decimal: "." } as const;
    session.enter({ "a.md#sizes": entered });
    await session.settled();
    expect(session.value("a.md#count")).toBe(4);
    expect(session.value("a.md#sizes")).toMatchObject({ name: "sizes" });
    expect(Object.isFrozen(session.value("a.md#sizes"))).toBe(true);
    expect(session.state("a.md#count")?.leftOut).toBeUndefined();
  });

  it("makes a bad row an error of the table and of all that needs it when strict", async () => {
    const { session } = open(all + cell("apart", "1 + 1"), { strict: true });
    await session.settled();
    const error = session.state("a.md#sizes")?.error;
    expect(error?.problems.map(({ path }) => path)).toEqual([["sizes", 2, "size"]]);
    expect(session.state("a.md#count")?.error).toMatchObject({ kind: "waits", names: ["sizes"] });
    expect(session.state("a.md#apart")?.error).toBeUndefined();
  });

  it("tells that a table has become an error though nothing in it changed", async () => {
    const text =
      table("sizes", "size\n3\nx") +
      cell("look", 'wholeEntry("0")') +
      cell("read", "look > 0 ? readSizes(sizes) : 0");
    const { session, reports } = open(text, { strict: true });
    await session.settled();
    expect(session.state("a.md#sizes")?.error).toBeUndefined();
    session.enter({ "a.md#look": "1" });
    await session.settled();
    const told = reports.at(-1)?.cells.find(({ id }) => id === "a.md#sizes");
    expect(told?.error?.problems).toHaveLength(1);
  });
});

describe("a reading made on the way", () => {
  const part = table("sizes", "size\n3\nx\n5") + cell("count", "readSizes(sizes).rows.length");

  it("still tells what was left out, and its problems", async () => {
    const { session } = open(part + cell("twice", "count * 2"));
    await session.settled();
    expect(session.value("a.md#count")).toBe(2);
    expect(session.state("a.md#twice")?.leftOut).toBe("2 of 3 sizes");
    expect(session.state("a.md#count")?.problems.map(({ path }) => path)).toEqual([
      ["sizes", 2, "size"],
    ]);
  });

  it("makes the table an error when strict, and also where the formula fails after it", async () => {
    const failing = cell("fails", "readSizes(sizes).rows[9].size");
    for (const text of [part, table("sizes", "size\n3\nx") + failing]) {
      const { session } = open(text, { strict: true });
      await session.settled();
      expect(session.state("a.md#sizes")?.error?.problems).toHaveLength(1);
    }
  });

  it("is forgotten with the run it belongs to", async () => {
    const { session } = open(
      part +
        cell("size", 'wholeEntry("4")') +
        cell("some", "size > 3 ? readSizes(sizes).given : 0"),
    );
    await session.settled();
    expect(session.state("a.md#some")?.problems).toHaveLength(1);
    session.enter({ "a.md#size": "2" });
    await session.settled();
    expect(session.state("a.md#some")?.problems).toEqual([]);
  });

  it("is forgotten where the formula can't be run for want of another cell", async () => {
    const text =
      part + cell("size", 'wholeEntry("4")') + cell("all", "readSizes(sizes).given + size");
    const { session } = open(text, { strict: true });
    await session.settled();
    session.enter({ "a.md#size": "lots", "a.md#sizes": "size\n3" });
    await session.settled();
    expect(session.state("a.md#sizes")?.error).toBeUndefined();
    expect(session.state("a.md#all")?.error).toMatchObject({ kind: "waits", names: ["size"] });
  });

  it("is known again where the formula need not run", async () => {
    const { session, started } = open(
      part +
        cell("size", 'wholeEntry("4")') +
        cell("big", "size > 3") +
        cell("some", "big ? readSizes(sizes).given : 0"),
    );
    await session.settled();
    started.length = 0;
    session.enter({ "a.md#size": "9" });
    await session.settled();
    expect(started).toEqual(["a.md#big"]);
    expect(session.state("a.md#some")?.problems).toHaveLength(1);
  });

  it("is that of the value which is taken up again", async () => {
    const formula = "if (size < 4) fail('too few');\nreturn readSizes(sizes).given + size;";
    const { session, started } = open(
      part + cell("size", 'wholeEntry("4")') + cell("some", formula),
    );
    await session.settled();
    session.enter({ "a.md#size": "2" });
    await session.settled();
    expect(session.state("a.md#some")?.error?.message).toContain("too few");
    started.length = 0;
    session.enter({ "a.md#size": "4" });
    await session.settled();
    expect(started).toEqual([]);
    expect(session.state("a.md#some")?.problems).toHaveLength(1);
  });
});

describe("remarks", () => {
  const remark = '{ path: ["sizes", "colour"], text: "The column is not used." }';

  it("are told with the cell that found them, each once", async () => {
    const { session } = open(
      cell("a", `({ rows: 1, remarks: [${remark}, ${remark}, { text: 3 }] })`) + cell("b", "2 + 3"),
    );
    await session.settled();
    expect(session.state("a.md#a")?.remarks).toEqual([
      { path: ["sizes", "colour"], text: "The column is not used." },
    ]);
    expect(session.state("a.md#b")).not.toHaveProperty("remarks");
  });
});

describe("what was handed over", () => {
  it("lists the cells before anything runs", () => {
    const { session } = open(cell("wide", "span(2)") + cell("twice", "[wide, wide]"));
    expect(session.outline.map(({ id, gives }) => [id, gives])).toEqual([
      ["a.md#wide", ["a.md#twice"]],
      ["a.md#twice", []],
    ]);
    expect(session.outline[0]?.functions).toEqual([
      { name: "span", rule: "feet as given", sources: ["S1"] },
    ]);
    session.dispose();
  });

  it("shows a short formula with its values", async () => {
    const { session } = open(cell("size", 'wholeEntry("4")') + cell("twice", "size * 2"));
    await session.settled();
    expect(session.state("a.md#twice")?.sum).toBe("4 × 2");
    const long = open(cell("words", '"a".repeat(41)') + cell("all", "words + 2"));
    await long.session.settled();
    expect(long.session.state("a.md#all")?.sum).toBeUndefined();
  });

  it("uses the host's operators", async () => {
    const host = { ...fakeHost(), operators: { ...fakeHost().operators, plus: () => "added" } };
    const { session } = open(cell("a", "1 + two") + cell("two", "2"), { host });
    await session.settled();
    expect(session.value("a.md#a")).toBe("added");
  });
});
