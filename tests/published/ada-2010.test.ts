// US Department of Justice, "2010 ADA Standards for Accessible Design", section 903 (benches). The
// millimetres beside the inches are whole fives: half of five is the tolerance.
import { describe, it } from "vitest";
import { amount, inch, millimetre, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

const mm = (inches: number) => amount(times(inches, inch), millimetre);

describe("measure, 2010 ADA Standards", () => {
  it("903.5: seats from 17 to 19 in, 430 to 485 mm (READ)", () => {
    published(mm(17), "430", 2.5);
    published(mm(19), "485", 2.5);
  });

  it("903.3: seats 20 to 24 in deep, 510 to 610 mm (READ)", () => {
    published(mm(20), "510", 2.5);
    published(mm(24), "610", 2.5);
  });

  it("903.3: benches at least 42 in long, 1065 mm (READ)", () => {
    published(mm(42), "1065", 2.5);
  });
});
