import { writeFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cell, plot, sheet } from "./sheet.ts";
import { type Installed, install } from "./started.ts";

let here: Installed;
const run = (...args: string[]) => here.run(["run", ...args]);

beforeAll(async () => {
  here = await install({ "sheet.md": sheet, "plot.md": plot });
});
afterAll(() => here.remove());

describe("what was given", () => {
  it("is said to be bad though nothing asked for needs it", async () => {
    const { code, out, err } = await run("sheet", "--set", "depth=lots", "--cell", "system");
    expect([code, out]).toEqual([0, "System: us\n"]);
    expect(err).toMatch(/^depth \(plot\.md, line \d+\):\n.*“lots”/);
  });

  it("is not lost by being called what every record has", async () => {
    here.write("home/mine.csv", "bed,length,width\n");
    for (const args of [
      ["--set", "__proto__=2"],
      ["--table", "__proto__=mine.csv"],
    ])
      expect((await run("sheet", ...args, "--cell", "isDeep")).err).toContain("“__proto__”");
  });

  it("is refused where it is no UTF-8 text, be it a table or a notebook", async () => {
    const latin = Buffer.from("bed,length,width\nM\xfcller,8 ft,4 ft\n", "latin1");
    writeFileSync(here.write("home/latin.csv", ""), latin);
    const table = await run("sheet", "--table", "beds=latin.csv", "--cell", "sizes");
    expect(table).toMatchObject({ code: 2, out: "" });
    expect(table.err).toContain("latin.csv is not UTF-8 text");
    writeFileSync(here.write("home/latin.md", ""), latin);
    expect((await run("latin.md", "--trust")).err).toContain("latin.md is not UTF-8 text");
  });

  it("has its unused columns named, and bad rows found wherever it is read", async () => {
    const short = `# Short\n\n\`\`\`csv table beds\nbed,length,width\nA,8 ft,4 ft\n\`\`\`\n\n${cell("count", "readBeds(beds).rows.length")}${cell("twice", "count * 2")}`;
    const file = here.write("home/short.md", short);
    here.write("home/wide.csv", "bed,length,width,corses\nA,8 ft,4 ft,2\n");
    const noted = await run(file, "--trust", "--table", "beds=wide.csv", "--cell", "twice");
    expect([noted.code, noted.out]).toEqual([0, "Twice: 2\n"]);
    expect(noted.err).toMatch(/^Note: beds, corses: .*not used/);
    const json = ["--trust", "--json", "--cell", "twice"];
    expect((await run(file, ...json, "--table", "beds=wide.csv")).err).toContain("corses");
    const own = here.write(
      "home/wide.md",
      short.replace("8 ft,4 ft", "8 ft,4 ft,2").replace("width", "width,corses"),
    );
    expect((await run(own, ...json)).err).toBe("");
    expect((await run(own, "--trust", "--cell", "twice")).err).toContain("corses");
    here.write("home/bad.csv", "bed,length,width\nA,8 ft,4 ft\nB,6 fot,4 ft\n");
    const bad = await run(file, "--trust", "--table", "beds=bad.csv", "--cell", "twice");
    expect([bad.code, bad.out]).toEqual([1, ""]);
    expect(bad.err).toContain("beds, row 2, length");
  });
});

describe("names", () => {
  it("that two used notebooks have, and none lists, are not guessed at", async () => {
    const used = (entry: string) =>
      `# Used\n\n${cell("deep pinned", 'lengthEntry("1 in")')}${cell(entry, "deep")}`;
    here.write("home/one.md", used("first"));
    here.write("home/two.md", used("second"));
    const uses = ["one", "two"].map(
      (file, at) => `\`\`\`uses ${file}.md\n${["first", "second"][at]}\n\`\`\`\n\n`,
    );
    const file = here.write(
      "home/both.md",
      `${uses.join("")}${cell("all pinned", "first + second")}`,
    );
    expect(await run(file, "--trust")).toMatchObject({ code: 0, out: "All: 2 in\n" });
    const { code, err } = await run(file, "--trust", "--set", "deep=3 in");
    expect(code).toBe(2);
    expect(err).toContain("There are no entries here.");
  });

  it("of cells that only wait for another are no entries' names", async () => {
    const { code, err } = await run("sheet", "--set", "waiting=2 ft", "--cell", "fill");
    expect(code).toBe(2);
    expect(err).toContain("“waiting” is not among them");
  });
});

describe("how a notebook is written", () => {
  const odd = `# Odd\n\n${cell("readBeds pinned", "3")}- a list\n\n  \`\`\`js cell x\n  1\n  \`\`\`\n`;

  it("is remarked on to whoever brings one, in plain text only", async () => {
    const file = here.write("home/odd.md", odd);
    const { code, out, err } = await run(file, "--trust");
    expect([code, out]).toEqual([0, "Read beds: 3\n"]);
    expect(err).toMatch(/^Note: odd\.md, line \d+: The cell readBeds hides/m);
    expect(err).toMatch(/^Note: odd\.md, line \d+: A cell inside a list/m);
  });

  it("is no concern of whoever runs a shipped one", async () => {
    here.write("package/notebooks/odd.md", odd);
    expect(await run("odd")).toEqual({ code: 0, out: "Read beds: 3\n", err: "" });
  });
});

describe("large and odd output", () => {
  const many = cell(
    "many",
    "Array.from({ length: 200000 }, (_, at) => ({ at, blank: null, words: at === 0 ? 'word '.repeat(200) : '' }))",
  );
  let file: string;
  beforeAll(() => {
    const steps = cell("steps quiet", "Array.from({ length: 20 }, (_, at) => at)");
    file = here.write("home/many.md", `# Many\n\n${many}${steps}${cell("none", "[]")}`);
  });

  it("prints every row and letter, and keeps blank columns in CSV", async () => {
    const text = await run(file, "--trust", "--cell", "many");
    expect(text.code).toBe(0);
    expect(text.out.trimEnd().split("\n")).toHaveLength(200_002);
    const csv = (await run(file, "--trust", "--csv", "--cell", "many")).out.split("\n");
    expect(csv[0]).toBe("at,blank,words");
    expect(csv[1]).toContain("word ".repeat(199));
    const json = JSON.parse((await run(file, "--trust", "--json", "--cell", "many")).out);
    expect(json.many).toHaveLength(200_000);
  });

  it("prints a step between whole where it is asked for, and says that a table has no rows", async () => {
    const { out } = await run(file, "--trust", "--cell", "steps", "--cell", "none");
    expect(out).toBe(
      `Steps\n${Array.from({ length: 20 }, (_, at) => `  ${at}\n`).join("")}None\n  (no rows)\n`,
    );
  });

  it("gives a table's text as CSV with its own decimals, and lists the tables where one is wanted", async () => {
    here.write("home/euro.csv", "bed;length;width\nZ;2,4 m;1,2 m\n");
    const own = await run("sheet", "--table", "beds=euro.csv", "--csv", "--cell", "beds");
    expect(own.out).toMatch(/^bed;length;width\n/);
    const none = await run("sheet", "--csv", "--cell", "isDeep");
    expect(none.err).toContain("The tables here: beds, rows, sizes.");
  });

  it("is no failure where whoever reads it stops early", async () => {
    expect(await here.runUnread(["run", file, "--trust", "--cell", "many"])).toEqual({
      code: 0,
      err: "",
    });
    expect(await here.runUnread(["run", "sheet", "--cell", "isDeep"])).toEqual({
      code: 0,
      err: "",
    });
  });
});
