import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../../../build/root.ts";
import { type Installed, install } from "./started.ts";

const folder = join(root, "notebooks");
const shipped = Object.fromEntries(
  readdirSync(folder)
    .filter((file) => file.endsWith(".md"))
    .map((file) => [file, readFileSync(join(folder, file), "utf8")]),
);

let here: Installed;
const run = (...args: string[]) => here.run(["run", "notebooks/rebuild.md", ...args]);
const cells = (...names: string[]) => names.flatMap((name) => ["--cell", name]);

beforeAll(async () => {
  here = await install(shipped);
});
afterAll(() => here.remove());

interface MoneyJson {
  readonly amount: string;
  readonly currency: string;
}

const cents = ({ amount }: MoneyJson) => Math.round(Number(amount) * 100);

/** Runs and reads the JSON, which must be there without an error. */
async function json(...args: string[]) {
  const { code, out, err } = await run("--json", ...args);
  expect([code, err.replace(/^Note: beds, timber: .*\n/gm, "")]).toEqual([0, ""]);
  return JSON.parse(out);
}

describe("the shipped notebook on the command line", () => {
  it("prints the demonstration garden's total, the sum of its bill to the cent", async () => {
    const { total, bill } = await json(...cells("total", "bill"));
    expect(total.currency).toBe("USD");
    const lines: readonly { total: MoneyJson | null }[] = bill;
    const sum = lines.reduce((cent, line) => cent + (line.total ? cents(line.total) : 0), 0);
    expect(cents(total)).toBe(sum);
    expect(sum).toBeGreaterThan(0);
  });

  it("has every cell the job needs, without an error, pinned ones by default", async () => {
    const names =
      "beds onHand yards prices pieces boards cuts fill topDressing mulch liner fasteners bill total mass cautions";
    const answers = await json(...cells(...names.split(" ")));
    for (const name of names.split(" ")) expect(answers[name], name).not.toHaveProperty("problems");
    expect((await run()).out).toMatch(/\$[\d,]+\.\d\d/);
  });

  it("says how sure the total is, and what other choices would cost", async () => {
    const names = ["total", "proofWords", "compared", "floors"];
    const { total, proofWords, compared, floors } = await json(...cells(...names));
    expect(proofWords).toMatch(/^No cheaper plan exists$|^At most \$[\d.]+ \(.* %\) above/);
    const [own, ...others] = compared as readonly { choice: string; total: MoneyJson }[];
    expect(own).toMatchObject({ choice: "this plan", total });
    expect(others.length).toBeGreaterThan(3);
    for (const row of others) {
      if (typeof row.total !== "object") continue;
      expect(cents(row.total), row.choice).toBeGreaterThanOrEqual(cents(total));
    }
    for (const { out, floor } of floors as readonly { out: string; floor: MoneyJson }[])
      expect(out).toBe(cents(floor) > cents(total) ? "yes" : "no");
  });

  it("fetches no board that is too long for the car", async () => {
    interface Row {
      readonly yard: string;
      readonly length: { readonly si: number };
    }
    const longest = async (...sets: string[]) => {
      const { boards, ways } = await json(...sets, ...cells("boards", "ways"));
      const fetched = new Set(
        ways.flatMap((row: { yard: string; way: string }) =>
          row.way === "fetched" ? row.yard : [],
        ),
      );
      const rows: readonly Row[] = boards;
      return Math.max(
        0,
        ...rows.flatMap(({ yard, length }) => (fetched.has(yard) ? length.si : [])),
      );
    };
    expect(await longest()).toBeGreaterThan(9 * 0.3048);
    expect(await longest("--set", "loadLength=9 ft")).toBeLessThanOrEqual(9 * 0.3048 + 1e-9);
  });

  it("buys nothing at a yard left out", async () => {
    const { ways } = await json("--set", "yardsOut=birch", ...cells("ways"));
    expect(ways.map(({ yard }: { yard: string }) => yard)).toEqual(["Alder"]);
  });

  it("names a yard left out that is none of the garden's", async () => {
    const { code, err } = await run("--set", "yardsOut=Elm", ...cells("total"));
    expect(code).not.toBe(0);
    expect(err).toMatch(/Elm.*Alder or Birch/);
  });

  it("gives one row for every board used, with its columns named", async () => {
    const { out } = await run("--csv", ...cells("cuts"));
    const [head = "", ...rows] = out.trim().split("\n");
    const columns = head.split(",");
    for (const column of ["board", "source", "section", "length", "pieces", "offcut"])
      expect(columns).toContain(column);
    const { boards } = await json(...cells("boards"));
    const bought = boards.reduce((sum: number, row: { count: number }) => sum + row.count, 0);
    const kept = rows.filter((row) => row.split(",")[columns.indexOf("source")] === "kept");
    expect(rows).toHaveLength(bought + kept.length);
  });
});

// An outside frame of 4 ft x 8 ft of one course, and a yard with 8 ft boards only. How many boards
// it takes is the trade's rule for frames, worked by hand: two sides of 96 in and two ends of 45 in,
// or two ends of 48 in and two sides of 93 in; a saw cut of 1/8 in leaves halves of a hair under 48 in.
const oneBed = "bed,length,width,courses,section\nA,8 ft,4 ft,1,2x12\n";
const oneYard = "yard,trip_cost\nY,0\n";
const eightFeet = "yard,item,size,price,form\nY,2x12 treated,8 ft,$20.00,board\n";
const nothingKept = "section,length\n";

function smallGarden(): string[] {
  here.write("home/beds.csv", oneBed);
  here.write("home/yards.csv", oneYard);
  here.write("home/prices.csv", eightFeet);
  here.write("home/kept.csv", nothingKept);
  const tables = ["beds=beds.csv", "yards=yards.csv", "prices=prices.csv", "onHand=kept.csv"];
  return tables.flatMap((table) => ["--table", table]);
}

describe("the pieces of one bed", () => {
  it.each([
    ["sides", "1/8 in", 3],
    ["sides", "0 in", 3],
    ["ends", "1/8 in", 3],
    ["ends", "0 in", 4],
  ])("lap %s with %s of allowance takes %i boards", async (lap, shortfall, count) => {
    const sets = ["--set", `lap=${lap}`, "--set", `shortfall=${shortfall}`];
    const { boards, shortened } = await json(
      ...smallGarden(),
      ...sets,
      ...cells("boards", "shortened"),
    );
    expect(boards).toMatchObject([{ count }]);
    const isShort = lap === "ends" && shortfall !== "0 in";
    if (isShort) expect(shortened[0].asked.si).toBeCloseTo(48 * 0.0254, 9);
    else expect(shortened).toBe("none");
  });
});

describe("other gardens", () => {
  it("work in metric sections and euros", async () => {
    here.write(
      "home/beete.csv",
      "bed;length;width;courses;section\r\nA;2,4 m;1,2 m;1;47x225\r\nB;1,8 m;90 cm;2;47x225\r\n",
    );
    here.write(
      "home/preise.csv",
      "yard;item;size;price;form\r\nHof;47x225 spruce;2,4 m;€18,50;board\r\nHof;47x225 spruce;4,8 m;€35,00;board\r\n",
    );
    here.write("home/hof.csv", "yard;trip_cost\r\nHof;0\r\n");
    here.write("home/kept.csv", nothingKept);
    const tables = ["beds=beete.csv", "prices=preise.csv", "yards=hof.csv", "onHand=kept.csv"];
    const { total, cuts } = await json(
      ...tables.flatMap((table) => ["--table", table]),
      ...["--units", "metric"],
      ...cells("total", "cuts"),
    );
    expect(total.currency).toBe("EUR");
    expect(cuts.length).toBeGreaterThan(0);
    expect(cuts[0].length.text).toMatch(/ m{1,2}$/);
  });

  it("give their own total", async () => {
    const small = await json(...smallGarden(), ...cells("total"));
    // Three 8 ft boards at $20; nothing else has a price, and no tax is named.
    expect(small.total).toEqual({ amount: "60.00", currency: "USD" });
  });
});
