// Southern Pine Inspection Bureau: nominal and actual sizes (READ).
import { describe, it } from "vitest";
import { amount, inch } from "../../lib/index.ts";
import { section } from "../lib/lumber/make.ts";
import { published } from "./compare.ts";

describe("lumber, spot sizes", () => {
  it.each([
    ["4x4", "3.5", "3.5"],
    ["1x6", "0.75", "5.5"],
  ])("%s: %s x %s in (READ)", (name, thickness, width) => {
    published(amount(section(name).thickness, inch), thickness, 1e-9);
    published(amount(section(name).width, inch), width, 1e-9);
  });
});
