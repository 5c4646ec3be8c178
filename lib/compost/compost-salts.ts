import { Given } from "../measure/given.ts";

/** What was shaken out of the compost for the measurement: by parts of compost to water, or as a paste. */
export type SaltExtract = "paste" | "1:1" | "1:2";

/** How salty a compost is for seedlings. */
export interface CompostSalts {
  readonly fit: "fits" | "salty";
  /** Below this it is wanted, in mmhos/cm. */
  readonly wanted: number;
  readonly basis: readonly string[];
}

const wantedBelow: Readonly<Record<SaltExtract, number>> = { paste: 4, "1:1": 2.5, "1:2": 1.5 };

/**
 * Whether a compost's conductivity is below what is wanted, by how it was measured.
 *
 * @param conductivity in mmhos/cm (dS/m), 0 to 200.
 * @param extract `paste` (saturated), `1:1` or `1:2`.
 * @throws ProblemError where an argument is missing, of another kind or out of range.
 * @rule wanted: saturated paste below 4.0, 1:1 below 2.5, 1:2 below 1.5 mmhos/cm
 * @source missouri-compost-test
 * @example
 * compostSalts(7, "paste").fit // => "salty"
 */
export function compostSalts(conductivity: number, extract: SaltExtract): CompostSalts {
  const given = new Given();
  const found = given.plain(conductivity, ["conductivity"], { min: 0, max: 200 });
  const way = given.oneOf(extract, ["paste", "1:1", "1:2"], ["extract"]);
  given.done();
  const wanted = wantedBelow[way];
  return { fit: found < wanted ? "fits" : "salty", wanted, basis: ["missouri-compost-test"] };
}
