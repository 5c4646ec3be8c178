import { cubicFoot, currencyCodes, foot, money } from "../../../lib/index.ts";
import {
  choice,
  count,
  date,
  fixed,
  length,
  name,
  number,
  price,
  quantityOf,
  type Sizes,
  yesNo,
} from "./leaves.ts";
import { but, leaf, list, type Part, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const anySize: Sizes = { zero: "fine", negative: "fine", huge: "fine" };
const path = (place: string) => fixed([place]);

// What is printed may be of any dimension.
const anyKind = (part: Part): Part => ({
  ...part,
  variants: part.variants.filter(({ what }) => what !== "another dimension"),
});

const printUnit = (good: string): Part =>
  leaf(good, [
    variant("nothing", undefined, "fine"),
    variant("a unit of another kind", "h", "wrong-unit"),
    variant("no unit", "fot", "wrong-unit"),
    variant("a number", 3, "unreadable", "wrong-unit"),
    variant("a record", {}, "unreadable", "wrong-unit"),
  ]);
const plainOptions = {
  system: choice("metric", { optional: true }),
  style: choice("plain", { optional: true }),
  digits: count(3, { optional: true }),
  liquid: yesNo(false, { optional: true }),
  decimal: choice(".", { optional: true }),
  grouped: yesNo(true, { optional: true }),
};
const printOptions = record(
  {
    ...plainOptions,
    unit: printUnit("L"),
  },
  { optional: true },
);
const printed = anyKind(quantityOf(cubicFoot, anySize));
const withoutUnit = record(plainOptions, { optional: true });

const ofRange = record({
  low: anyKind(length("1 ft", anySize)),
  likely: anyKind(length("2 ft", anySize)),
  high: anyKind(length("3 ft", anySize)),
  basis: fixed(["common practice"]),
});
const someDate = date({ year: 2026 });

export const measureCases: FolderCases = {
  addDays: {
    takes: { date: someDate, days: count(30, { zero: "fine", negative: "fine" }) },
  },
  dateBefore: { takes: { a: someDate, b: someDate } },
  daysBetween: { takes: { from: someDate, to: someDate } },
  dimensionName: { takes: { quantity: anyKind(quantityOf(foot, anySize)) } },
  isoDate: { takes: { date: someDate } },
  money: {
    takes: {
      amount: number(23.5, anySize),
      currency: leaf(currencyCodes[0], [
        variant("nothing", undefined, "fine"),
        variant("no code", "XYZ", "unknown"),
        variant("small letters", "usd", "unknown"),
        variant("empty text", "", "unknown"),
        variant("a number", 3, "unknown"),
        variant("a record", {}, "unknown"),
      ]),
    },
  },
  printDate: { takes: { date: someDate } },
  printParts: { takes: { quantity: printed, options: printOptions } },
  printQuantity: { takes: { quantity: printed, options: printOptions } },
  printRange: [
    { takes: { range: ofRange, options: withoutUnit } },
    {
      takes: {
        range: fixed(ofRange.good),
        options: record({ unit: printUnit("in") }, { optional: true }),
      },
    },
  ],
  quantityJson: { takes: { quantity: printed, system: choice("metric", { optional: true }) } },
  requireChoice: {
    takes: { value: choice("sides"), choices: fixed(["sides", "ends"]), path: path("value") },
  },
  requireCount: {
    takes: { value: count(3), path: path("value"), bounds: fixed({ min: 1, max: 10 }) },
  },
  requireMoney: {
    takes: {
      value: price("5"),
      path: path("value"),
      bounds: fixed({ above: money(0), max: money(100) }),
    },
  },
  requireNumber: {
    takes: { value: number(0.5), path: path("value"), bounds: fixed({ above: 0, max: 1 }) },
  },
  requireQuantity: {
    takes: {
      value: length("1 ft"),
      kind: but(choice("length"), variant("nothing", undefined, "missing", "unknown")),
      path: path("value"),
      bounds: fixed({ min: foot, max: foot }),
    },
  },
  requireText: { takes: { value: name("A-1"), path: path("value") } },
  roundMoney: { takes: { money: price("6.875", anySize) } },
  yearsBetween: { takes: { from: someDate, to: someDate } },
};

export const checkCases: FolderCases = {
  placeInWords: {
    takes: {
      path: list(
        [leaf("beds", []), leaf(3, []), leaf("length", [variant("a record", {}, "unreadable")])],
        {
          empty: "fine",
        },
      ),
    },
  },
  requireRecord: { takes: { value: record({}), path: path("value") } },
  requireRecords: { takes: { value: list([record({})], { empty: "fine" }), path: path("value") } },
  sentence: {
    takes: {
      problem: record({
        code: choice("missing"),
        path: list([leaf("beds", [])], { empty: "fine" }),
        allowed: fixed("a table"),
        received: fixed(""),
        remedy: fixed("Give one."),
        also: list([list([leaf("yards", [])], { empty: "fine" })], {
          empty: "fine",
          optional: true,
        }),
      }),
    },
  },
};
