import { describe, expect, it } from "vitest";
import { gardenBeds } from "../../../lib/index.ts";
import { american, tables } from "./garden.ts";

describe("gardenBeds(reading, choices, prices)", () => {
  it("makes every bed complete, in the order of the table", () => {
    const { beds, problems } = gardenBeds(tables(american).beds);
    expect(problems).toEqual([]);
    expect(beds.map((bed) => bed.name)).toEqual(["A-1", "A-2", "A-3", "B", "C-1", "C-2"]);
  });

  it("leaves a bed out whose boards leave no room, with the problem at its row and column", () => {
    const { beds } = tables({
      beds: "bed,length,width,section\nA,8 ft,8 in,4x12\nB,8 ft,7 in,6x12\nC,8 ft,4 ft,",
    });
    const made = gardenBeds(beds);
    expect(made.problems.map(({ code, path }) => [code, path])).toEqual([
      ["contradiction", ["beds", 2, "width"]],
    ]);
    expect([made.beds.length, made.given]).toEqual([2, 3]);
  });

  it("takes the only timber priced for the section, and says so", () => {
    const { beds, prices } = tables({
      beds: "bed,length,width\nA,8 ft,4 ft",
      prices: "yard,item,size,price\nAlder,2x12 larch,8 ft,34",
    });
    const made = gardenBeds(beds, {}, prices.rows);
    expect(made.beds[0]?.timber).toBe("larch");
    expect(made.remarks.some(({ text }) => text.includes("larch"))).toBe(true);
  });

  it("takes the choice where there are several, and what is written before all", () => {
    const { beds, prices } = tables({
      beds: "bed,length,width,timber\nA,8 ft,4 ft,\nB,8 ft,4 ft,larch",
      prices: "yard,item,size,price\nAlder,2x12 larch,8 ft,34\nAlder,2x12 treated,8 ft,21",
    });
    const { beds: made } = gardenBeds(beds, {}, prices.rows);
    expect(made.map((bed) => bed.timber)).toEqual(["treated", "larch"]);
  });

  it("carries cautions: a tall wall, old soil, a depth that was assumed", () => {
    const { beds } = tables({
      beds: "bed,length,width,courses,built\nTall,8 ft,4 ft,3,\nOld,8 ft,4 ft,1,2012",
    });
    const ids = gardenBeds(beds).cautions.map(({ id }) => id);
    expect(ids).toEqual(["wall-height", "lead-in-old-soil", "assumed-depth"]);
    expect(gardenBeds(beds).cautions.at(-1)?.because).toBe("Old");
  });
});
