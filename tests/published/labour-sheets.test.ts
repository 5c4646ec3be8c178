import { describe, it } from "vitest";
import {
  amount,
  cubicMetre,
  cubicYard,
  type DiggingRate,
  diggingHours,
  hour,
  type Volume,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { dataRow } from "./soil-rows.ts";

const hours = (work: string, volume: Volume) =>
  diggingHours([{ work: dataRow<DiggingRate>("diggingRates", "work", work), volume }]);

// A training sheet of the trade for the least, a contractor's sheet for the greatest: hours for 1 m3.
describe("soil, hours of hand labour for each m3", () => {
  it.each([
    ["dig, sand", "1.20", "4.0"],
    ["dig, medium soil", "2.20", "6.5"],
    ["dig, heavy soil", "3.30", "10.5"],
    ["wheel up to 50 m, spread", "1.25", "1.25"],
    ["put back", "1.00", "5.5"],
  ])("%s: %s to %s (READ)", (work, least, greatest) => {
    const { low, high } = hours(work, cubicMetre);
    published(amount(low, hour), least);
    published(amount(high, hour), greatest);
  });

  it("0.92 for a cubic yard of sand, 2.52 of heavy soil (DERIVED)", () => {
    published(amount(hours("dig, sand", cubicYard).low, hour), "0.92");
    published(amount(hours("dig, heavy soil", cubicYard).low, hour), "2.52");
  });
});
