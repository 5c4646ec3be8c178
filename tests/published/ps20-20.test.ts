// American Softwood Lumber Standard, NIST Voluntary Product Standard PS 20-20: minimum dressed sizes,
// as repeated in an engineering table made after the standard (READ-2nd).
import { describe, expect, it } from "vitest";
import { amount, inch, type Length } from "../../lib/index.ts";
import { section } from "../lib/lumber/make.ts";
import { published } from "./compare.ts";
import { dataRows } from "./soil-rows.ts";

const asLength = (value: unknown) => amount(value as Length, inch);

const boards = dataRows("dressedSizes").filter((row) => row.class === "board");

describe("lumber, PS 20 boards", () => {
  it.each(
    boards.filter((row) => row.face === "thickness").map((row) => [asLength(row.nominal), row]),
  )("%d in nominal thickness, dry and green (READ-2nd)", (nominal, row) => {
    const { dry, green } = row as { dry: Length; green: Length };
    const [thin, wet] = [section(`${nominal} x 8`), section(`${nominal} x 8`, "green")];
    published(amount(thin.thickness, inch), String(asLength(dry)), 1e-9);
    published(amount(wet.thickness, inch), String(asLength(green)), 1e-9);
  });

  it.each(boards.filter((row) => row.face === "width").map((row) => [asLength(row.nominal), row]))(
    "%d in nominal width, dry and green (READ-2nd)",
    (nominal, row) => {
      const { dry, green } = row as { dry: Length; green: Length };
      published(amount(section(`1x${nominal}`).width, inch), String(asLength(dry)), 1e-9);
      published(
        amount(section(`1x${nominal}`, "green").width, inch),
        String(asLength(green)),
        1e-9,
      );
    },
  );
});

describe("lumber, PS 20 timbers", () => {
  it.each([
    ["6x6", "5.5", "5.5"],
    ["8x8", "7.25", "7.5"],
    ["10x12", "9.25", "9.5"],
    ["16x16", "15", "15.5"],
  ])("%s: %s in dry, %s in green (READ-2nd)", (name, dry, green) => {
    published(amount(section(name).thickness, inch), dry, 1e-9);
    published(amount(section(name, "green").thickness, inch), green, 1e-9);
  });

  it("has a row for each in the table", () => {
    for (const row of dataRows("dressedSizes").filter((each) => each.class === "timber")) {
      const nominal = asLength(row.nominal);
      const name = `${nominal}x${nominal}`;
      expect(amount(section(name).width, inch)).toBeCloseTo(asLength(row.dry), 9);
      expect(amount(section(name, "green").width, inch)).toBeCloseTo(asLength(row.green), 9);
    }
  });
});
