import type { Caution } from "../check/index.ts";
import { calledFor } from "../safety/called-for.ts";

/**
 * The caution a top-dressing of more than 1 in a year carries: phosphorus and salts build up.
 *
 * @param options `because`: what called for it, in words; default nothing.
 * @throws ProblemError `unreadable` where `because` is no text
 * @rule more than 1 in of compost in one year calls for a soil test before the next
 * @source osu-em9308, umn-compost-2023
 * @example
 * compostOveruse().id // => "compost-overuse"
 */
export function compostOveruse(options: { readonly because?: string } = {}): Caution {
  return calledFor(
    {
      id: "compost-overuse",
      fact: "More than 1 in of compost a year can bring more phosphorus and salts than the crops take up.",
      advice:
        "Have the soil tested before another deep dressing, and leave compost out for some years where phosphorus is high.",
      defersTo: "the soil test of a laboratory and the advice of your extension service",
      sources: ["osu-em9308", "umn-compost-2023"],
    },
    options,
  );
}
