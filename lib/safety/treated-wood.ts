import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";

/**
 * The caution for sawing, drilling or sanding treated wood.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `sawing-treated-wood`
 * @rule Outdoors, with mask, goggles and gloves of rubber or vinyl; every bit of sawdust is picked up.
 * @source gtr-190, epa-arsenical-sheet
 * @example
 * sawingTreatedWood().id // => "sawing-treated-wood"
 */
export function sawingTreatedWood(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "sawing-treated-wood",
      fact: "The dust of treated wood is harmful to breathe and to swallow.",
      advice:
        "Saw outdoors over a sheet, with a dust mask, goggles and gloves of rubber or vinyl. Pick up all sawdust, keep it out of soil and compost, wash before eating, and wash the work clothes apart.",
      defersTo:
        "The end tag or safety sheet of the treated wood, and the saw maker's instructions, go above this.",
      sources: ["gtr-190", "epa-arsenical-sheet"],
    },
    options,
  );
}

/**
 * The caution against burning treated wood, offcuts and sawdust included.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `never-burn`
 * @rule Treated wood is never burnt, chipped for mulch or composted.
 * @source gtr-190, epa-arsenical-sheet
 * @example
 * neverBurn({ because: "offcuts" }).because // => "offcuts"
 */
export function neverBurn(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "never-burn",
      fact: "Smoke and ash of treated wood are poisonous.",
      advice:
        "Never burn treated boards, offcuts or sawdust in a fire, stove or fireplace; don't chip them for mulch or put them on the compost heap. Ordinary rubbish collection takes them in most places.",
      defersTo:
        "Ask your local authority how treated wood is to be handed in: rules differ by state and county.",
      sources: ["gtr-190", "epa-arsenical-sheet"],
    },
    options,
  );
}
