import {
  type BedSpec,
  cubicFoot,
  foot,
  gardenBill,
  gardenPieces,
  neverBurn,
  over,
  planGardenBuying,
  money as sumOfMoney,
  times,
  toBed,
} from "../../../lib/index.ts";
import { american, choices, feet, material, screws, tables } from "../garden/garden.ts";
import { solver } from "../lumber/solver.ts";
import {
  choice,
  count,
  date,
  density,
  fixed,
  length,
  mass,
  name,
  number,
  quantityOf,
  type Sizes,
  volume,
  yesNo,
} from "./leaves.ts";
import { section } from "./lumber.ts";
import { but, leaf, list, nothing, type Outcome, type Part, record, variant } from "./shape.ts";
import {
  eitherDepth,
  lookedAhead,
  rottingMaterial,
  soilMaterial as soilRow,
  when,
} from "./soil.ts";
import { tableOf } from "./table.ts";
import type { FolderCases } from "./walk.ts";

const optional: Sizes = { optional: true };
const perhaps: Sizes = { zero: "fine", optional: true };
const read = tables(american);
const bed = toBed({ bed: "A", length: feet(8), width: feet(4), timber: "treated" });
const { pieces } = gardenPieces([bed], { prices: read.prices.rows });
const need = { pieces, needs: [], onHand: read.onHand, yards: read.yards, prices: read.prices };
const solve = await solver();
const buying = await planGardenBuying(need, { solve });
const bill = gardenBill(buying, [bed]);

/** Records that another function made, which has cases for each of their fields. */
const made = (records: readonly unknown[]): Part => list(records.map(fixed), { empty: "fine" });
const reading = (rows: { readonly rows: readonly unknown[] }, ...empty: Outcome[]): Part =>
  record({
    ...asFixed({ ...rows }),
    rows: but(made(rows.rows), variant("an empty list", [], "fine", ...empty)),
  });
const asFixed = (fields: Readonly<Record<string, unknown>>): Readonly<Record<string, Part>> =>
  Object.fromEntries(Object.entries(fields).map(([key, value]) => [key, fixed(value)]));
const some = (part: Part): Part => ({ ...part, variants: part.variants.map(leftOut) });
function leftOut(one: Part["variants"][number]): Part["variants"][number] {
  return one.what === "nothing" ? { ...one, outcomes: ["fine"] } : one;
}
const text = (good: string) =>
  leaf(good, [
    ...nothing(optional),
    variant("empty text", "", "missing"),
    variant("a number", 7, "unreadable"),
    variant("a record", {}, "unreadable"),
  ]);
const currency = leaf("USD", [
  ...nothing(optional),
  variant("no code", "dollars", "unknown"),
  variant("a number", 7, "unknown"),
]);
const none = variant("none", "none", "fine");

const frame = {
  section: some(section),
  courses: count(2, optional),
  timber: text("treated"),
  lap: choice("sides", optional),
  cap: but(some(section), none),
  capReach: length("1 in", perhaps),
  capJoint: choice("mitred", optional),
  stakes: count(1, perhaps),
  stakeSection: some(section),
  stakeDepth: length("18 in", perhaps),
  liner: yesNo(true, optional),
  seasoning: choice("dry", optional),
};
const cutting = {
  kerf: length("1/8 in", perhaps),
  shortfall: length("1/8 in", perhaps),
  spareBoards: count(1, perhaps),
  squaring: length("1 in", perhaps),
  splice: yesNo(true, optional),
  offcutsFrom: length("2 ft", { zero: "fine" }),
  offcutWorth: quantityOf(over(sumOfMoney(0.5, "USD"), foot), perhaps),
  food: yesNo(true, optional),
  timber: text("treated"),
  currency,
};
const money = {
  taxIncluded: yesNo(false, optional),
  currency,
  yard: text("cheapest"),
  carriesBulk: yesNo(false, optional),
  carPayload: mass("900 lb", optional),
  loadLength: length("9 ft", optional),
  cutAtYard: yesNo(true, optional),
  without: list([name("Birch")], { empty: "fine", optional: true }),
  woodDensity: density("600 kg/m3", optional),
};
const beds = made([bed]);
const prices = some(made(read.prices.rows));
const fixedRow = (row: string) => fixed(material(row));
const spec: Readonly<Record<keyof BedSpec, Part>> = {
  bed: name("A"),
  length: length("8 ft"),
  width: length("4 ft"),
  courses: count(2, optional),
  section: some(section),
  timber: leaf("treated", [
    variant("nothing", undefined, "fine"),
    variant("a number", 7, "unreadable"),
  ]),
  lap: choice("sides", optional),
  cap: but(some(section), none),
  stakes: count(1, perhaps),
  liner: yesNo(true, optional),
  soilDepth: length("9 in", perhaps),
  depthNow: length("6 in", perhaps),
  built: date({ year: 2014 }, optional),
  east: length("3 ft", { ...perhaps, negative: "fine" }),
  north: length("3 ft", { ...perhaps, negative: "fine" }),
  turned: yesNo(true, optional),
  row: fixed(1),
};
const solverOptions = { solve: fixed(solve) };

// Without yards every price is at a yard that nobody knows: a problem of the prices' rows.
const someYards = record({
  ...asFixed({ ...read.yards }),
  rows: withoutEmpty(made(read.yards.rows)),
});
function withoutEmpty(part: Part): Part {
  return { ...part, variants: part.variants.filter(({ what }) => what !== "an empty list") };
}

const compost = { kind: "volume", item: "compost", use: "fill", volume: times(9, cubicFoot) };
const buyingNeeds = (...withoutPrices: Outcome[]) => ({
  need: record({
    pieces: made(pieces),
    needs: list([fixed({ ...compost, shares: [] })], { empty: "fine" }),
    onHand: reading(read.onHand),
    yards: someYards,
    prices: reading(read.prices, ...withoutPrices),
  }),
  options: record({ ...cutting, ...money, ...solverOptions }),
});
const yardsOfNobody = [
  {
    what: "a main yard that is none of the garden's",
    with: { "options.yard": "Elm" },
    outcome: "unknown",
    at: ["yard"],
  },
] as const;

export const gardenCases: FolderCases = {
  billRows: { takes: { bill: billPart() } },
  boardsToBuy: { takes: { bill: billPart() } },
  compareGardenBuying: { takes: buyingNeeds(), together: yardsOfNobody },
  cutRows: {
    takes: {
      plan: but(record({ cuts: made(bill.boards?.cuts ?? []) }), variant("null", null, "fine")),
      options: record({ system: choice("metric", optional) }, optional),
    },
  },
  cuttingChoices: { takes: { chosen: record(cutting, optional) }, together: [slip("chosen")] },
  frameChoices: { takes: { chosen: record(frame, optional) }, together: [slip("chosen")] },
  gardenBeds: {
    takes: { reading: reading(read.beds), chosen: record(frame, optional), prices },
  },
  gardenBill: {
    takes: {
      buying: record({
        ...asFixed({ ...buying }),
        receipts: made(buying.receipts),
        problems: made(buying.problems),
      }),
      beds,
    },
  },
  gardenCautions: {
    takes: { results: list([record({ cautions: made([neverBurn()]) })], { empty: "fine" }) },
  },
  gardenChoices: {
    takes: {
      spec: record({
        fill: made([{ material: material("topsoil"), share: 1 }]),
        topDressing: record({ material: fixedRow("compost") }),
        mulch: record({ material: fixedRow("pine bark") }),
        fastening: record({ screws: fixed(screws) }),
        frame: some(record(frame)),
        cutting: some(record(cutting)),
        money: some(record(money)),
      }),
    },
  },
  gardenCurrency: {
    takes: {
      tables: record({ prices: reading(read.prices), yards: reading(read.yards) }),
      fallback: currency,
    },
  },
  gardenFasteners: {
    takes: {
      beds,
      pieces: made(pieces),
      choices: record({
        screws: list([record({ length: length("1 in"), diameter: length("0.164 in") })], {
          empty: "missing",
        }),
        prices,
        plateThickness: length("1/8 in", optional),
        platesPerCorner: count(2, optional),
        holes: count(8, optional),
        seatSpacing: length("16 in", optional),
        plateItem: text("corner plate"),
        preservativeItem: text("preservative"),
      }),
    },
  },
  gardenFill: {
    takes: {
      beds,
      parts: list([record({ material: soilRow, share: fixed(3), item: text("topsoil") })], {
        empty: "missing",
      }),
    },
  },
  gardenSoilYears: {
    takes: {
      beds,
      choices: record({
        ...lookedAhead,
        fill: list([record({ material: rottingMaterial, share: number(2) })], { empty: "missing" }),
        there: rottingMaterial,
        bottom: record(
          { material: rottingMaterial, depth: length("3 in", { zero: "fine" }) },
          { optional: true },
        ),
        springs: list(
          [
            record({
              material: rottingMaterial,
              depth: eitherDepth,
              holdsWanted: yesNo(false, { optional: true }),
              ...when,
            }),
          ],
          { empty: "fine", optional: true },
        ),
      }),
    },
  },
  gardenLiner: {
    takes: {
      beds,
      choices: record(
        {
          roll: fixed({ width: feet(6), length: feet(100) }),
          stapleSpacing: length("12 in", optional),
          floor: choice("mesh", optional),
          item: text("liner"),
          stapleItem: text("staples"),
          floorItem: text("wire mesh"),
          prices,
          overTop: length("1 in", perhaps),
          underEdge: length("1 in", perhaps),
          lap: length("12 in", optional),
          cutAlong: yesNo(true, optional),
        },
        optional,
      ),
    },
  },
  gardenMass: {
    takes: {
      input: record({
        boards: but(record({ cuts: made(bill.boards?.cuts ?? []) }), variant("null", null, "fine")),
        woodDensity: density("600 kg/m3", optional),
        volumes: list(
          [
            record({
              what: name("fill"),
              volume: volume("2 cu yd", { zero: "fine" }),
              material: soilRow,
            }),
          ],
          { empty: "fine" },
        ),
      }),
    },
  },
  gardenMulch: {
    takes: {
      beds,
      choices: record({ material: soilRow, depth: length("1 in", perhaps), item: text("bark") }),
    },
  },
  gardenPieces: {
    takes: {
      beds,
      options: record({ prices, timber: text("treated"), hand: some(made([])) }, optional),
    },
  },
  gardenTopDressing: {
    takes: {
      beds,
      choices: record({
        material: soilRow,
        depth: length("1 in", perhaps),
        heap: volume("4 cu ft", perhaps),
        item: text("compost"),
      }),
    },
  },
  gardenTotal: { takes: { bill: billPart() } },
  moneyChoices: { takes: { chosen: record(money, optional) }, together: [slip("chosen")] },
  oldBoards: {
    takes: {
      beds,
      options: record(
        { onHand: some(reading(read.onHand)), woodDensity: density("600 kg/m3", optional) },
        optional,
      ),
    },
  },
  planGarden: {
    takes: {
      tables: record({
        beds: reading(read.beds),
        onHand: reading(read.onHand),
        yards: someYards,
        prices: reading(read.prices, "unpriced"),
        pieces: some(reading({ ...read.onHand, rows: [] })),
      }),
      spec: fixed(choices()),
      options: record(solverOptions),
    },
  },
  planGardenBuying: { takes: buyingNeeds("unpriced"), together: yardsOfNobody },
  readBeds: { takes: { table: tableOf(american.beds, "beds") } },
  readOnHand: { takes: { table: tableOf(american.onHand, "onHand") } },
  readPieces: { takes: { table: tableOf("piece,section,length\nshelf,2x10,30 in", "pieces") } },
  readPrices: { takes: { table: tableOf(american.prices, "prices") } },
  readWeather: {
    takes: {
      table: tableOf(
        `month,temperature,rain,evaporation\n${"Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec"
          .split(" ")
          .map((month) => `${month},5 °C,3 in,1 in`)
          .join("\n")}`,
        "weather",
      ),
    },
  },
  readYards: { takes: { table: tableOf(american.yards, "yards") } },
  toBed: { takes: { spec: record(spec), chosen: record(frame, optional) } },
};

function billPart(): Part {
  return record({
    ...asFixed({ ...bill }),
    receipts: made(bill.receipts),
    notSold: made(bill.notSold),
    boardProblems: made(bill.boardProblems),
  });
}

function slip(argument: string) {
  return {
    what: "a misspelt choice",
    with: { [`${argument}.kref`]: 1 },
    outcome: "unknown" as const,
    at: ["kref"],
  };
}
