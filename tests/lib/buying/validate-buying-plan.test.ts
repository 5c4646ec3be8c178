import { describe, expect, it } from "vitest";
import {
  type BuyingPlan,
  type BuyingProblem,
  cubicFoot,
  kilogram,
  kilogramPerCubicMetre,
  type Money,
  money,
  planBuying,
  times,
  type VolumeNeed,
  validateBuyingPlan,
  type YardReceipt,
  type YardsFloor,
} from "../../../lib/index.ts";
import { board, inches, piece } from "../lumber/make.ts";
import { solver } from "../lumber/solver.ts";

// A sound plan, and what is found when one thing of it is changed. North is gone to for boards in two
// trips; South brings loose compost for a fee, taxed.
const dollars = (amount: number): Money => money(amount, "USD");
const density = {
  low: times(500, kilogramPerCubicMetre),
  likely: times(600, kilogramPerCubicMetre),
  high: times(700, kilogramPerCubicMetre),
  basis: ["common practice"],
};
const line = { row: 1, limit: undefined, from: 1, step: 1, kind: "goods" } as const;
const compost: VolumeNeed = {
  kind: "volume",
  item: "compost",
  use: "fill",
  volume: times(40, cubicFoot),
  density,
  shares: [{ bed: "A", share: 1 }],
};
const problem: BuyingProblem = {
  boards: {
    pieces: [piece(90, 6)],
    stock: [board(96, 20, { price: dollars(20), step: 4 })],
    ...{ kerf: inches(1 / 8), shortfall: inches(0) },
  },
  needs: [compost],
  prices: [
    {
      ...{ ...line, item: "compost", yard: "South", form: "bulk", price: dollars(30) },
      ...{ from: 0.5, step: 0.5, size: { kind: "volume", volume: times(27, cubicFoot) } },
    },
  ],
  yards: [
    { yard: "North", tax: 0.0725, taxOn: "goods", tripCost: dollars(7) },
    {
      ...{ yard: "South", tax: 0.05, taxOn: "goods and delivery", tripCost: dollars(9) },
      ...{ delivery: dollars(25), deliveryFrom: dollars(40) },
    },
  ],
  ...{ currency: "USD", taxIncluded: false, carriesBulk: false },
  carPayload: times(70, kilogram),
  woodDensity: times(550, kilogramPerCubicMetre),
};
const plan = await planBuying(problem, { solve: await solver() });

const places = (changed: Partial<BuyingPlan>, of: Partial<BuyingProblem> = {}): string[] =>
  validateBuyingPlan({ ...problem, ...of }, { ...plan, ...changed }).map((each) =>
    each.path.join("."),
  );

const receipt = (yard: string, change: (own: YardReceipt) => Partial<YardReceipt>) => ({
  receipts: plan.receipts.map((own) => (own.yard === yard ? { ...own, ...change(own) } : own)),
});
const lines = (yard: string, over: Partial<YardReceipt["lines"][number]>) =>
  receipt(yard, (own) => ({ lines: own.lines.map((each) => ({ ...each, ...over })) }));
const floors = (over: Partial<YardsFloor>) => ({
  floors: plan.floors.map((each) => (each.certificate === null ? each : { ...each, ...over })),
});

describe("validateBuyingPlan", () => {
  it("finds nothing wrong with a sound plan", () => {
    expect(places({})).toEqual([]);
    // Eight boards of 14.6 kg make two trips of 70 kg; 8 x 20 with 7.25 % and 2 x 7 are 185.60.
    // 1.5 yd3 cost 45, brought for 25, with 5 % on both: 73.50.
    expect(plan.receipts.map(({ total }) => total.si)).toEqual([185.6, 73.5]);
  });

  it.each<[string, Partial<BuyingPlan>, string]>([
    ["a total that is no sum", { total: dollars(200) }, "total"],
    ["a receipt left out", { receipts: plan.receipts.slice(1) }, "ways"],
    ["a way left out", { ways: plan.ways.slice(1) }, "ways"],
    ["a yard twice", { receipts: [...plan.receipts, ...plan.receipts] }, "receipts"],
    [
      "a delivery by a yard that has none",
      { ways: plan.ways.map((each) => ({ ...each, way: "delivered" })) },
      "ways.1",
    ],
    [
      "loose goods in the car",
      { ways: plan.ways.map((each) => ({ ...each, way: "fetched" })) },
      "receipts.2.lines.1.delivered",
    ],
    ["a lower tax", receipt("North", () => ({ tax: dollars(1) })), "receipts.1.tax"],
    ["tax off the delivery", receipt("South", () => ({ tax: dollars(2.25) })), "receipts.2.tax"],
    ["no delivery fee", receipt("South", () => ({ delivery: dollars(0) })), "receipts.2.delivery"],
    ["one trip too few", receipt("North", () => ({ trips: 1 })), "receipts.1.trips"],
    ["a trip for nothing", receipt("North", () => ({ tripCost: dollars(0) })), "tripCost"],
    [
      "goods that don't add up",
      receipt("North", () => ({ goods: dollars(1) })),
      "receipts.1.goods",
    ],
    [
      "a receipt's wrong total",
      receipt("South", () => ({ total: dollars(1) })),
      "receipts.2.total",
    ],
    ["another tax base", receipt("South", () => ({ taxIncluded: true })), "taxIncluded"],
    ["a price nobody asks", lines("South", { price: dollars(3) }), "receipts.2.lines.1"],
    ["less than is needed", lines("South", { count: 1 }), "needs.compost"],
    ["a part of a step", lines("South", { count: 1.7 }), "receipts.2.lines.1"],
    ["what nobody needs", lines("South", { item: "pegs" }), "receipts.2.lines.1"],
    ["fewer boards than are cut", lines("North", { count: 5 }), "receipts.boards"],
    ["boards that weigh nothing", lines("North", { mass: times(1, kilogram) }), "lines.1.mass"],
    ["nothing bought", receipt("South", () => ({ lines: [] })), "receipts.2"],
    ["something unsold that is bought", { notSold: [{ need: compost, why: "no price" }] }, "needs"],
    ["a floor that is none", floors({ floor: dollars(1) }), "floor"],
    ["a floor without its reason", floors({ certificate: null }), "floors"],
    [
      "a floor dismissed though it is low",
      floors({ dismissed: true, floor: dollars(1) }),
      "floors",
    ],
    [
      "a share that is another sum",
      { proof: { kind: "within", words: "within", above: dollars(1), share: 0.5 } },
      "proof.share",
    ],
    ["boards that break a rule", { boards: { ...plan.boards, cost: dollars(1) } }, "boards.cost"],
  ])("finds %s", (_, changed, place) => {
    expect(places(changed).some((path) => path.includes(place))).toBe(true);
  });

  it.each<[string, Partial<BuyingProblem>, string]>([
    ["a car that carries less", { carPayload: times(40, kilogram) }, "trips"],
    ["heavier wood", { woodDensity: times(900, kilogramPerCubicMetre) }, "mass"],
    [
      "a higher least order",
      { yards: problem.yards.map((each) => ({ ...each, deliveryFrom: dollars(100) })) },
      "receipts.2.goods",
    ],
    ["a need more", { needs: [compost, { ...compost, item: "bark" }] }, "needs.bark"],
    [
      "bundles of three",
      { boards: { ...problem.boards, stock: [board(96, 20, { step: 3 })] } },
      "buy",
    ],
  ])("finds a plan made for other terms: %s", (_, of, place) => {
    expect(places({}, of).some((path) => path.includes(place))).toBe(true);
  });

  it("finds a certificate that does not hold", () => {
    const cheaper = floors({}).floors.map((each) => {
      if (each.certificate === null) return each;
      const { boards, ...others } = each.certificate;
      const half = boards.map((own) => ({ ...own, price: dollars(own.price.si / 2) }));
      return { ...each, certificate: { ...others, boards: half } };
    });
    expect(places({ floors: cheaper }).some((path) => path.includes("price"))).toBe(true);
  });
});
