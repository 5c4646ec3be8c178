import { inch, money, times } from "../../../lib/index.ts";
import {
  choice,
  count,
  fixed,
  label,
  length,
  name,
  number,
  quantityOf,
  remark,
  type Sizes,
  volume,
  yesNo,
} from "./leaves.ts";
import { but, list, type Part, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
const perhaps: Sizes = { zero: "fine", optional: true };
const orNull = (part: Part): Part => but(part, variant("null", null, "fine"));

const options = {
  units: choice("metric", { optional: true }),
  widths: list([number(300), number(670)], { empty: "missing", optional: true }),
};
const faces = {
  thickness: length("1 1/2 in"),
  width: length("11 1/4 in"),
};

const anywhere: Sizes = { zero: "fine", negative: "fine" };
const bed = record({
  name: name("A-1"),
  length: length("8 ft"),
  width: length("4 ft"),
  section: record({ thickness: length("1 1/2 in") }),
  lap: choice("ends", { optional: true }),
  cap: orNull(record({ width: length("5 1/2 in") }, { optional: true })),
  place: orNull(
    record(
      {
        east: length("2 ft", anywhere),
        north: length("3 ft", anywhere),
        turned: yesNo(true),
      },
      { optional: true },
    ),
  ),
});

const cut = record({
  board: name("B1"),
  source: label("North"),
  yard: orNull(name("North")),
  section: record({ name: name("2x12"), width: length("11 1/4 in") }),
  timber: label("treated"),
  length: length("8 ft"),
  pieces: list(
    [
      record({
        name: name("A-1 side"),
        bed: name("A-1"),
        part: label("side"),
        length: length("7 ft"),
        mitred: yesNo(false, { optional: true }),
      }),
    ],
    { empty: "fine" },
  ),
  offcut: length("11 7/8 in", fromNothing),
  cutCount: count(1, fromNothing),
  squared: length("1/2 in", perhaps),
  atYard: orNull(
    record(
      { first: length("5 ft"), pieces: count(1, fromNothing), rest: length("1 in", fromNothing) },
      { optional: true },
    ),
  ),
  layout: count(1, { zero: "fine", optional: true, huge: "fine" }),
});
const layer = (depth: string) =>
  record({
    name: name("compost, once settled"),
    depth: length(depth, fromNothing),
    kind: choice("compost", { optional: true }),
  });

// Amounts of any kind can be drawn, one kind at a time: the first says which.
const amount = record({
  name: name("boards"),
  amount: but(volume("3 cu ft", fromNothing), variant("another dimension", times(inch, 3), "fine")),
});

const anySize = { zero: "fine", negative: "fine" } as const;
const bandValue = (inches: number) =>
  quantityOf(times(inches, inch), { ...anySize, zero: "fine", huge: "too-large" });
// The least and the greatest of a range may be any number on their side of what is likely.
const bandPoint = (at: number, zero: "fine" | "contradiction" = "fine") =>
  record({
    at: number(at, { zero, negative: at === 0 ? "fine" : "contradiction", huge: "too-large" }),
    value: bandValue(8),
  });

// Out of order where the least is zero's or the greatest's like, and so on: each end has its own side.
const end = (inches: number, sizes: Sizes) =>
  quantityOf(times(inches, inch), { huge: "too-large", ...sizes });
const rangedPoint = (at: number) =>
  record({
    at: fixed(at),
    value: but(
      record({
        low: end(6, { zero: "fine", negative: "fine" }),
        likely: end(8, { zero: "contradiction", negative: "contradiction" }),
        high: end(9, { zero: "contradiction", negative: "contradiction" }),
      }),
      // A number alone is a value too, here without its unit.
      variant("a number for a record", 12, "wrong-unit"),
    ),
  });

export const drawingCases: FolderCases = {
  bandsDrawing: {
    takes: {
      series: list(
        [
          record({
            name: name("soil"),
            points: list([bandPoint(0, "fine"), bandPoint(1), bandPoint(2, "contradiction")], {
              empty: "missing",
            }),
            shape: choice("line", { optional: true }),
          }),
          record({
            name: name("bark"),
            points: list([rangedPoint(0), rangedPoint(1)], { empty: "missing" }),
          }),
        ],
        { empty: "missing" },
      ),
      options: record(
        {
          ...options,
          title: but(name("Depth"), variant("nothing", undefined, "fine")),
          across: but(name("years"), variant("nothing", undefined, "fine")),
          levels: list([record({ name: name("rim"), value: bandValue(9) })], {
            empty: "fine",
            optional: true,
          }),
          marked: number(1, { ...anySize, huge: "too-large", optional: true }),
          percent: yesNo(false, { optional: true }),
        },
        { optional: true },
      ),
    },
  },
  yearColumns: {
    takes: {
      years: list([record({ year: name("2026"), parts: list([amount], { empty: "fine" }) })], {
        empty: "missing",
      }),
      options: record(
        { ...options, title: but(name("Bought"), variant("nothing", undefined, "fine")) },
        { optional: true },
      ),
    },
  },
  barsDrawing: {
    takes: {
      amounts: list([amount], { empty: "fine" }),
      options: record(
        { ...options, title: but(name("Fill"), variant("nothing", undefined, "fine")) },
        { optional: true },
      ),
    },
    together: [
      {
        what: "two kinds",
        with: {
          amounts: [
            { name: "boards", amount: money(3, "USD") },
            { name: "soil", amount: times(inch, 4) },
          ],
        },
        outcome: "wrong-unit",
        at: ["amounts", 2, "amount"],
      },
      {
        what: "two currencies",
        with: {
          amounts: [
            { name: "boards", amount: money(3, "USD") },
            { name: "soil", amount: money(4, "EUR") },
          ],
        },
        outcome: "mixed-currency",
        at: ["amounts", 2, "amount"],
      },
    ],
  },
  bedInSection: {
    takes: {
      bed: record({
        name: remark("A-1"),
        width: length("4 ft"),
        courses: count(2),
        section: record(faces),
        cap: orNull(record(faces, { optional: true })),
        capReach: length("1 in", perhaps),
        layers: list([layer("8 in"), layer("2 in")], { empty: "fine" }),
        liner: yesNo(true, { optional: true }),
        was: record(
          { name: name("filled in April"), depth: length("9 in", { zero: "fine" }) },
          { optional: true },
        ),
      }),
      options: record(options, { optional: true }),
    },
    together: [
      {
        what: "boards as thick as half the bed",
        with: { "bed.width": times(3, inch) },
        outcome: "contradiction",
        at: ["bed", "width"],
      },
    ],
  },
  bedsFromAbove: {
    takes: {
      beds: list([bed, bed], { empty: "fine" }),
      options: record(
        { ...options, cuts: list([cut], { empty: "fine", optional: true }) },
        { optional: true },
      ),
    },
  },
  boardDrawing: {
    takes: {
      plan: record({
        cuts: list([cut, cut], { empty: "fine" }),
        certificate: record({ kerf: length("1/8 in", fromNothing) }, { optional: true }),
        shortened: list(
          [record({ name: name("A-1 side"), bed: name("A-1"), short: length("1/8 in") })],
          { empty: "fine", optional: true },
        ),
      }),
      options: record(options, { optional: true }),
    },
  },
};
