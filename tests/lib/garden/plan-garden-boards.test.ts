import { describe, expect, it } from "vitest";
import {
  amount,
  type BoardPlan,
  type CuttingChoices,
  foot,
  gardenBeds,
  gardenPieces,
  inch,
  ProblemError,
  planGardenBoards,
  times,
  validateBoardPlan,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { american, tables } from "./garden.ts";

const one8 = "yard,item,size,price\nAlder,2x12 treated,8 ft,20";

async function planned(texts: Parameters<typeof tables>[0], choices: Partial<CuttingChoices> = {}) {
  const read = tables({ yards: "yard\nAlder\nBirch", ...texts });
  const { beds } = gardenBeds(read.beds, {}, read.prices.rows);
  const { pieces } = gardenPieces(beds, {
    prices: read.prices.rows,
    hand: read.pieces?.rows ?? [],
  });
  const need = { pieces, onHand: read.onHand, yards: read.yards, prices: read.prices };
  return { pieces, made: await planGardenBoards(need, { ...choices, solve: await solver() }) };
}

const boards = (plan: BoardPlan | null | undefined) => plan?.boughtCount;
const at = (made: Awaited<ReturnType<typeof planned>>["made"], yard: string) =>
  made.byYard.find((each) => each.yard === yard)?.plan;

describe("planGardenBoards(need, options)", () => {
  const bed = (lap: string) => ({ beds: `bed,length,width,lap\nA,8 ft,4 ft,${lap}`, prices: one8 });
  const none = times(0, inch);

  // The trade's rule for a 4 ft x 8 ft bed, with its exact reckoning: a saw cut takes 1/8 in.
  it("lap sides: three 8 ft boards, at any allowance", async () => {
    expect(boards(at((await planned(bed("sides"))).made, "Alder"))).toBe(3);
    expect(boards(at((await planned(bed("sides"), { shortfall: none })).made, "Alder"))).toBe(3);
  });

  it("lap ends: three with the usual allowance, and the 48 in pieces are named", async () => {
    const plan = at((await planned(bed("ends"))).made, "Alder");
    expect(boards(plan)).toBe(3);
    expect(plan?.shortened.map(({ name, asked }) => [name, amount(asked, inch)])).toEqual([
      ["A end", 48],
    ]);
    expect(plan?.shortened.every(({ short }) => short.si <= inch.si / 16 + 1e-9)).toBe(true);
  });

  it("lap ends: four with no allowance", async () => {
    const { made } = await planned(bed("ends"), { shortfall: none });
    expect(boards(at(made, "Alder"))).toBe(4);
  });

  it("gives a plan that stands up to being worked out again, for each yard", async () => {
    const { pieces, made } = await planned(american);
    for (const { plan } of made.byYard) {
      if (plan === null) throw new Error("no plan");
      const stock = [
        ...tables(american).prices.rows.flatMap((line) => {
          if (line.kind !== "board") return [];
          const { yard, section, timber, length, price, limit } = line;
          const named = timber === undefined ? {} : { timber };
          return [
            {
              yard,
              section,
              ...named,
              length,
              price: { ...price, currency: "USD" },
              ...(limit === undefined ? {} : { limit }),
            },
          ];
        }),
        ...tables(american).onHand.rows.map(({ section, timber, sound, count }) => ({
          yard: null,
          section,
          ...(timber === undefined ? {} : { timber }),
          length: sound,
          price: { si: 0, dim: [0, 0, 0, 1, 0] as const, currency: "USD" },
          limit: count,
        })),
      ];
      const problem = { pieces, stock, kerf: times(1 / 8, inch), shortfall: times(1 / 8, inch) };
      expect(validateBoardPlan(problem, plan)).toEqual([]);
    }
  });

  it("leaves treated boards from before 2004 out of beds for food, with the caution", async () => {
    const { made } = await planned(american);
    expect(made.leftOut.map(({ row }) => row)).toEqual([2]);
    expect(made.cautions.map(({ id }) => id)).toEqual(["old-treated-wood"]);
    const flowers = await planned(american, { food: false });
    expect([flowers.made.leftOut, flowers.made.cautions]).toEqual([[], []]);
  });

  it("counts old boards of no named timber as what their section's pieces are", async () => {
    const unnamed = "section,length,count,timber,bought\n2x12,8 ft,3,,2001";
    const treated = await planned({ ...bed("sides"), onHand: unnamed });
    expect(treated.made.leftOut.length).toBe(1);
    const larch = { ...bed("sides"), onHand: unnamed, prices: one8.replace("treated", "larch") };
    expect((await planned(larch)).made.leftOut).toEqual([]);
    const undated = await planned({
      ...bed("sides"),
      onHand: "section,length,timber\n2x12,8 ft,treated",
    });
    expect(undated.made.leftOut).toEqual([]);
  });

  it("never costs more with more boards kept", async () => {
    const cost = async (count: number) => {
      const onHand = `section,length,count,timber\n2x12,4 ft,${count},treated`;
      return at((await planned({ ...bed("sides"), onHand })).made, "Alder")?.cost.si ?? Number.NaN;
    };
    const costs = [await cost(1), await cost(2), await cost(3)];
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
    expect(costs[1]).toBe(40);
  });

  it("buys a section that the main yard has none of at another", async () => {
    const { made } = await planned({
      beds: "bed,length,width,section\nA,8 ft,4 ft,2x12\nB,8 ft,4 ft,2x8",
      prices: `${one8}\nBirch,2x8 treated,8 ft,12\nBirch,2x12 treated,8 ft,25`,
    });
    const yards = (yard: string) =>
      at(made, yard)?.buy.map((line) => [line.yard, line.section.name, line.count]);
    expect(yards("Alder")).toEqual([
      ["Birch", "2x8", 3],
      ["Alder", "2x12", 3],
    ]);
    expect(yards("Birch")).toEqual([
      ["Birch", "2x8", 3],
      ["Birch", "2x12", 3],
    ]);
  });

  it("plans over all yards where no single one has enough", async () => {
    const { made } = await planned({
      beds: "bed,length,width\nA,8 ft,4 ft",
      prices:
        "yard,item,size,price,limit\nAlder,2x12 treated,8 ft,20,2\nBirch,2x12 treated,8 ft,21,2",
    });
    expect(made.byYard.map(({ yard, plan }) => [yard, boards(plan)])).toEqual([
      ["Alder", undefined],
      ["Birch", undefined],
      [null, 3],
    ]);
  });

  it("says why there is no plan: no price, a piece too long", async () => {
    const unpriced = await planned({ beds: "bed,length,width\nA,8 ft,4 ft" });
    expect(unpriced.made.byYard.at(-1)?.problems.map(({ code }) => code)).toContain("unpriced");
    const long = await planned({ beds: "bed,length,width\nA,9 ft,4 ft", prices: one8 });
    expect(long.made.byYard.at(-1)?.problems.map(({ code }) => code)).toContain("no-fit");
  });

  // A gardener with one bed too long still wants the boards of the others.
  it("plans the other beds where a piece is too long for every board, and names those left out", async () => {
    const beds = "bed,length,width\nA,8 ft,4 ft\nLong,18 ft,4 ft\nB,8 ft,4 ft\nLonger,20 ft,4 ft";
    const { made } = await planned({ beds, prices: one8 });
    const alone = await planned({
      beds: "bed,length,width\nA,8 ft,4 ft\nB,8 ft,4 ft",
      prices: one8,
    });
    const rest = made.byYard.at(-1);
    expect(rest?.yard).toBeNull();
    expect(boards(rest?.plan)).toBe(boards(at(alone.made, "Alder")));
    const sawn = rest?.plan?.cuts.flatMap(({ pieces }) => pieces.map(({ bed }) => bed));
    expect([...new Set(sawn)].sort()).toEqual(["A", "B"]);
    const named = rest?.problems.map(({ remedy }) => /for (\w+),/.exec(remedy)?.[1]);
    expect(named?.sort()).toEqual(["Long", "Longer"]);
    expect(made.byYard.slice(0, -1).map(({ plan }) => plan)).toEqual([null, null]);
  });

  it("plans the other beds where a section has no price", async () => {
    const beds = "bed,length,width,section\nA,8 ft,4 ft,2x12\nB,8 ft,4 ft,2x8\nC,6 ft,4 ft,2x8";
    const { made } = await planned({ beds, prices: one8 });
    expect(boards(made.byYard.at(-1)?.plan)).toBe(3);
    expect(made.byYard.at(-1)?.problems.map(({ code }) => code)).toEqual(["unpriced"]);
  });

  it("takes bare prices for the currency chosen, and refuses two", async () => {
    const { made } = await planned(bed("sides"), { currency: "CAD" });
    expect([made.currency, at(made, "Alder")?.cost.currency]).toEqual(["CAD", "CAD"]);
    const mixed = {
      ...bed("sides"),
      yards: "yard,trip_cost\nAlder,€4",
      prices: one8.replace(",20", ",$20"),
    };
    await expect(planned(mixed)).rejects.toThrow(ProblemError);
  });

  it("reads a length in feet from the plan as it was typed", async () => {
    const { made } = await planned(bed("sides"));
    expect(at(made, "Alder")?.cuts.map((cut) => Math.round(amount(cut.length, foot)))).toEqual([
      8, 8, 8,
    ]);
  });

  it.each([
    [{ spareBoards: -1 }, "too-small", "spareBoards"],
    [{ spareBoards: 1e9 }, "too-large", "spareBoards"],
    [{ spareBoards: 0.5 }, "unreadable", "spareBoards"],
  ])("refuses %o", async (choices, code, path) => {
    const failed = await planned(bed("sides"), choices).catch((error: unknown) => error);
    expect(failed).toBeInstanceOf(ProblemError);
    expect((failed as ProblemError).problems.map((each) => [each.code, ...each.path])).toEqual([
      [code, path],
    ]);
  });
});
