import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";

/**
 * The caution for plastic sheet in a bed: water must be able to leave, and none may stand against
 * the wood.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `plastic-and-drainage`
 * @rule The floor drains; no fold, pocket or inward flap of the sheet holds water against wood.
 * @source barnes-2013, howgrave-graham-2008, common practice
 * @example
 * plasticAndDrainage({ because: "bottom sheet" }).because // => "bottom sheet"
 */
export function plasticAndDrainage(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "plastic-and-drainage",
      fact: "Plastic keeps wood dry only while water can leave; behind a torn or folded sheet wood rots faster.",
      advice:
        "Leave the floor open, or hole a bottom sheet well. Turn the sheet under the board's lower edge, never inward, trim it so that no fold holds water, staple above the soil line only, and mend every tear before filling.",
      defersTo: "Ask the maker whether the sheet is fit for beds that grow food.",
      sources: ["barnes-2013", "howgrave-graham-2008", "common practice"],
    },
    options,
  );
}
