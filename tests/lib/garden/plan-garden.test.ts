import { describe, expect, it } from "vitest";
import {
  billRows,
  boardsToBuy,
  cutRows,
  type GardenChoicesSpec,
  type GardenPlan,
  type GardenTables,
  gardenBeds,
  gardenBill,
  gardenCautions,
  gardenFasteners,
  gardenFill,
  gardenLiner,
  gardenMass,
  gardenMulch,
  gardenPieces,
  gardenTopDressing,
  gardenTotal,
  inch,
  kilogramPerCubicMetre,
  oldBoards,
  planGarden,
  planGardenBuying,
  times,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { cents } from "./bill.ts";
import { american, choices, european, material, tables } from "./garden.ts";

/** What a notebook does, cell by cell, each cell with the choices it needs and no others. */
async function cellByCell(read: GardenTables, spec: GardenChoicesSpec) {
  const prices = read.prices.rows;
  const made = gardenBeds(read.beds, spec.frame, prices);
  const list = gardenPieces(made.beds, { prices });
  const fill = gardenFill(made.beds, spec.fill);
  const topDressing = gardenTopDressing(made.beds, spec.topDressing);
  const mulch = gardenMulch(made.beds, spec.mulch);
  const liner = gardenLiner(made.beds, { prices, ...spec.liner });
  const fasteners = gardenFasteners(made.beds, list.pieces, { prices, ...spec.fastening });
  const needs = [fill, topDressing, mulch, liner, fasteners].flatMap((part) => part.needs);
  const buying = await planGardenBuying(
    { pieces: list.pieces, needs, onHand: read.onHand, yards: read.yards, prices: read.prices },
    {
      ...spec.cutting,
      ...spec.money,
      woodDensity: spec.woodDensity,
      solve: await solver(),
    },
  );
  const bill = gardenBill(buying, made.beds);
  const density = spec.woodDensity === undefined ? {} : { woodDensity: spec.woodDensity };
  const old = oldBoards(made.beds, { onHand: read.onHand, ...density });
  return {
    beds: made.beds,
    pieces: list.pieces,
    boards: boardsToBuy(bill),
    cuts: cutRows(bill.boards),
    fill,
    topDressing,
    mulch,
    liner,
    fasteners,
    oldBoards: old,
    buying,
    billRows: billRows(bill),
    total: gardenTotal(bill),
    mass: gardenMass({
      boards: bill.boards,
      ...density,
      volumes: [
        { what: "fill", volume: fill.total.order.likely, material: fill.material },
        { what: "top-dressing", volume: topDressing.toBuy, material: spec.topDressing.material },
        { what: "mulch", volume: mulch.volume, material: spec.mulch.material },
      ],
    }),
    cautions: gardenCautions([made, topDressing, liner, old, bill]),
  };
}

const woodDensity = times(620, kilogramPerCubicMetre);

describe("planGarden(tables, spec, options)", () => {
  it("equals what a notebook gives cell by cell", async () => {
    const spec = choices({ woodDensity });
    const plan = await planGarden(tables(american), spec, { solve: await solver() });
    expect(plan).toMatchObject(await cellByCell(tables(american), spec));
    expect(plan.problems).toEqual([]);
  });

  it("equals it with other choices too", async () => {
    const spec = choices({
      frame: { lap: "ends", liner: false, stakes: 1 },
      cutting: { kerf: times(1 / 16, inch), spareBoards: 1 },
      money: { yard: "Birch", carriesBulk: true },
    });
    const plan = await planGarden(tables(american), spec, { solve: await solver() });
    expect(plan).toMatchObject(await cellByCell(tables(american), spec));
  });

  it("works in millimetres and euros with tax in the prices", async () => {
    const spec = choices({ money: { taxIncluded: true }, frame: { timber: "larch" } });
    const plan = await planGarden(tables(european), spec, { solve: await solver() });
    expect(plan.problems).toEqual([]);
    expect(plan.total?.currency).toBe("EUR");
    expect(plan.beds.every((bed) => Math.abs(bed.wallHeight.si - 0.225) < 1e-12)).toBe(true);
    // Screws and preservative have no price there, or are not called for by larch.
    expect(plan.bill.notSold.map(({ need }) => need.use)).toEqual(["fasteners"]);
    const sum = plan.bill.receipts.reduce((all, receipt) => all + cents(receipt.total), 0);
    expect(cents(plan.bill.total)).toBe(sum);
    expect(
      plan.bill.receipts.every(
        (receipt) =>
          cents(receipt.total) ===
          cents(receipt.goods) + cents(receipt.delivery) + cents(receipt.tripCost),
      ),
    ).toBe(true);
  });

  it("does not depend on the order of the beds, but for their names' places", async () => {
    const [heading = "", ...rows] = american.beds.split("\n");
    const turned = { ...american, beds: [heading, ...rows.reverse()].join("\n") };
    const solve = await solver();
    const one = await planGarden(tables(american), choices(), { solve });
    const other = await planGarden(tables(turned), choices(), { solve });
    expect(cents(one.bill.total)).toBe(cents(other.bill.total));
    expect(one.bill.ways).toEqual(other.bill.ways);
  });

  it("gives the same boards with what is remembered, where only soil and mulch change", async () => {
    const solve = await solver();
    const remembered = new Map();
    const one = await planGarden(tables(american), choices(), { solve, remembered });
    const deeper = { material: material("pine bark"), depth: times(3, inch) };
    const spec = choices({ mulch: deeper });
    const other = await planGarden(tables(american), spec, { solve, remembered });
    expect(other.boards).toEqual(one.boards);
    expect(other.bill).toEqual((await planGarden(tables(american), spec, { solve })).bill);
  });

  it("gives a whole plan at once, and better ones as they are found", async () => {
    const seen: GardenPlan[] = [];
    const options = { solve: await solver(), improved: (plan: GardenPlan) => seen.push(plan) };
    const last = await planGarden(tables(american), choices(), options);
    expect(seen.length).toBeGreaterThan(0);
    const totals = [...seen, last].map(({ bill }) => cents(bill.total));
    expect(totals).toEqual([...totals].sort((a, b) => b - a));
    expect(seen[0]?.boards.length).toBeGreaterThan(0);
  });

  it("goes on without rows that cannot be read, and lists every problem", async () => {
    const broken = { ...american, beds: `${american.beds}\nD,8,4 ft,,\nE,4 ft,,,` };
    const plan = await planGarden(tables(broken), choices(), { solve: await solver() });
    expect(plan.problems.map(({ code, path }) => [code, ...path])).toEqual([
      ["wrong-unit", "beds", 4, "length"],
      ["missing", "beds", 5, "width"],
    ]);
    expect(plan.beds.length).toBe(6);
    expect(plan.total).not.toBeNull();
  });

  it("has no total where the boards cannot be had, and all else", async () => {
    const plan = await planGarden(tables({ ...american, prices: "" }), choices(), {
      solve: await solver(),
    });
    expect(plan.total).toBeNull();
    expect(plan.problems.map(({ code }) => code)).toContain("unpriced");
    expect(plan.fill.total.settled.si).toBeGreaterThan(0);
  });

  it("is nothing for an empty garden", async () => {
    const plan = await planGarden(tables({}), choices(), { solve: await solver() });
    expect(plan).toMatchObject({ beds: [], pieces: [], boards: [], cuts: [], problems: [] });
    expect(plan.total?.si).toBe(0);
  });
});
