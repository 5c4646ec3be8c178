import { requireRecord } from "../check/index.ts";
import {
  Checks,
  foot,
  inch,
  type Length,
  type Mass,
  massDimension,
  quantity,
  times,
  zeroOf,
} from "../measure/index.ts";
import { checkSection } from "./checks.ts";
import type { Section } from "./section.ts";
import { checkSpecies, type WoodSpecies, woodDensity } from "./wood-density.ts";

/**
 * Mass of a board, from what it measures.
 *
 * @param section as `readSection` gives it, dry or green as the board is
 * @param length of one board, above 0 and up to 100 ft
 * @param options `species`: a row of `published.species`; `moisture`: water over oven-dry wood, 0 to
 * 3, default 0.19, the most that lumber sold as dry may hold; `count`: how many, default 1.
 * Preservative and the water it was brought in with are not in it: fresh treated boards may hold 0.5
 * and more.
 * @throws ProblemError where a value is missing or out of range
 * @rule Thickness x width x length x density at that moisture.
 * @source gtr-190, ps20-20
 * @example
 * const section = readSection("2x12", { path: [] }).value
 * const species = { species: "southern pine", specificGravity: 0.47 }
 * boardMass(section, times(8, foot), { species }) // => 34.3 lb
 */
export function boardMass(
  section: Section,
  length: Length,
  options: { readonly species: WoodSpecies; readonly moisture?: number; readonly count?: number },
): Mass {
  requireRecord(options, ["options"]);
  const { species, moisture = 0.19, count = 1 } = options;
  const checks = checkSpecies(new Checks(), species, moisture)
    .quantity(length, "length", ["length"], { above: zeroOf(inch), max: times(100, foot) })
    .count(count, ["count"], { max: 1_000_000 });
  checkSection(checks, section, ["section"]);
  checks.done();
  const volumeM3 = section.thickness.si * section.width.si * length.si * count;
  return quantity(volumeM3 * woodDensity(species, { moisture }).si, massDimension);
}
