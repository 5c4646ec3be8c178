import { describe, it } from "vitest";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import {
  amount,
  type Density,
  groundContactStamp,
  type PreservativeRow,
  poundPerCubicFoot,
} from "../../lib/index.ts";
import { published } from "./compare.ts";

// AWPA U1 chart of retentions in lb/ft3 by use category, as the trade reproduces it (READ-2nd).
describe("fasteners, retentions that a bed's boards must hold", () => {
  const { preservatives = [] } = loadPublished(dataFiles());
  const row = (name: string) =>
    preservatives.find(({ preservative }) => preservative === name) as unknown as PreservativeRow;
  const pcf = (density: Density | null) =>
    density === null ? Number.NaN : amount(density, poundPerCubicFoot);

  it.each([
    ["ACQ type A or D", "0.15", "0.40", "0.60"],
    ["CA-B", "0.10", "0.21", "0.31"],
    ["CA-C", "0.060", "0.15", "0.31"],
    ["ACZA", "0.25", "0.40", "0.60"],
  ] as const)(
    "%s: above ground %s, ground contact %s, heavy duty %s",
    (name, above, ground, heavy) => {
      const preservative = row(name);
      published(pcf(preservative.aboveGround), above);
      published(pcf(groundContactStamp({ preservative }).retention), ground);
      published(pcf(groundContactStamp({ preservative, heavy: true }).retention), heavy);
    },
  );

  it("has 0.15 and 0.31 for micronised copper azole", () => {
    const preservative = row("MCA");
    published(pcf(groundContactStamp({ preservative }).retention), "0.15");
    published(pcf(groundContactStamp({ preservative, heavy: true }).retention), "0.31");
  });
});
