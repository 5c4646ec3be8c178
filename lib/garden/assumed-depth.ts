import type { Caution } from "../check/index.ts";

/** The caution that the soil in some beds was not measured. */
export function assumedDepth(because: string): Caution {
  return {
    id: "assumed-depth",
    fact: "How deep the soil stands now was not written down for every bed that is there already; it is taken as 2 in (5 cm) under what is wanted.",
    advice:
      "Measure each bed from the rim to the soil before you order, and fill in depth_now: one inch in a 4 ft x 8 ft bed is over 2 cu ft.",
    defersTo: "Your own rule, laid on the soil, goes above the assumption.",
    sources: ["common practice"],
    because,
  };
}
