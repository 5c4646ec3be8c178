import { cubicFoot, money } from "../../../lib/index.ts";
import {
  choice,
  fixed,
  label,
  length,
  mass,
  name,
  number,
  price,
  type Sizes,
  yesNo,
} from "./leaves.ts";
import { but, leaf, list, nothing, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const perhaps: Sizes = { zero: "fine", optional: true };
const fromNothing: Sizes = { zero: "fine" };

// A board of no timber in particular has an empty one.
const emptyTexts = [variant("empty text", "", "fine"), variant("a blank", " ", "fine")];
const bought = record({
  item: label("compost"),
  use: label("fill"),
  size: fixed(cubicFoot),
  form: choice("bag", { optional: true }),
  board: record(
    { section: name("2x12"), timber: but(name("treated"), ...emptyTexts) },
    { optional: true },
  ),
  delivered: yesNo(true, { optional: true }),
  mass: mass("120 lb", { ...perhaps }),
  count: number(3, fromNothing),
  price: price("5.20", { zero: "fine", mixed: true }),
  shares: fixed([{ bed: "A", share: 1 }]),
});
const terms = record({
  yard: name("Alder"),
  tax: number(0.06, { zero: "fine" }),
  taxOn: choice("goods"),
  tripCost: price("6", { ...perhaps, mixed: true }),
  delivery: price("55", { ...perhaps, mixed: true }),
  deliveryFrom: price("15", { ...perhaps, mixed: true }),
  distance: length("7 mi", perhaps),
  payload: mass("900 lb", { optional: true }),
});
const currency = leaf("USD", [
  ...nothing({ optional: true }),
  variant("no code", "dollars", "unknown"),
  variant("a number", 7, "unknown"),
]);
const receipt = record({
  // Receipts are made by yardReceipt, which has cases for every field; here they are only shared out.
  total: price("12", fromNothing),
  lines: list([fixed({ total: money(12, "USD"), shares: [{ bed: "A", share: 1 }] })], {
    empty: "fine",
  }),
});

export const costCases: FolderCases = {
  salesTax: {
    takes: {
      sum: price("100", fromNothing),
      rate: number(0.06, { zero: "fine" }),
      options: record({ included: yesNo(false, { optional: true }) }, { optional: true }),
    },
  },
  shareOut: {
    takes: {
      sum: price("100", fromNothing),
      weights: list([number(2, { zero: "fine" }), number(3, { zero: "fine" })], { empty: "fine" }),
    },
  },
  shareReceipts: {
    takes: {
      receipts: list([receipt], { empty: "fine" }),
      beds: list([name("A")], { empty: "fine" }),
      currency,
    },
  },
  yardReceipt: {
    takes: {
      bought: list([bought], { empty: "fine" }),
      terms,
      options: record(
        {
          taxIncluded: yesNo(false, { optional: true }),
          carPayload: mass("900 lb", { optional: true }),
          currency,
        },
        { optional: true },
      ),
    },
  },
};
