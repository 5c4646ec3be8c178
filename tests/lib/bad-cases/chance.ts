import { count, number, type Sizes } from "./leaves.ts";
import { list, record } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
// Values may be of any size and sign.
const anyValue = number(3, { zero: "fine", negative: "fine", huge: "fine" });

export const chanceCases: FolderCases = {
  quantilesOf: {
    takes: {
      values: list([anyValue, anyValue], { empty: "missing" }),
      shares: list([number(0.5, fromNothing)], { empty: "fine" }),
    },
  },
  quasiRandom: {
    takes: {
      count: count(4),
      dimensions: count(2),
      options: record({ seed: count(7, { ...fromNothing, optional: true }) }, { optional: true }),
    },
  },
};
