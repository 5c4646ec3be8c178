import type { Caution } from "../check/index.ts";
import { type CautionOptions, calledFor } from "../safety/called-for.ts";

/**
 * The caution that a published model of rot carries in soil that is richer than what it was fitted to.
 *
 * @param options `because`: what called for it, in words; default nothing.
 * @throws ProblemError `unreadable` where `because` is no text
 * @rule above 10 per cent organic matter by dry mass the models are outside what they were fitted to
 * @source rothc-2025, andren-katterer-1997
 * @example
 * outsideFittedSoil().id // => "outside-fitted-soil"
 */
export function outsideFittedSoil(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "outside-fitted-soil",
      fact: "The published models of rot were fitted to mineral topsoil, with less than a tenth of organic matter; this bed holds more.",
      advice:
        "Take the figures for a rough picture, look at their range, and measure the depth each spring.",
      defersTo: "A rule in the bed shows what it does in truth.",
      sources: ["rothc-2025", "andren-katterer-1997"],
    },
    options,
  );
}
