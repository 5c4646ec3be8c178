import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";

/**
 * The caution before any digging: stakes, posts, levelling.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `buried-lines`
 * @rule Lines are marked before digging; near a mark only hand tools, 18 to 24 in by state.
 * @source one-call-811
 * @example
 * buriedLines({ because: "stakes" }).id // => "buried-lines"
 */
export function buriedLines(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "buried-lines",
      fact: "Gas, power, water and data lines may run under the garden, some of them shallow.",
      advice:
        "Before driving a stake or digging, even a small bed, have the lines marked: in the United States ring or file with 811 two or three working days ahead, free of charge. Within 18 to 24 in (45 to 60 cm) of a mark dig by hand only.",
      defersTo:
        "The one-call centre of your state or country, and the owner of the line, decide; private lines are not marked by them.",
      sources: ["one-call-811"],
    },
    options,
  );
}
