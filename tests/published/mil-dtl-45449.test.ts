import { describe, it } from "vitest";
import { inch, screwsAcross, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

// MIL-DTL-45449, Crates, wood, 3.9.2 (READ): nails by the nominal width of the board.
describe("fasteners, across a board", () => {
  it.each([
    [4, "2"],
    [6, "3"],
    [8, "4"],
    [10, "5"],
    [12, "5"],
  ] as const)("nominal %s in", (widthIn, printed) => {
    published(screwsAcross(times(inch, widthIn)), printed);
  });
});
