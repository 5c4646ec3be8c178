import { describe, expect, it } from "vitest";
import {
  amount,
  type BuyingChoices,
  foot,
  type GardenBuying,
  inch,
  kilogramPerCubicMetre,
  money,
  over,
  ProblemError,
  times,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { buying, cents } from "./bill.ts";
import { american } from "./garden.ts";

const one8 = "yard,item,size,price\nAlder,2x12 treated,8 ft,20";
const none = times(0, inch);

const planned = (texts: Parameters<typeof buying>[0], choices: Partial<BuyingChoices> = {}) =>
  buying({ yards: "yard\nAlder\nBirch", ...texts }, [], choices);

const boards = (made: GardenBuying) => made.buying.boards.boughtCount;
const bought = (made: GardenBuying) =>
  made.buying.boards.buy.map((line) => [line.yard, line.section.name, line.count]).sort();
const codes = (made: GardenBuying) => made.problems.map(({ code }) => code);

describe("planGardenBuying(need, options)", () => {
  const bed = (lap: string) => ({ beds: `bed,length,width,lap\nA,8 ft,4 ft,${lap}`, prices: one8 });

  // The trade's rule for a 4 ft x 8 ft bed, with its exact reckoning: a saw cut takes 1/8 in.
  it("lap sides: three 8 ft boards, at any allowance", async () => {
    expect(boards(await planned(bed("sides")))).toBe(3);
    expect(boards(await planned(bed("sides"), { shortfall: none }))).toBe(3);
  });

  it("lap ends: three with the usual allowance, and the 48 in pieces are named", async () => {
    const made = await planned(bed("ends"));
    const { shortened } = made.buying.boards;
    expect(boards(made)).toBe(3);
    expect(shortened.map(({ name, asked }) => [name, amount(asked, inch)])).toEqual([
      ["A end", 48],
    ]);
    expect(shortened.every(({ short }) => short.si <= inch.si / 16 + 1e-9)).toBe(true);
  });

  it("lap ends: four with no allowance", async () => {
    expect(boards(await planned(bed("ends"), { shortfall: none }))).toBe(4);
  });

  it("gives a plan that stands up to being worked out again", async () => {
    const { problem, buying: plan } = await planned(american);
    expect(validateBoardPlan(problem.boards, plan.boards)).toEqual([]);
  });

  // By hand: two sides of 96 in need two boards, both ends of 45 in go on a third. At Alder alone
  // 3 x 20 = 60 and one trip of 6; the third at Birch would save 1 and cost a second trip of 6.
  it("makes no second trip for a cheaper board, and buys at two yards where that pays", async () => {
    const prices = (birch: number) =>
      `yard,item,size,price,limit\nAlder,2x12 treated,8 ft,20,\nBirch,2x12 treated,8 ft,${birch},1`;
    const garden = { ...bed("sides"), yards: "yard,trip_cost\nAlder,6\nBirch,6" };
    const one = await planned({ ...garden, prices: prices(19) });
    expect([bought(one), cents(one.total)]).toEqual([[["Alder", "2x12", 3]], 6600]);
    const two = await planned({ ...garden, prices: prices(12) });
    expect(bought(two)).toEqual([
      ["Alder", "2x12", 2],
      ["Birch", "2x12", 1],
    ]);
    expect([cents(two.total), two.proof.words]).toEqual([6400, "No cheaper plan exists"]);
  });

  // By hand: 12 ft at 25 gives a side and an end, two of them the bed for 50; the car takes 8 ft, so
  // three boards of 8 ft for 60. Cut at the yard (8 ft and 4 ft), the long ones go on the car.
  it("leaves out boards too long for the car, unless the yard cuts them", async () => {
    const garden = { ...bed("sides"), prices: `${one8}\nAlder,2x12 treated,12 ft,25` };
    const total = async (choices: Partial<BuyingChoices>) =>
      cents((await planned(garden, choices)).total);
    expect(await total({})).toBe(5000);
    expect(await total({ loadLength: times(9, foot) })).toBe(6000);
    expect(await total({ loadLength: times(9, foot), cutAtYard: true })).toBe(5000);
  });

  it("squares boards where asked for: a side of 8 ft no longer comes out of 8 ft", async () => {
    const squared = await planned(bed("sides"), { squaring: inch });
    expect([codes(squared), squared.buying.boards.boughtCount]).toEqual([["no-fit"], 0]);
  });

  it("joins a side over its stake where asked for", async () => {
    const garden = {
      beds: "bed,length,width,stakes\nA,12 ft,4 ft,1",
      prices: `${one8}\nAlder,2x4 treated,8 ft,6`,
    };
    expect(codes(await planned(garden))).toContain("no-fit");
    const made = await planned(garden, { splice: true });
    expect(codes(made)).toEqual([]);
    expect(made.buying.boards.spliced.map(({ name, onStakes }) => [name, onStakes])).toEqual([
      ["A side", true],
    ]);
  });

  it("counts what offcuts are worth only where asked for", async () => {
    const made = await planned(bed("sides"), {
      offcutsFrom: inch,
      offcutWorth: over(money(1, "USD"), foot),
    });
    // Two sides use up two boards; the ends of 45 in leave 96 - 90 - 2 cuts of 1/8 in, 5 3/4 in.
    expect(cents(made.buying.boards.offcutWorth)).toBe(48);
    expect(cents((await planned(bed("sides"))).buying.boards.offcutWorth)).toBe(0);
    // 20 for 8 ft are 2.50 a foot.
    await expect(
      planned(bed("sides"), { offcutsFrom: inch, offcutWorth: over(money(2.5, "USD"), foot) }),
    ).rejects.toThrow(/less than .*2\.50 a foot.*prices, row 1, price/);
    await expect(
      planned(bed("sides"), { offcutWorth: over(money(1, "USD"), foot) }),
    ).rejects.toThrow(/offcuts are kept/);
  });

  it("counts trips by the weight of the boards", async () => {
    // Three boards of 1.5 x 11.25 x 96 in are 0.0796 cu m, 47.8 kg at 600 kg a cu m.
    const made = await planned(
      { ...bed("sides"), yards: "yard,trip_cost,payload\nAlder,6,40 kg" },
      { woodDensity: times(600, kilogramPerCubicMetre) },
    );
    expect([made.receipts[0]?.trips, cents(made.total)]).toEqual([2, 7200]);
  });

  it("leaves treated boards from before 2004 out of beds for food, with the caution", async () => {
    const made = await planned(american);
    expect(made.leftOut.map(({ row }) => row)).toEqual([2]);
    expect(made.cautions.map(({ id }) => id)).toContain("old-treated-wood");
    const flowers = await planned(american, { food: false });
    expect(flowers.leftOut).toEqual([]);
    expect(flowers.cautions.map(({ id }) => id)).not.toContain("old-treated-wood");
  });

  it("counts old boards of no named timber as what their section's pieces are", async () => {
    const unnamed = "section,length,count,timber,bought\n2x12,8 ft,3,,2001";
    const treated = await planned({ ...bed("sides"), onHand: unnamed });
    expect(treated.leftOut.length).toBe(1);
    const larch = { ...bed("sides"), onHand: unnamed, prices: one8.replace("treated", "larch") };
    expect((await planned(larch)).leftOut).toEqual([]);
    const undated = await planned({
      ...bed("sides"),
      onHand: "section,length,timber\n2x12,8 ft,treated",
    });
    expect(undated.leftOut).toEqual([]);
  });

  it("never costs more with more boards kept", async () => {
    const cost = async (count: number) => {
      const onHand = `section,length,count,timber\n2x12,4 ft,${count},treated`;
      return (await planned({ ...bed("sides"), onHand })).buying.boards.cost.si;
    };
    const costs = [await cost(1), await cost(2), await cost(3)];
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
    expect(costs[1]).toBe(40);
  });

  it("buys a section that the main yard has none of at another", async () => {
    const garden = {
      beds: "bed,length,width,section\nA,8 ft,4 ft,2x12\nB,8 ft,4 ft,2x8",
      prices: `${one8}\nBirch,2x8 treated,8 ft,12\nBirch,2x12 treated,8 ft,25`,
    };
    expect(bought(await planned(garden, { yard: "Alder" }))).toEqual([
      ["Alder", "2x12", 3],
      ["Birch", "2x8", 3],
    ]);
    expect(bought(await planned(garden, { yard: "Birch" }))).toEqual([
      ["Birch", "2x12", 3],
      ["Birch", "2x8", 3],
    ]);
  });

  it("plans over all yards where no single one has enough, and says so of one", async () => {
    const garden = {
      beds: "bed,length,width\nA,8 ft,4 ft",
      prices:
        "yard,item,size,price,limit\nAlder,2x12 treated,8 ft,20,2\nBirch,2x12 treated,8 ft,21,2",
    };
    expect(bought(await planned(garden))).toEqual([
      ["Alder", "2x12", 2],
      ["Birch", "2x12", 1],
    ]);
    expect(codes(await planned(garden, { yard: "Alder" }))).toEqual(["contradiction"]);
  });

  it("says why there is no plan: no price, a piece too long", async () => {
    expect(codes(await planned({ beds: "bed,length,width\nA,8 ft,4 ft" }))).toContain("unpriced");
    const long = await planned({ beds: "bed,length,width\nA,9 ft,4 ft", prices: one8 });
    expect(codes(long)).toContain("no-fit");
  });

  // A gardener with one bed too long still wants the boards of the others.
  it("plans the other beds where a piece is too long for every board, and names those left out", async () => {
    const beds = "bed,length,width\nA,8 ft,4 ft\nLong,18 ft,4 ft\nB,8 ft,4 ft\nLonger,20 ft,4 ft";
    const made = await planned({ beds, prices: one8 });
    const alone = await planned({
      beds: "bed,length,width\nA,8 ft,4 ft\nB,8 ft,4 ft",
      prices: one8,
    });
    expect(boards(made)).toBe(boards(alone));
    const sawn = made.buying.boards.cuts.flatMap(({ pieces }) => pieces.map((each) => each.bed));
    expect([...new Set(sawn)].sort()).toEqual(["A", "B"]);
    const named = made.problems.map(({ remedy }) => /for (\w+),/.exec(remedy)?.[1]);
    expect(named.sort()).toEqual(["Long", "Longer"]);
  });

  it("plans the other beds where a section has no price", async () => {
    const beds = "bed,length,width,section\nA,8 ft,4 ft,2x12\nB,8 ft,4 ft,2x8\nC,6 ft,4 ft,2x8";
    const made = await planned({ beds, prices: one8 });
    expect([boards(made), codes(made)]).toEqual([3, ["unpriced"]]);
  });

  it("takes bare prices for the currency chosen, and refuses two", async () => {
    const made = await planned(bed("sides"), { currency: "CAD" });
    expect([made.currency, made.total.currency]).toEqual(["CAD", "CAD"]);
    const mixed = {
      ...bed("sides"),
      yards: "yard,trip_cost\nAlder,€4",
      prices: one8.replace(",20", ",$20"),
    };
    await expect(planned(mixed)).rejects.toThrow(ProblemError);
  });

  it("reads a length in feet from the plan as it was typed", async () => {
    const { cuts } = (await planned(bed("sides"))).buying.boards;
    expect(cuts.map((cut) => Math.round(amount(cut.length, foot)))).toEqual([8, 8, 8]);
  });

  it.each([
    [{ spareBoards: -1 }, "too-small", "spareBoards"],
    [{ spareBoards: 1e9 }, "too-large", "spareBoards"],
    [{ spareBoards: 0.5 }, "unreadable", "spareBoards"],
    [{ squaring: times(3, foot) }, "too-large", "squaring"],
    [{ loadLength: inch }, "too-small", "loadLength"],
  ])("refuses %o", async (choices, code, path) => {
    const failed = await planned(bed("sides"), choices).catch((error: unknown) => error);
    expect(failed).toBeInstanceOf(ProblemError);
    expect((failed as ProblemError).problems.map((each) => [each.code, ...each.path])).toEqual([
      [code, path],
    ]);
  });
});
