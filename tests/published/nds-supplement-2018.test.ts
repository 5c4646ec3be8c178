// NDS Supplement 2018, Table 1A: nominal and minimum dressed sizes of dimension lumber (READ).
import { describe, it } from "vitest";
import { amount, inch } from "../../lib/index.ts";
import { section } from "../lib/lumber/make.ts";
import { published } from "./compare.ts";

describe("lumber, Table 1A", () => {
  it.each([
    [2, "1.50", "1.5625"],
    [2.5, "2.00", "2.0625"],
    [3, "2.50", "2.5625"],
    [3.5, "3.00", "3.0625"],
    [4, "3.50", "3.5625"],
    [4.5, "4.00", "4.0625"],
  ])("thickness %d in nominal: %s in dry, %s in green (READ)", (nominal, dry, green) => {
    published(amount(section(`${nominal}x12`).thickness, inch), dry);
    published(amount(section(`${nominal}x12`, "green").thickness, inch), green);
  });

  it.each([
    [2, "1.50", "1.5625"],
    [3, "2.50", "2.5625"],
    [4, "3.50", "3.5625"],
    [5, "4.50", "4.625"],
    [6, "5.50", "5.625"],
    [8, "7.25", "7.50"],
    [10, "9.25", "9.50"],
    [12, "11.25", "11.50"],
    [14, "13.25", "13.50"],
    [16, "15.25", "15.50"],
  ])("width %d in nominal: %s in dry, %s in green (READ)", (nominal, dry, green) => {
    published(amount(section(`2x${nominal}`).width, inch), dry);
    published(amount(section(`2x${nominal}`, "green").width, inch), green);
  });
});
