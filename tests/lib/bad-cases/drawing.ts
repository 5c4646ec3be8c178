import { inch, money, times } from "../../../lib/index.ts";
import {
  choice,
  count,
  label,
  length,
  name,
  number,
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

export const drawingCases: FolderCases = {
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
