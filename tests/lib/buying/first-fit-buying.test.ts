import { describe, expect, it } from "vitest";
import { type BuyingProblem, firstFitBuying, money, type YardTerms } from "../../../lib/index.ts";
import { board, inches, piece, section } from "../lumber/make.ts";

// The rule of first fit, longest first, is `common practice`; the cases are worked by hand.

const yard = (name: string, over: Partial<YardTerms> = {}): YardTerms => ({
  yard: name,
  tax: 0,
  taxOn: "goods",
  ...over,
});

function problemOf(over: Partial<BuyingProblem["boards"]>, yards = [yard("Alder")]): BuyingProblem {
  return {
    boards: { pieces: [], stock: [], kerf: inches(0), shortfall: inches(0), ...over },
    ...{ needs: [], prices: [], yards, currency: "USD", taxIncluded: false, carriesBulk: false },
  };
}

const at = (name: string, lengthIn: number, price: number) =>
  board(lengthIn, 0, { yard: name, price: money(price, "USD") });

describe("firstFitBuying", () => {
  // 60 + 40 on the first board, 50 + 50 on the second, 40 + 20 on the third.
  it("lays the longest piece first, each on the first board with room", () => {
    const pieces = [piece(60, 1), piece(50, 2), piece(40, 2), piece(20, 1)];
    const found = firstFitBuying(problemOf({ pieces, stock: [at("Alder", 100, 10)] }));
    expect(found).toMatchObject({ yard: "Alder", boards: 3 });
    expect(found?.total.si).toBe(30);
  });

  // 45 + 25 + 25 and 35 + 35 + 30 fill two boards; the rule lays 45 + 35, 35 + 30 + 25, 25 on three.
  it("is dearer than the best plan where the rule wastes a board", () => {
    const pieces = [piece(45, 1), piece(35, 2), piece(30, 1), piece(25, 2)];
    const found = firstFitBuying(problemOf({ pieces, stock: [at("Alder", 100, 10)] }));
    expect(found?.boards).toBe(3);
  });

  it("uses kept boards before new ones, and buys one length only", () => {
    const stock = [at("Alder", 96, 10), at("Alder", 192, 18), board(50, 0, { yard: null })];
    const pieces = [piece(96, 2), piece(48, 1)];
    const found = firstFitBuying(problemOf({ pieces, stock }));
    expect(found).toMatchObject({ boards: 1 });
    expect(found?.total.si).toBe(18);
  });

  it("counts tax and trip at the better single yard", () => {
    const yards = [
      yard("Alder", { tax: 0.1, tripCost: money(5, "USD") }),
      yard("Birch", { tripCost: money(7, "USD") }),
    ];
    const stock = [at("Alder", 96, 20), at("Birch", 96, 21)];
    const found = firstFitBuying(problemOf({ pieces: [piece(90, 2)], stock }, yards));
    // Alder: 40 + 4 tax + 5; Birch: 42 + 7.
    expect(found?.total.si).toBe(49);
  });

  it("says how many things cannot be had so", () => {
    const stock = [at("Alder", 96, 20)];
    const screws = { kind: "count", item: "3 in screws", use: "", count: 5, shares: [] } as const;
    const problem = { ...problemOf({ pieces: [piece(90, 1)], stock }), needs: [screws] };
    expect(firstFitBuying(problem)).toMatchObject({ boards: 1, notSold: 1 });
  });

  it("gives nothing where no single yard has all the boards", () => {
    const pieces = [piece(90, 1), piece(90, 1, { section: section("2x6") })];
    const stock = [at("Alder", 96, 20), { ...at("Birch", 96, 9), section: section("2x6") }];
    const found = firstFitBuying(problemOf({ pieces, stock }, [yard("Alder"), yard("Birch")]));
    expect(found).toBeNull();
  });
});
