// Tables of lumber sizes that print inches and millimetres side by side; sizes of PS 20.
import { describe, it } from "vitest";
import { amount, inch, millimetre, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

// Dressed size in inches, and the millimetres printed for it (all READ).
const sizes: readonly [inches: number, mm: string][] = [
  [0.75, "19"],
  [1, "25"],
  [1.5, "38"],
  [2.5, "64"],
  [3.5, "89"],
  [5.5, "140"],
  [7.25, "184"],
  [11.25, "286"],
];

describe("measure, sizes of lumber in both systems", () => {
  it.each(sizes)("%d in are %s mm (READ)", (inches, mm) => {
    published(amount(times(inches, inch), millimetre), mm);
  });
});
