import { foot, inch, money, over, type Section, type Solve, times } from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";
import {
  choice,
  count,
  fixed,
  label,
  length,
  name,
  number,
  price,
  quantityOf,
  type Sizes,
  typed,
  yesNo,
} from "./leaves.ts";
import { made } from "./made.ts";
import { but, leaf, list, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const solve: Solve = async (program, limits) => (await solver())(program, limits);
const optional: Sizes = { optional: true };
const perhaps: Sizes = { zero: "fine", optional: true };

const faces = (thickness: string, width: string) => ({
  thickness: length(thickness),
  width: length(width),
});
/** A section as `readSection` gives it. */
export const section = record({
  name: name("2x12"),
  ...faces("1 1/2 in", "11 1/4 in"),
  nominal: record(faces("2 in", "12 in"), { optional: true }),
});
const thin: Section = {
  name: "1x2",
  thickness: times(0.75, inch),
  width: times(1.5, inch),
  nominal: null,
};

const sectionText = (good: string, withTimber: "fine" | "unreadable") =>
  typed(good, {
    "2 by 12": "unreadable",
    "2x": "unreadable",
    "0x12": "unknown",
    "-2x12": "unreadable",
    "2x999999": "unknown",
    "2 in": "unreadable",
    "2 lb x 12 lb": "unreadable",
    "17x18": "unknown",
    NaNxNaN: "unreadable",
    "2x12 treated": withTimber,
  });
const readOptions = record({
  path: fixed(["text"]),
  seasoning: choice("green", { optional: true }),
});

const frame = {
  name: name("A-1"),
  length: length("8 ft"),
  width: length("4 ft"),
  courses: count(2),
  section,
  timber: label("cedar"),
  lap: choice("sides"),
  cap: but(section, variant("null", null, "fine")),
  capReach: length("1 in", perhaps),
  capJoint: choice("butted", { optional: true }),
  stakes: count(1, { zero: "fine" }),
  stakeSection: section,
  stakeLength: length("2 ft"),
};

const species = record({ species: label("southern pine"), specificGravity: number(0.47) });
const moisture = (sizes: Sizes = {}) => number(0.19, { zero: "fine", ...sizes });
const oneLength = length("8 ft");
const boards = (sizes: Sizes = {}) => count(3, { zero: "fine", ...sizes });

const piece = (bed: string, size: string) =>
  record({
    name: name(`${bed} side`),
    bed: label(bed),
    part: label("side"),
    section,
    timber: label("treated"),
    length: length(size, { huge: "too-large" }),
    count: count(2, { zero: "fine" }),
    mitred: yesNo(false, { optional: true }),
    stakesAt: list([length("2 ft", { zero: "fine" })], { empty: "fine", optional: true }),
  });
const stock = (yard: string | null, size: string, cost: string) =>
  record({
    yard: yard === null ? but(label("North"), variant("null", null, "fine")) : label(yard),
    section,
    timber: label("treated"),
    length: length(size, { huge: "too-large" }),
    price: price(cost, { zero: "fine" }),
    limit: count(9, perhaps),
    from: count(1, optional),
    step: count(1, optional),
  });
const problem = record({
  pieces: list([piece("A-1", "7 ft"), piece("A-2", "3 ft")], { empty: "fine" }),
  stock: list([stock("North", "8 ft", "23.50"), stock("North", "16 ft", "45")], {
    empty: "unpriced",
  }),
  kerf: length("1/8 in", { zero: "fine" }),
  shortfall: length("1/8 in", { zero: "fine" }),
  squaring: length("1/2 in", perhaps),
  splice: yesNo(false, { optional: true }),
  loadLength: length("18 ft", optional),
  cutAtYard: yesNo(false, { optional: true }),
});
// Worth more than any board costs, offcuts are refused at the price they contradict.
const perFoot = quantityOf(over(money(0.5), foot), { zero: "fine", huge: "contradiction" });
const withOffcuts = record({
  pieces: fixed([]),
  stock: fixed([{ yard: "North", section: section.good, length: foot, price: money(2) }]),
  kerf: fixed(times(0, inch)),
  shortfall: fixed(times(0, inch)),
  offcuts: record({ from: length("2 ft", { zero: "fine" }), worth: perFoot }, { optional: true }),
});
const together = [
  {
    what: "a piece longer than every board",
    with: { "problem.pieces.1.length": times(20, foot) },
    outcome: "no-fit",
    at: [],
  },
  {
    what: "prices in two currencies",
    with: { "problem.stock.1.price": money(20, "USD"), "problem.stock.2.price": money(40, "EUR") },
    outcome: "mixed-currency",
    at: ["stock", 2, "price"],
  },
  {
    what: "a section that nobody sells",
    with: { "problem.pieces.1.section": thin },
    outcome: "unpriced",
    at: [],
  },
] as const;
const planning = {
  solve: leaf(solve, [
    variant("nothing", undefined, "missing"),
    variant("text", "highs", "unreadable"),
    variant("a record", {}, "unreadable"),
  ]),
  timber: label("treated"),
  seconds: number(10, optional),
  // Of the host that runs the plan: what it shows, whether it is to stop, what it keeps.
  progress: fixed(undefined),
  signal: fixed(undefined),
  remembered: fixed(undefined),
  pause: fixed(undefined),
};

// The height of a frame is of the width alone.
const unused = fixed(undefined);
const onlyWidth = record({
  ...{ name: unused, thickness: unused, nominal: unused },
  width: length("11 1/4 in"),
});
const outside = { length: length("8 ft"), width: length("4 ft") };

const none = times(0, inch);
const certificate = {
  pieces: [
    { section: "2x12", timber: "treated", takes: times(4, foot), count: 3, value: money(10) },
  ],
  boards: [
    {
      ...{ yard: "North", section: "2x12", timber: "treated", length: times(8, foot) },
      ...{ room: times(8, foot), partRoom: times(5, foot), price: money(20), worth: money(20) },
      ...{ limit: 4, rebate: money(0) },
    },
  ],
  others: [{ what: "one trip", sum: money(6) }],
  kerf: none,
  offcuts: { from: foot, worth: over(money(1), foot) },
  floor: money(20),
};

export const onePlan = {
  cuts: [
    {
      board: "B1",
      source: "North",
      yard: "North",
      section: section.good,
      timber: "",
      length: times(8, foot),
      pieces: ["A-1 side, part 1 of 2", "A-1 side, part 2 of 2"].map((part) => {
        return { name: part, bed: "A-1", part: "side", length: times(4, foot), mitred: false };
      }),
      offcut: none,
      squared: none,
      atYard: { first: times(4, foot), pieces: 1, rest: none },
      cutCount: 1,
      layout: 1,
    },
  ],
  buy: [
    {
      yard: "North",
      section: section.good,
      timber: "",
      length: times(8, foot),
      count: 1,
      unused: 0,
      price: money(20),
      sum: money(20),
    },
  ],
  cost: money(20),
  proof: { kind: "optimal" },
  boughtCount: 1,
  keptCount: 0,
  boughtLength: times(8, foot),
  keptLength: none,
  piecesLength: times(8, foot),
  cutCount: 1,
  yield: 1,
  waste: 0,
  shortened: [
    {
      ...{ name: "A-1 side, part 1 of 2", bed: "A-1", count: 0 },
      ...{ asked: times(4, foot), cut: times(4, foot), short: none },
    },
  ],
  spliced: [
    {
      ...{ name: "A-1 side", bed: "A-1", count: 1, asked: times(8, foot), onStakes: true },
      parts: [times(4, foot), times(4, foot)],
    },
  ],
  offcutWorth: money(0),
  certificate,
  remarks: [],
  cautions: [],
};
export const oneBoard = {
  pieces: [
    {
      name: "A-1 side",
      bed: "A-1",
      part: "side",
      section: section.good,
      length: times(8, foot),
      count: 1,
      stakesAt: [times(4, foot)],
    },
  ],
  stock: [{ yard: "North", section: section.good, length: times(8, foot), price: money(20) }],
  kerf: none,
  shortfall: none,
  splice: true,
  loadLength: times(5, foot),
  cutAtYard: true,
};

export const lumberCases: FolderCases = {
  boardFeet: {
    takes: {
      section,
      length: oneLength,
      options: record({ count: boards(optional) }, { optional: true }),
    },
  },
  boardMass: {
    takes: {
      section,
      length: oneLength,
      options: record({ species, moisture: moisture(optional), count: boards(optional) }),
    },
  },
  checkCertificate: {
    takes: { certificate: made(certificate) },
    derived: "a certificate is made with a plan; what is wrong with it is said by what it breaks",
  },
  cuttingRows: {
    takes: {
      plan: made(onePlan),
      options: record({ system: choice("metric", { optional: true }) }, { optional: true }),
    },
    derived: "a plan is made by planBoards",
  },
  cuttingSheet: { takes: { plan: made(onePlan) }, derived: "a plan is made by planBoards" },
  dressedSection: {
    takes: { section, seasoning: choice("green") },
    together: [
      {
        what: "a nominal size that is not sold",
        with: { "section.nominal": { thickness: times(13, inch), width: times(3, inch) } },
        outcome: "unknown",
        at: ["section"],
      },
    ],
  },
  frameDiagonal: { takes: { frame: record(outside) } },
  frameHeight: {
    takes: {
      frame: record({ courses: count(2), section: onlyWidth }),
    },
  },
  framePieces: {
    takes: { frame: record(frame) },
    together: [
      {
        what: "a bed as wide as two boards",
        with: { "frame.width": times(3, inch) },
        outcome: "contradiction",
        at: ["width"],
      },
    ],
  },
  planBoards: [
    { takes: { problem, options: record(planning) }, together },
    { takes: { problem: withOffcuts, options: fixed({ solve }) } },
  ],
  planBoardsAtYard: [
    { takes: { problem, options: record({ ...planning, yard: name("North") }) }, together },
    { takes: { problem: withOffcuts, options: fixed({ solve, yard: "North" }) } },
  ],
  readBoardItem: { takes: { text: sectionText("2x12 treated", "fine"), options: readOptions } },
  readSection: { takes: { text: sectionText("2x12", "unreadable"), options: readOptions } },
  sizeAtMoisture: {
    takes: {
      size: length("11 1/4 in"),
      options: record({
        from: number(0.19),
        to: number(0.1),
        face: choice("thickness", { optional: true }),
      }),
    },
  },
  stopLengths: { takes: { plan: made(onePlan) }, derived: "a plan is made by planBoards" },
  validateBoardPlan: {
    takes: {
      problem: made(oneBoard),
      plan: made(onePlan),
      options: record(
        { delivered: list([name("South")], { empty: "fine", ...optional }) },
        { optional: true },
      ),
    },
    derived: "a plan is made by planBoards; what is wrong with it is said by the rule it breaks",
  },
  woodDensity: { takes: { species, options: record({ moisture: moisture() }) } },
  woodShrinkage: {
    takes: { total: number(0.05, { zero: "fine" }), options: record({ moisture: moisture() }) },
  },
};
