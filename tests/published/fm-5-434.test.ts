// US Army, Earthmoving Operations, FM 5-434 (2000), Table 1-1.
// Left out: the compactor's output and number of machines of its worked example (no such function).
import { describe, it } from "vitest";
import { amount, cubicYard, type SwellingSoil, swell, times } from "../../lib/index.ts";
import { published } from "./compare.ts";
import { dataRow } from "./soil-rows.ts";

const soil = (name: string) => dataRow<SwellingSoil>("swellingSoils", "soil", name);
const yards = (n: number) => times(n, cubicYard);

describe("soil, FM 5-434 Table 1-1", () => {
  it("100 yd3 of sand in place make 111 loose and 95 compacted (READ-2nd)", () => {
    const sand = soil("sand or gravel");
    published(amount(swell(yards(100), sand), cubicYard), "111");
    published(amount(swell(yards(100), sand, { to: "compacted" }), cubicYard), "95");
  });

  // The third column follows from the other two: here it checks them.
  it.each([
    ["sand or gravel", "0.86"],
    ["common earth", "0.72"],
    ["clay", "0.63"],
  ])("%s, loose to compacted, %s (READ-2nd)", (name, printed) => {
    const compacted = swell(yards(1), soil(name), { from: "loose", to: "compacted" });
    published(amount(compacted, cubicYard), printed);
  });

  it("blasted rock, loose to compacted, 0.87 (READ-2nd)", () => {
    const rock = { soil: "blasted rock", bankToLoose: 1.5, bankToCompacted: 1.3 };
    const compacted = swell(yards(1), rock, { from: "loose", to: "compacted" });
    published(amount(compacted, cubicYard), "0.87");
  });
});
