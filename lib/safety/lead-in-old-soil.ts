import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";

/**
 * The caution for old soil near houses and roads, which may hold lead.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `lead-in-old-soil`
 * @rule Soil of unknown history near old paint or traffic is tested for lead before food is grown in it.
 * @source epa-lead-2025, umd-lead, umass-lead
 * @example
 * leadInOldSoil().id // => "lead-in-old-soil"
 */
export function leadInOldSoil(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "lead-in-old-soil",
      fact: "Old soil by a house, a road or a torn-down building may hold lead, and lead does not go away.",
      advice:
        "Have the soil tested before food is grown in it; 200 parts per million is where the US agency begins to look closer. Until you know: keep dust down, keep soil covered, hold pH between 6 and 7, wash hands and produce, and leave shoes at the door, above all where children live.",
      defersTo:
        "Your state's soil laboratory or health department says what a result means for food and for children.",
      sources: ["epa-lead-2025", "umd-lead", "umass-lead"],
    },
    options,
  );
}
