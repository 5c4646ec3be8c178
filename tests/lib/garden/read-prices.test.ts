import { describe, expect, it } from "vitest";
import {
  amount,
  cubicFoot,
  foot,
  inch,
  type PriceLine,
  pound,
  readCsv,
  readPrices,
} from "../../../lib/index.ts";

const heading = "yard,item,size,price,form,limit,from,step";
const read = (...lines: string[]) => readPrices(readCsv([heading, ...lines].join("\n"), "prices"));
const one = (line: string): PriceLine => {
  const { rows, problems } = read(line);
  const [first] = rows;
  if (first === undefined) throw new Error(JSON.stringify(problems));
  return first;
};
const places = (line: string) => read(line).problems.map(({ code, path }) => [code, ...path]);

describe("readPrices(table)", () => {
  it("reads a board: a section with its timber, sold by length", () => {
    const line = one("Alder,2x12 Treated,8 ft,21.40,,40,,");
    expect(line).toMatchObject({
      kind: "board",
      timber: "treated",
      form: "board",
      limit: 40,
      from: 0,
      step: 1,
    });
    expect(line.kind === "board" && [line.section.name, amount(line.length, foot)]).toEqual([
      "2x12",
      8,
    ]);
  });

  it("reads a board in millimetres, with its price in euros", () => {
    const line = one("Erle,47x225 larch,2.4 m,€31.90,,,,");
    expect(line.kind === "board" && line.section.name).toBe("47x225");
    expect(line.price.currency).toBe("EUR");
  });

  it("reads bags and bulk by volume, mass and count", () => {
    expect(one("A,compost,2 cu ft,5.10,,,,")).toMatchObject({ kind: "goods", form: "bag" });
    expect(one("A,compost,1 cu yd,38,,,,")).toMatchObject({ kind: "goods", form: "bulk" });
    expect(one("A,manure,40 lb,4,,,,")).toMatchObject({ kind: "goods", form: "bag" });
    expect(one("A,corner plate,4,9,,,,")).toMatchObject({
      form: "pack",
      size: { kind: "count", count: 4 },
    });
    const bag = one("A,compost,60 L,5,bag,,,");
    expect(bag.kind === "goods" && bag.size.kind === "volume" && bag.size.volume.si).toBeCloseTo(
      0.06,
      12,
    );
    const sack = one("A,manure,40 lb,4,bag,,,");
    expect(
      sack.kind === "goods" && sack.size.kind === "mass" && amount(sack.size.mass, pound),
    ).toBe(40);
  });

  it("reads a sheet, the longer side the length, and a kit", () => {
    const sheet = one("A,liner,100 ft x 6 ft,84,,,,");
    expect(sheet).toMatchObject({ kind: "sheet", form: "roll" });
    expect(
      sheet.kind === "sheet" && [amount(sheet.width, foot), amount(sheet.length, foot)],
    ).toEqual([6, 100]);
    const kit = one("A,steel kit,8 ft x 4 ft x 17 in,199,,,,");
    expect(kit).toMatchObject({ kind: "kit", form: "kit" });
    expect(kit.kind === "kit" && amount(kit.height, inch)).toBe(17);
  });

  it("lets one unit at the end serve all sides", () => {
    const sheet = one("A,liner,6 x 100 ft,84,,,,");
    expect(sheet.kind === "sheet" && amount(sheet.width, foot)).toBe(6);
  });

  it("reads limit, from and step as numbers of sizes or as quantities", () => {
    expect(one("A,compost,1 cu yd,38,bulk,20,3,0.5")).toMatchObject({
      limit: 20,
      from: 3,
      step: 0.5,
    });
    expect(one("A,compost,1 cu yd,38,bulk,20 cu yd,3 cu yd,13.5 cu ft")).toMatchObject({
      limit: 20,
      from: 3,
      step: 0.5,
    });
    expect(one("A,compost,2 cu ft,5,bag,,,").step).toBe(1);
  });

  it("takes screws for goods, whatever their length", () => {
    expect(one("A,3 in screws,100,12,,,,")).toMatchObject({ kind: "goods", form: "pack" });
  });

  it("takes a unit in the heading for bare sizes", () => {
    const { rows } = readPrices(
      readCsv("yard,item,size (ft),price\nA,2x12 treated,8,21.40", "prices"),
    );
    expect(rows[0]?.kind === "board" && amount(rows[0].length, foot)).toBe(8);
    const volumes = readPrices(
      readCsv("yard,item,size (cu ft),price\nA,compost,2,5", "prices"),
    ).rows;
    const [bag] = volumes;
    expect(
      bag?.kind === "goods" && bag.size.kind === "volume" && amount(bag.size.volume, cubicFoot),
    ).toBe(2);
  });

  it.each([
    ["A,2x12 treated,40,12,board,,,", "wrong-unit", "size"],
    ["A,2x12 treated,8 fot,12,,,,", "unreadable", "size"],
    ["A,2x12 treated,1 in,12,,,,", "too-small", "size"],
    ["A,2x12 treated,500 ft,12,,,,", "too-large", "size"],
    ["A,compost,8 ft,12,board,,,", "unreadable", "item"],
    ["A,2x13 treated,8 ft,12,board,,,", "unknown", "item"],
    ["A,compost,2 cu ft,12,kit,,,", "contradiction", "form"],
    ["A,liner,6 ft x 100 ft,12,bag,,,", "contradiction", "form"],
    ["A,compost,2 cu ft,12,sack,,,", "unknown", "form"],
    ["A,compost,2 cu ft,12,bag,,,0", "too-small", "step"],
    ["A,compost,2 cu ft,12,bag,-1,,", "too-small", "limit"],
    ["A,compost,2 cu ft,12,bag,many,,", "unreadable", "limit"],
    ["A,compost,2 cu ft,12,bag,,3 lb,", "wrong-unit", "from"],
    ["A,corner plate,1,2,pack,,3 ft,", "wrong-unit", "from"],
    ["A,compost,2 cu ft,-12,bag,,,", "too-small", "price"],
    ["A,compost,2 cu ft,,bag,,,", "missing", "price"],
    ["A,compost,0 cu ft,12,bag,,,", "too-small", "size"],
    ["A,corner plate,0,12,pack,,,", "too-small", "size"],
    ["A,corner plate,1.5,12,pack,,,", "unreadable", "size"],
    ["A,liner,6 ft x 100 ft x 2 ft x 1 ft,12,,,,", "unreadable", "size"],
    ["A,liner,0 ft x 100 ft,12,,,,", "too-small", "size"],
    [",compost,2 cu ft,12,bag,,,", "missing", "yard"],
    ["A,,2 cu ft,12,bag,,,", "missing", "item"],
  ])("%s: %s at %s", (line, code, column) => {
    expect(places(line)).toEqual([[code, "prices", 1, column]]);
  });

  it("takes a price of nothing", () => {
    expect(one("A,compost,2 cu ft,0,bag,,,").price.si).toBe(0);
  });
});
