import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "../safety/called-for.ts";

/**
 * The caution that fresh wood, bark or straw carries where it is dug in.
 *
 * @param options `because`: what called for it, in words; default nothing.
 * @throws ProblemError `unreadable` where `because` is no text
 * @rule mixed in, material with a C:N over 30 locks nitrogen up; on the surface it hardly does
 * @source clemson-compost, eulenberg-2012
 * @example
 * nitrogenTieUp().id // => "nitrogen-tie-up"
 */
export function nitrogenTieUp(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "nitrogen-tie-up",
      fact: "Fresh wood, bark and straw that are dug in lock up nitrogen while they rot, and crops go short of it.",
      advice:
        "Leave them on the surface, or feed nitrogen with them; under a mulch no shortage was found in trials.",
      defersTo: "A soil test, and the colour of the leaves, tell more than any rule.",
      sources: ["clemson-compost", "eulenberg-2012"],
    },
    options,
  );
}
