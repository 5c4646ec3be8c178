import {
  cubicFoot,
  foot,
  kilogram,
  kilogramPerCubicMetre,
  money,
  quantity,
  type Section,
  times,
} from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import { choice, fixed, label, mass, number } from "./leaves.ts";
import { oneBoard, onePlan, section } from "./lumber.ts";
import { made } from "./made.ts";
import { record } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const density = {
  low: times(500, kilogramPerCubicMetre),
  likely: times(600, kilogramPerCubicMetre),
  high: times(700, kilogramPerCubicMetre),
  basis: ["common practice"],
};
const shares = [{ bed: "A-1", share: 1 }];
const compost = { kind: "volume", item: "compost", use: "fill", volume: times(6, cubicFoot) };
const problem = {
  boards: oneBoard,
  needs: [{ ...compost, density, shares }],
  prices: [
    {
      ...{ kind: "goods", row: 1, yard: "North", item: "compost", form: "bag", price: money(5) },
      ...{ from: 1, step: 1, limit: 40, size: { kind: "volume", volume: times(2, cubicFoot) } },
    },
  ],
  yards: [
    {
      ...{ yard: "North", tripCost: money(6), tax: 0.1, taxOn: "goods", delivery: money(50) },
      ...{ deliveryFrom: money(99), distance: foot, payload: times(300, kilogram) },
    },
  ],
  currency: "USD",
  taxIncluded: false,
  carriesBulk: true,
  carPayload: times(200, kilogram),
  woodDensity: times(500, kilogramPerCubicMetre),
};
const fetched = { delivered: false, shares };
const bags = times(6 * 600, quantity(cubicFoot.si, kilogram.dim));
const plan = {
  boards: onePlan,
  receipts: [
    {
      yard: "North",
      lines: [
        {
          ...{ item: "2x12", use: "boards", size: times(8, foot), form: "board", ...fetched },
          ...{
            board: { section: (section.good as Section).name, timber: "" },
            count: 1,
            price: money(20),
          },
          ...{ total: money(20) },
        },
        {
          ...{ item: "compost", use: "fill", size: times(2, cubicFoot), form: "bag", ...fetched },
          ...{ count: 3, price: money(5), mass: bags, total: money(15) },
        },
      ],
      ...{ goods: money(35), delivery: money(0), tax: money(3.5), taxIncluded: false },
      ...{ trips: 1, tripCost: money(6), total: money(44.5) },
    },
  ],
  ways: [{ yard: "North", way: "fetched" }],
  notSold: [],
  total: money(44.5),
  proof: { kind: "within", words: "within", above: money(0), share: 0 },
  floors: [
    {
      yards: [{ yard: "North", way: "fetched" }],
      floor: onePlan.certificate.floor,
      dismissed: false,
      certificate: onePlan.certificate,
    },
  ],
};

const planning = {
  solve: fixed(await solver()),
  timber: label("treated"),
  seconds: number(10, { optional: true }),
  // Of the host that runs the plan: what it shows, whether it is to stop, what it keeps.
  ...{ progress: fixed(undefined), signal: fixed(undefined), pause: fixed(undefined) },
  ...{ remembered: fixed(undefined), improved: fixed(undefined) },
};
// With a car that carries the board whole.
const toPlan = { ...problem, boards: { ...oneBoard, loadLength: times(9, foot) } };
const planned = "a problem is put together from readings and what other functions made of them";

const words = choice("metric", { optional: true });

export const buyingCases: FolderCases = {
  compareBuying: {
    takes: {
      problem: made(toPlan),
      options: record({ ...planning, yard: fixed("North") }),
    },
    together: [
      {
        what: "a yard of nobody",
        with: { "options.yard": "Elm" },
        outcome: "unknown",
        at: ["yard"],
      },
    ],
    derived: planned,
  },
  firstFitBuying: {
    takes: {
      problem: made(toPlan),
      options: record({ timber: label("treated") }, { optional: true }),
    },
    derived: planned,
  },
  planBuying: { takes: { problem: made(toPlan), options: record(planning) }, derived: planned },
  buyingList: {
    takes: { plan: made(plan), options: record({ system: words }, { optional: true }) },
    derived: "a plan is made by planBuying",
  },
  loadOrder: {
    takes: {
      plan: made(plan),
      options: record(
        {
          yards: made(problem.yards),
          carPayload: mass("200 kg", { optional: true }),
          system: words,
        },
        { optional: true },
      ),
    },
    derived: "a plan is made by planBuying",
  },
  validateBuyingPlan: {
    takes: { problem: made(problem), plan: made(plan) },
    derived: "a plan is made by planBuying; what is wrong with it is said by the rule it breaks",
  },
};
