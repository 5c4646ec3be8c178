import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cell, plot, sheet } from "./sheet.ts";
import { type Installed, install } from "./started.ts";

const spy = `# A stranger's

${cell("reads pinned", 'const fs = (0).constructor.constructor("return process")().getBuiltinModule("node:fs");\nreturn fs.readFileSync("/etc/hostname", "utf8");')}
${cell("writes pinned", 'const fs = (0).constructor.constructor("return process")().getBuiltinModule("node:fs");\nfs.writeFileSync("out.txt", "x");\nreturn 1;')}
${cell("starts pinned", 'const p = (0).constructor.constructor("return process")().getBuiltinModule("node:child_process");\nreturn String(p.execSync("id"));')}
${cell("threads pinned", 'const w = (0).constructor.constructor("return process")().getBuiltinModule("node:worker_threads");\nnew w.Worker("1", { eval: true });\nreturn 1;')}
${cell("secrets pinned", 'const p = (0).constructor.constructor("return process")();\nreturn Object.keys(p.env).join(" ");')}
`;

let here: Installed;
const run = (...args: string[]) => here.run(["run", ...args]);

beforeAll(async () => {
  here = await install({ "sheet.md": sheet, "plot.md": plot });
});
afterAll(() => here.remove());

describe("text", () => {
  it("prints the pinned cells", async () => {
    // 8 ft x 4 ft and 6 ft x 3 ft, 50 sq ft in all, by 2 in: 8 1/3 cu ft, worked by hand.
    expect(await run("sheet.md")).toEqual({
      code: 0,
      out: "Fill needed: 8.33 cu ft\nIs deep: no\n",
      err: "",
    });
  });

  it("finds a shipped notebook by name, with or without its folder", async () => {
    for (const name of ["sheet", "notebooks/sheet.md", "./notebooks/sheet"])
      expect((await run(name, "--cell", "isDeep")).out).toBe("Is deep: no\n");
  });

  it("prints in the other units", async () => {
    expect((await run("sheet", "--cell", "fill", "--units", "metric")).out).toMatch(/ L$|m³$/m);
    expect((await run("sheet", "--cell", "system", "--units=metric")).out).toBe("System: metric\n");
  });

  it("sets tables out in columns, entries as typed, cautions below, drawings in words", async () => {
    const { out } = await run(
      "sheet",
      "--cell=sizes",
      "--cell=price",
      "--cell=warned",
      "--cell=chart",
    );
    expect(out.split("\n")).toEqual([
      "Sizes",
      "  Bed      Length  Width",
      "  A        8 ft    4 ft",
      "  B, tall  6 ft    3 ft",
      "Price: $40.00",
      "Warned",
      "  Boards: 3",
      "  Caution: It is old.",
      "    Wear gloves. Ask locally.",
      "Chart: (drawing) Lengths",
      "",
    ]);
  });

  it("takes the day from the command line", async () => {
    const { out } = await run("sheet", "--cell", "start", "--today", "2026-04-25");
    expect(out).toBe("Start: 2026-04-25 (25 April 2026)\n");
  });

  it("waits for long work", async () => {
    const { code, out } = await run("sheet", "--cell", "cuts");
    expect(code).toBe(0);
    expect(out).toContain("Cut count: 0");
  });
});

describe("entries and tables", () => {
  it("takes what a person would type, into a used notebook's entry too", async () => {
    const { out } = await run("sheet", "--set", "depth=4 in", "--cell", "fill", "--cell", "isDeep");
    expect(out).toBe("Fill needed: 16.7 cu ft\nIs deep: yes\n");
  });

  it("reaches entries that are used only further down", async () => {
    expect((await run("plot", "--set", "soilColour=red", "--cell", "soilColour")).out).toContain(
      "red",
    );
  });

  it("refuses what the entry refuses", async () => {
    const { code, out, err } = await run("sheet", "--set", "depth=2 ft", "--cell", "fill");
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(/^depth \(plot\.md, line \d+\):/);
    expect(err).toContain("1 ft");
  });

  it("lists the entries where there is none of that name", async () => {
    const { code, err } = await run("sheet", "--set", "dept=2 ft", "--cell", "fill");
    expect(code).toBe(2);
    expect(err).toContain("The entries here: depth, price, start.");
    expect((await run("sheet", "--set", "area=2 ft", "--cell", "fill")).code).toBe(2);
  });

  it("takes another table from a file", async () => {
    here.write("home/mine.csv", "bed;length;width\r\nZ;2,4 m;1,2 m\r\n");
    const { out } = await run("sheet", "--table", "beds=mine.csv", "--cell", "sizes", "--csv");
    expect(out).toMatch(/^bed,length,width\n"?Z/);
  });

  it("makes an error of every bad row, with its column, and of all that needs the table", async () => {
    here.write("home/bad.csv", "bed,length,width\nA,8 ft,4 ft\nB,6 fot,4 ft\nC,6 ft,-4 ft\n");
    const { code, out, err } = await run("sheet", "--table", "beds=bad.csv", "--cell", "fill");
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain("beds, row 2, length");
    expect(err).toContain("beds, row 3, width");
  });

  it("lists the tables where there is none of that name, and says which file is missing", async () => {
    here.write("home/mine.csv", "bed,length,width\n");
    const none = await run("sheet", "--table", "bedz=mine.csv");
    expect(none.code).toBe(2);
    expect(none.err).toContain("The tables here: beds.");
    const missing = await run("sheet", "--table", "beds=nowhere.csv");
    expect(missing.code).toBe(2);
    expect(missing.err).toContain("nowhere.csv");
  });
});

describe("JSON", () => {
  it("gives each kind in its promised shape", async () => {
    const cells = ["fill", "isDeep", "sizes", "price", "start", "broken", "system"];
    const { code, out } = await run(
      ...["sheet", "--json", "--today", "2026-04-25"],
      ...cells.flatMap((name) => ["--cell", name]),
    );
    const json = JSON.parse(out);
    expect(code).toBe(1);
    expect(Object.keys(json)).toEqual(cells);
    expect(json.fill).toMatchObject({ dimension: "volume", text: "8.33 cu ft" });
    // 1 cu ft is exactly 0.028316846592 m³ (NIST SP 811).
    expect(json.fill.si).toBeCloseTo((50 / 6) * 0.028316846592, 12);
    expect(json.isDeep).toBe(false);
    expect(json.sizes[1]).toMatchObject({ bed: "B, tall", length: { dimension: "length" } });
    expect(json.price).toEqual({ amount: "40.00", currency: "USD" });
    expect(json.start).toBe("2026-04-25");
    expect(json.broken.problems[0]).toMatchObject({ file: "sheet.md" });
  });

  it("puts problems where the value would be, with their records", async () => {
    const { code, out } = await run("sheet", "--json", "--set", "depth=-1 in", "--cell", "fill");
    expect(code).toBe(1);
    expect(JSON.parse(out).fill.problems[0]).toMatchObject({
      code: "too-small",
      path: ["depth"],
      received: "-1 in",
    });
  });
});

describe("CSV", () => {
  it("prints one table, quoted where needed", async () => {
    const { out } = await run("sheet", "--csv", "--cell", "sizes");
    expect(out).toBe('bed,length,width\nA,8 ft,4 ft\n"B, tall",6 ft,3 ft\n');
  });

  it.each([
    ["several cells", ["--cell", "sizes", "--cell", "rows"]],
    ["a cell that is no table", ["--cell", "isDeep"]],
    ["JSON at once", ["--cell", "sizes", "--json"]],
  ])("refuses %s", async (_, args) => {
    expect(await run("sheet", "--csv", ...args)).toMatchObject({ code: 2, out: "" });
  });
});

describe("errors", () => {
  it("name the cell, the file and the line, and end with 1", async () => {
    const { code, out, err } = await run("sheet", "--cell", "broken", "--cell", "isDeep");
    expect([code, out]).toEqual([1, "Is deep: no\n"]);
    expect(err).toMatch(/broken \(sheet\.md, line \d+\):\n {2}.*fail/);
  });

  it("are those of the cell it all comes from, however far up", async () => {
    const { code, err } = await run("sheet", "--cell", "further");
    expect(code).toBe(1);
    expect(err).toMatch(/^broken \(sheet\.md, line \d+\):\n.*fail.*\n$/);
  });

  it("say of a cell that it never comes to an end", async () => {
    const { code, err } = await run("sheet", "--cell", "never", "--cell", "isDeep");
    expect(code).toBe(1);
    expect(err).toContain("never came to an end");
  });

  it.each([
    ["an unknown cell, with those there are", ["sheet", "--cell", "fil"], "fill, further, isDeep"],
    ["an unknown option", ["sheet", "--jsno"], "--jsno is no option."],
    ["an option without its text", ["sheet", "--cell"], "--cell needs something after it."],
    [
      "a name with a dash, as one that is not there",
      ["sheet", "--cell", "-x"],
      "“-x” is not among",
    ],
    ["a text where none is taken", ["sheet", "--json=x"], "--json takes nothing after it."],
    ["other units", ["sheet", "--units", "stone"], "us or metric"],
    ["a day that is none", ["sheet", "--today", "2026-02-30"], "2026-04-25"],
    ["a set without a text", ["sheet", "--set", "depth"], "NAME=TEXT"],
    ["a set given twice", ["sheet", "--set", "depth=1 in", "--set", "depth=2 in"], "twice"],
    ["a notebook that is nowhere", ["nowhere.md"], "nowhere.md"],
    ["two notebooks", ["sheet", "plot"], "plot"],
    ["no notebook", [], "Name the notebook"],
  ])("refuse %s", async (_, args, words) => {
    const { code, out, err } = await run(...args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain(words);
    expect(err).toContain("usage: bedwright run");
  });

  it("refuse another command, and print help where it is asked for", async () => {
    expect((await here.run(["walk"])).code).toBe(2);
    expect(await here.run(["--help"])).toMatchObject({ code: 0, err: "" });
  });

  it("refuse a notebook without pinned cells unless one is named", async () => {
    expect((await run("plot")).code).toBe(2);
  });
});

describe("a notebook from outside", () => {
  it("needs --trust, and is told why", async () => {
    const { code, out, err } = await run(here.write("home/sheet.md", sheet));
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("--trust");
    expect(err).toContain("network");
  });

  it("runs with it, using the copy beside it before the shipped one", async () => {
    const mine = here.write("home/mine/sheet.md", sheet);
    expect((await run(mine, "--trust", "--cell", "fill")).out).toBe("Fill needed: 8.33 cu ft\n");
    here.write("home/mine/plot.md", plot.replace("8 ft,4 ft", "4 ft,4 ft"));
    // 16 sq ft and 18 sq ft by 2 in: 5 2/3 cu ft.
    expect((await run(mine, "--trust", "--cell", "fill")).out).toBe("Fill needed: 5.67 cu ft\n");
    here.write("home/beds.csv", "bed,length,width\nA,6 ft,2 ft\n");
    const own = await run(
      mine,
      "--trust",
      "--table",
      "beds=beds.csv",
      "--cell",
      "fill",
      "--cell",
      "cuts",
    );
    expect(own.out).toContain("Fill needed: 2 cu ft\n");
    expect(own.out).toContain("Cut count: 0");
  });

  it("passes on how it ended", async () => {
    const mine = here.write("home/mine/sheet.md", sheet);
    expect((await run(mine, "--trust", "--cell", "broken")).code).toBe(1);
    expect((await run(mine, "--trust", "--cell", "fil")).code).toBe(2);
  });

  it("can read, write and start nothing, and sees nothing of the environment", async () => {
    const { code, out } = await run(here.write("home/spy.md", spy), "--trust", "--json");
    expect(code).toBe(1);
    const json = JSON.parse(out);
    for (const name of ["reads", "writes", "starts", "threads"])
      expect(json[name].problems[0].sentence, name).toMatch(/restricted/i);
    expect(json.secrets).toBe("");
  });

  it("is none of the package's because it lies near its notebooks", async () => {
    here.write("package/near.md", sheet);
    expect(await run("../near.md", "--cell", "system")).toMatchObject({ code: 2, out: "" });
    expect((await run("../near.md", "--cell", "system")).err).toContain("no notebook ../near.md");
  });

  it("cannot be run apart by hand, where nothing holds it back", async () => {
    expect((await here.run(["--apart"])).code).toBe(2);
  });
});
