import { describe, expect, test } from "vitest";
import { cellNamed, cellsText, compileTexts } from "./compiled.ts";

const uses = (file: string, ...names: string[]): string =>
  `\`\`\`uses ${file}\n${names.join("\n")}\n\`\`\`\n\n`;

const garden = cellsText({ beds: "rows + 1", rows: "inch", hidden: "2", unused: "3" });

describe("cells of other notebooks", () => {
  test("run in their own document's scope, with what they need", () => {
    const program = compileTexts({
      "n.md": uses("garden.md", "beds") + cellsText({ rows: "5", total: "beds * rows" }),
      "garden.md": garden,
    });
    expect(cellNamed(program, "total").takes).toEqual(["garden.md#beds", "n.md#rows"]);
    const ids = program.cells.map(({ id }) => id);
    expect(new Set(ids)).toEqual(
      new Set(["garden.md#rows", "garden.md#beds", "n.md#rows", "n.md#total"]),
    );
    expect(ids.indexOf("garden.md#rows")).toBeLessThan(ids.indexOf("garden.md#beds"));
    expect(program.scopes.get("n.md")).toEqual(
      new Map([
        ["beds", "garden.md#beds"],
        ["rows", "n.md#rows"],
        ["total", "n.md#total"],
      ]),
    );
    expect(program.problems).toEqual([]);
  });

  test("one that is listed is there, named by a formula or not; listed again it is the same", () => {
    const program = compileTexts({
      "n.md": uses("garden.md", "unused", "unused"),
      "garden.md": garden,
    });
    expect(program.cells.map(({ id }) => id)).toEqual(["garden.md#unused"]);
    expect(program.problems).toEqual([]);
  });

  test("one that is not listed is told, with where to list it", () => {
    const program = compileTexts({
      "n.md": uses("garden.md", "beds") + cellsText({ total: "beds +\n hidden" }),
      "garden.md": garden,
    });
    expect(cellNamed(program, "total").problem).toMatchObject({
      code: "not-shared",
      line: 7,
      column: 2,
      message:
        "hidden is a cell of garden.md that is not listed: add it to the block `uses garden.md` at line 1.",
    });
  });

  test("a listed name that is not there is a problem of its line and of whoever names it", () => {
    const program = compileTexts({
      "n.md": uses("garden.md", "beds", "bedz") + cellsText({ total: "bedz" }),
      "garden.md": garden,
    });
    expect(program.problems).toEqual([
      expect.objectContaining({ code: "not-defined", file: "n.md", line: 3, names: ["bedz"] }),
    ]);
    expect(cellNamed(program, "total").problem).toMatchObject({ code: "not-defined", line: 7 });
  });

  test("a name that the other notebook brings in itself is to be listed from where it is", () => {
    const program = compileTexts({
      "n.md": uses("plan.md", "beds"),
      "plan.md": uses("garden.md", "beds"),
      "garden.md": garden,
    });
    expect(program.problems[0]?.message).toContain("List it in a block `uses garden.md`.");
  });

  test("an own cell hides a listed one, with a remark", () => {
    const program = compileTexts({
      "n.md": uses("garden.md", "beds") + cellsText({ beds: "1", total: "beds" }),
      "garden.md": garden,
    });
    expect(cellNamed(program, "total").takes).toEqual(["n.md#beds"]);
    expect(program.remarks).toEqual([
      expect.objectContaining({ code: "name-shadows", line: 2, names: ["beds"] }),
    ]);
  });

  test("a name listed from two files", () => {
    const program = compileTexts({
      "n.md": uses("garden.md", "beds") + uses("other.md", "beds") + cellsText({ total: "beds" }),
      "garden.md": garden,
      "other.md": garden,
    });
    expect(cellNamed(program, "total").takes).toEqual(["garden.md#beds"]);
    expect(program.problems).toEqual([
      expect.objectContaining({
        code: "defined-twice",
        line: 6,
        message: expect.stringContaining("from garden.md at line 2 and from other.md at line 6"),
      }),
    ]);
  });

  test("a missing file", () => {
    const program = compileTexts({
      "n.md": uses("gone.md", "beds") + cellsText({ total: "beds", other: "1" }),
    });
    expect(program.problems).toEqual([
      expect.objectContaining({ code: "file-missing", line: 1, names: ["gone.md"] }),
    ]);
    expect(cellNamed(program, "total").problem).toMatchObject({
      code: "file-missing",
      line: 6,
      column: 1,
    });
    expect(cellNamed(program, "other").problem).toBeUndefined();
  });

  test("a circle of files is named, and cells that don't need it go on", () => {
    const program = compileTexts({
      "n.md": uses("b.md", "x") + cellsText({ total: "x", other: "1" }),
      "b.md": uses("c.md", "y") + cellsText({ x: "y" }),
      "c.md": uses("n.md", "total") + cellsText({ y: "1" }),
    });
    expect(program.problems[0]).toMatchObject({
      code: "file-cycle",
      file: "n.md",
      line: 1,
      names: ["n.md", "b.md", "c.md", "n.md"],
      message: expect.stringContaining("n.md uses b.md uses c.md uses n.md"),
    });
    expect(cellNamed(program, "total").problem?.code).toBe("file-cycle");
    expect(cellNamed(program, "other").problem).toBeUndefined();
  });

  test("a file that uses itself, and one in two circles", () => {
    const self = compileTexts({ "n.md": uses("n.md", "a") + cellsText({ a: "1", b: "a" }) });
    expect(self.problems).toEqual([
      expect.objectContaining({ code: "file-cycle", names: ["n.md", "n.md"] }),
    ]);
    const two = compileTexts({
      "n.md": uses("b.md", "x") + uses("c.md", "y"),
      "b.md": uses("n.md") + cellsText({ x: "1" }),
      "c.md": uses("n.md") + cellsText({ y: "1" }),
    });
    expect(two.problems.filter(({ file }) => file === "n.md").map(({ line }) => line)).toEqual([
      1, 5,
    ]);
  });

  test("a main file that is not there gives an empty program", () => {
    expect(compileTexts({}, "n.md").cells).toEqual([]);
  });
});
