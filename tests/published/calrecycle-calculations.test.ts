// California Department of Resources Recycling and Recovery, "Calculations" (volume to weight).
// The table of materials holds whole kg/m3: half of one is 0.84 lb/yd3, the tolerance here.
import { describe, it } from "vitest";
import { amount, cubicYard, pound, soilMass } from "../../lib/index.ts";
import { published } from "./compare.ts";
import { materialRow } from "./soil-rows.ts";

const yard = (name: string) => soilMass(cubicYard, materialRow(name));

describe("soil, CalRecycle weights of a cubic yard", () => {
  it("earth, loose and dry, 2100 lb (READ)", () => {
    published(amount(yard("topsoil").dry.likely, pound), "2100", 0.85);
  });
  it("earth, excavated and wet, 3000 lb (READ)", () => {
    published(amount(yard("topsoil").wet.likely, pound), "3000", 0.85);
  });
  it("sand, loose and dry, 2400 lb; a fifth more damp (READ)", () => {
    published(amount(yard("sand").dry.likely, pound), "2400", 0.85);
    published(amount(yard("sand").moist.likely, pound), "2880", 0.85);
  });
  it("sand, wet, 30 % more: 3120 lb (READ)", () => {
    published(amount(yard("sand").wet.likely, pound), "3120", 0.85);
  });
  it("wood chips, shredded and dry, 300 lb (READ)", () => {
    published(amount(yard("wood chips").dry.likely, pound), "300", 0.85);
  });
});
