import { describe, expect, it } from "vitest";
import {
  type BuyingComparison,
  type BuyingProblem,
  type CompareBuyingOptions,
  compareBuying,
  cubicFoot,
  firstFitBuying,
  foot,
  inch,
  type Money,
  money,
  type Need,
  type Piece,
  ProblemError,
  readCsv,
  readPrices,
  readSection,
  readYards,
  type StockBoard,
  times,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";

const reading = readSection("2x12", { path: [] });
if (!reading.ok) throw new Error("no section");
const section = reading.value;

const cents = (sum: Money | null): number | null => sum && Math.round(sum.si * 100);
const board = (yard: string | null, feet: number, price: number, limit?: number): StockBoard => ({
  yard,
  section,
  length: times(feet, foot),
  price: money(price, "USD"),
  ...(limit === undefined ? {} : { limit }),
});
const piece = (part: "side" | "end", inches: number): Piece => ({
  name: `A ${part}`,
  bed: "A",
  part,
  section,
  length: times(inches, inch),
  count: 2,
});
const screws: Need = { kind: "count", item: "3 in screws", use: "", count: 100, shares: [] };
const aYard = "yard,trip_cost,tax\nAlder,6,6 %\nBirch,11.50,6 %";

/** A 4 ft x 8 ft bed of two sides of 96 in and two ends of 45 in, and what is said of it besides. */
function problem(
  stock: readonly StockBoard[],
  over: Partial<BuyingProblem> & { readonly priceList?: string } = {},
): BuyingProblem {
  const { priceList = "", ...rest } = over;
  const dollars = (sum: Money | undefined) => sum && money(sum.si, "USD");
  return {
    boards: {
      pieces: [piece("side", 96), piece("end", 45)],
      stock,
      kerf: times(1 / 8, inch),
      shortfall: times(1 / 8, inch),
    },
    needs: [],
    prices: readPrices(readCsv(`yard,item,size,price\n${priceList}`, "prices")).rows.map(
      (line) => ({
        ...line,
        price: money(line.price.si, "USD"),
      }),
    ),
    yards: readYards(readCsv(aYard, "yards")).rows.map((terms) => ({
      ...terms,
      tripCost: dollars(terms.tripCost),
    })),
    currency: "USD",
    taxIncluded: false,
    carriesBulk: false,
    ...rest,
  };
}

async function compared(of: BuyingProblem, options: Partial<CompareBuyingOptions> = {}) {
  return compareBuying(of, { solve: await solver(), ...options });
}

const shown = (rows: readonly BuyingComparison[]) =>
  rows.map(({ choice, total, more, boards }) => [choice, cents(total), cents(more), boards]);
const rowOf = (rows: readonly BuyingComparison[], choice: string) =>
  rows.find((row) => row.choice === choice);

describe("compareBuying(problem, options)", () => {
  // By hand: two kept boards of 4 ft give the ends; two boards for the sides. Alder: 42.80, tax 2.57
  // (2.568), trip 6: 51.37. Birch: 41.50, tax 2.49, trip 11.50: 55.49. Without the kept boards three
  // at Alder: 64.20, tax 3.85 (3.852), trip 6: 74.05. One more at Alder: as those three.
  const usual = problem([board("Alder", 8, 21.4), board("Birch", 8, 20.75), board(null, 4, 0, 2)]);

  it("gives what each other choice costs, by hand", async () => {
    const rows = await compared(usual);
    const byHand = "first fit by hand";
    expect(shown(rows.filter(({ choice }) => choice !== byHand))).toEqual([
      ["this plan", 5137, 0, 2],
      ["with spare boards", 7405, 2268, 3],
      ["all at Alder", 5137, 0, 2],
      ["all at Birch", 5549, 412, 2],
      ["no boards kept", 7405, 2268, 3],
    ]);
    expect(rows.map(({ proof }) => proof?.words)).toEqual(
      rows.map(({ choice }) => (choice === byHand ? undefined : "No cheaper plan exists")),
    );
  });

  it("gives what first fit costs, which is never less", async () => {
    const row = rowOf(await compared(usual), "first fit by hand");
    const found = firstFitBuying(usual);
    expect(row).toMatchObject({ total: found?.total, boards: found?.boards, proof: null });
    expect(cents(row?.more ?? null)).toBeGreaterThanOrEqual(0);
    expect(row?.note).toContain(`all at ${found?.yard}`);
  });

  it("sets the cheapest beside a main yard that was chosen", async () => {
    const rows = await compared(usual, { yard: "Birch" });
    expect(shown(rows.slice(0, 1))).toEqual([["this plan", 5549, 0, 2]]);
    expect(rowOf(rows, "cheapest yards")?.more?.si).toBeCloseTo(-4.12, 9);
  });

  it("says what comes from other yards", async () => {
    const stock = [board("Alder", 8, 21.4), board("Birch", 8, 20.75)];
    const rows = await compared(
      problem(stock, { needs: [screws], priceList: "Birch,3 in screws,100,9.20" }),
    );
    expect(rowOf(rows, "all at Alder")?.note).toBe("from Birch: 3 in screws");
    expect(rowOf(rows, "all at Birch")?.note).toBe("");
  });

  it("has no total where a yard has too few boards, and says why", async () => {
    const rows = await compared(problem([board("Alder", 8, 21.4), board("Birch", 8, 20.75, 1)]));
    expect(rowOf(rows, "all at Birch")).toMatchObject({ total: null, more: null, boards: null });
    expect(rowOf(rows, "all at Birch")?.note).toMatch(/2x12/);
  });

  it("has no total where a choice leaves more unbought", async () => {
    const compost = { item: "compost", use: "", shares: [] };
    const rows = await compared(
      problem([board("Alder", 8, 21.4)], {
        needs: [{ kind: "volume", volume: times(27, cubicFoot), ...compost }],
        priceList: "Alder,compost,1 cu ft,5\nBirch,compost,1 cu yd,30",
        yards: [
          { yard: "Alder", tax: 0, taxOn: "goods" },
          {
            yard: "Birch",
            tax: 0,
            taxOn: "goods",
            delivery: money(9, "USD"),
            deliveryFrom: money(500, "USD"),
          },
        ],
      }),
    );
    const at = rowOf(rows, "all at Birch");
    expect(at).toMatchObject({ total: null });
    expect(at?.note).toMatch(/not to be had: compost$/);
  });

  it("leaves out what makes no difference: one yard, nothing kept, no boards", async () => {
    const rows = await compared(problem([board("Alder", 8, 21.4)]));
    expect(rows.map(({ choice }) => choice)).toEqual([
      "this plan",
      "first fit by hand",
      "with spare boards",
    ]);
  });

  it("gives its rows as they come", async () => {
    const counts: number[] = [];
    const rows = await compared(usual, { improved: (some) => counts.push(some.length) });
    expect(counts).toEqual(rows.map((_, at) => at + 1));
  });

  it("throws where there is no plan itself", async () => {
    await expect(compared(problem([board("Alder", 7, 20)]))).rejects.toThrow(ProblemError);
  });

  it("stops where it is asked to", async () => {
    const failed = await compared(usual, { signal: { aborted: true } }).catch((error) => error);
    expect(failed.name).toBe("AbortError");
  });
});
