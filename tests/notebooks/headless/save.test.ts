import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../../../build/root.ts";
import { unpack } from "../../../notebooks/engine/document/seldom.ts";
import { cell, plot, sheet } from "./sheet.ts";
import { type Installed, install } from "./started.ts";

const shipped = (file: string) => readFileSync(join(root, "notebooks", file), "utf8");

let here: Installed;
/** Another computer: the package without these notebooks, and an empty folder. */
let elsewhere: Installed;

beforeAll(async () => {
  here = await install({
    "sheet.md": sheet,
    "plot.md": plot,
    "rebuild.md": shipped("rebuild.md"),
    "garden.md": shipped("garden.md"),
  });
  elsewhere = await install({});
});
afterAll(() => {
  here.remove();
  elsewhere.remove();
});

const saved = (file: string) => readFileSync(join(here.folder, "home", file), "utf8");

/** Saves here, runs what was saved there, and gives both answers. */
async function bothAnswers(args: readonly string[], asked: readonly string[], file: string) {
  const first = await here.run([...args, ...asked, "--save", file]);
  elsewhere.write(`home/${file}`, saved(file));
  const second = await elsewhere.run(["run", file, "--trust", ...asked]);
  return { first, second };
}

describe("a notebook saved with what was entered", () => {
  it("gives the same answers in an empty folder", async () => {
    here.write("home/beds.csv", "\uFEFFbed;length;width\r\n=1+1;2,4 m;4 ft\r\n");
    const args = ["run", "sheet.md", "--table", "beds=beds.csv", "--set", "depth=4 in"];
    const asked = [
      "--set",
      "price=$1,000.50",
      "--cell",
      "fill",
      "--cell",
      "sizes",
      "--cell",
      "price",
    ];
    const first = await here.run([...args, ...asked, "--save", "own.md"]);
    // 2.4 m x 4 ft x 4 in is 0.29729 m3, 10.4987 cu ft (by hand); plot.md alone gives 8.33 cu ft.
    expect(first.out).toMatch(/^Fill needed: 10.5 cu ft\n/);
    expect(first.out).toContain("=1+1");
    expect(first.err).toMatch(/^Saved as .*own\.md\.\n$/);
    elsewhere.write("home/own.md", saved("own.md"));
    const second = await elsewhere.run(["run", "own.md", "--trust", ...asked.slice(2)]);
    expect(second).toEqual({ code: 0, out: first.out, err: "" });

    // It is saved once more with a further change on top; what was typed before stays with it.
    await elsewhere.run(["run", "own.md", "--trust", "--set", "depth=6 in", "--save", "next.md"]);
    const next = readFileSync(join(elsewhere.folder, "home/next.md"), "utf8");
    const { entered, carried } = unpack(next, "next.md");
    expect(entered).toEqual({ "plot.md#depth": "6 in", "next.md#price": "$1,000.50" });
    expect(carried.get("plot.md")).toContain(`"'=1+1";"2,4 m";4 ft\n`);
  });

  it("so does a shipped one, its garden inside it", async () => {
    here.write(
      "home/two.csv",
      "bed,length,width,courses,section,lap\nA,8 ft,4 ft,1,2x12,ends\nB,6 ft,4 ft,1,2x12,sides\n",
    );
    const args = ["run", "rebuild.md", "--table", "beds=two.csv", "--set", "kerf=3/32 in"];
    const asked = [
      "--cell",
      "total",
      "--cell",
      "kerf",
      "--cell",
      "pieces",
      "--today",
      "2026-04-25",
    ];
    const { first, second } = await bothAnswers(args, asked, "mine.md");
    expect(first.code).toBe(0);
    expect(first.out).toMatch(/\$\d/);
    expect(first.out).toContain("3/32 in");
    expect(second.out).toBe(first.out);
  }, 60_000);

  it("takes what it carries before what lies beside it", async () => {
    const main = `\`\`\`uses part.md\na\n\`\`\`\n\n${cell("b pinned", "a * 2")}`;
    here.write("home/main.md", main);
    here.write("home/part.md", cell("a", "20 + 1"));
    expect((await here.run(["run", "main.md", "--trust", "--save", "whole.md"])).out).toBe(
      "B: 42\n",
    );
    here.write("home/part.md", cell("a", "1"));
    expect((await here.run(["run", "main.md", "--trust"])).out).toBe("B: 2\n");
    expect((await here.run(["run", "whole.md", "--trust"])).out).toBe("B: 42\n");
  });

  it("is used by another with what was entered in it", async () => {
    const other = `\`\`\`uses saved.md\nfill\n\`\`\`\n\n${cell("twice pinned", "fill * 2")}`;
    await here.run(["run", "sheet", "--set", "depth=12 in", "--save", "saved.md"]);
    elsewhere.write("home/saved.md", saved("saved.md"));
    elsewhere.write("home/other.md", other);
    // 50 sq ft at a foot is 50 cu ft, twice 100, and a cubic yard is 27 (by hand).
    expect((await elsewhere.run(["run", "other.md", "--trust"])).out).toBe("Twice: 3.7 cu yd\n");
  });
});

describe("what is said", () => {
  it("where it can't be saved so; nothing is run or written", async () => {
    here.write("home/there.md", "# There\n");
    for (const [file, words] of [
      ["there.md", "it is there already"],
      ["own.txt", "allowed is the name of a notebook"],
      ["plot.md", "uses a notebook of that name"],
      ["no/such/folder.md", "can't be written"],
    ] as const) {
      const { code, err } = await here.run(["run", "sheet", "--save", file]);
      expect([code, err]).toEqual([2, expect.stringContaining(words)]);
    }
    expect(saved("there.md")).toBe("# There\n");
    const { code } = await here.run(["run", "sheet", "--set", "gone=1", "--save", "gone.md"]);
    expect([code, existsSync(join(here.folder, "home/gone.md"))]).toEqual([2, false]);
  });

  it("of what was saved and does not fit any more", async () => {
    const rows = "cell,text\nfixed,2\ngone,3\nwide,nonsense\n";
    const text = `${cell("fixed pinned", "1")}${cell("wide", 'lengthEntry("1 ft")')}\n## Carried inside this file\n\n\`\`\`csv entered\n${rows}\`\`\`\n`;
    here.write("home/old.md", text);
    const { code, out, err } = await here.run(["run", "old.md", "--trust"]);
    expect([code, out]).toEqual([0, "Fixed: 1\n"]);
    expect(err).toContain("old.md, line 15: Something was entered for gone");
    expect(err).toContain("what was entered for fixed of old.md is not used");
    expect(err).toContain("nonsense");
  });
});
