import { describe, it } from "vitest";
import { humusBalance, year } from "../../lib/index.ts";
import { published } from "./compare.ts";

// A French farming page on the humus balance of arable soils: a loam with 2 per cent organic matter
// holds about 90 t/ha of it and loses about 1.5 t in a year.
describe("decay, the humus of a loam", () => {
  it("loses 1.5 t of 90 in a year (READ)", () => {
    const { humus } = humusBalance(year, { start: 90, rate: 1.5 / 90 });
    published(90 - humus, "1.5");
  });
});
