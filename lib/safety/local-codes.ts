import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";

/**
 * The general caution that local rules go above everything worked out here.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `local-codes`
 * @rule Local codes, site rules and licensed practice go above any figure here.
 * @source irc-2009
 * @example
 * localCodes().id // => "local-codes"
 */
export function localCodes(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "local-codes",
      fact: "What may be built, and how high, is set where you live.",
      advice:
        "Ask the building office and, on shared ground, the owner or the garden's committee before building walls, terraces or anything a person may fall from.",
      defersTo: "Local codes and a licensed professional go above every figure of this plan.",
      sources: ["irc-2009"],
    },
    options,
  );
}
