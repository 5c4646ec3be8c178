import { Given } from "../measure/given.ts";
import {
  type Area,
  inch,
  type Length,
  type Mass,
  massDimension,
  pound,
  quantity,
  type Range,
  squareFoot,
} from "../measure/index.ts";
import { areaLimits, depthLimits, massLimits } from "./limits.ts";

/**
 * The fertiliser that brings a mass of nitrogen.
 *
 * @param nitrogen wanted, 0 to 1,000,000 kg.
 * @param grade share of it that is nitrogen, 0.001 to 1: the first figure on its label, in per cent.
 * @throws ProblemError where a figure is missing, of another kind or out of range.
 * @rule fertiliser = nitrogen / share of nitrogen
 * @source umd-fertilizer
 * @example
 * fertiliserFor(times(2, pound), 0.46) // => 4.35 lb
 */
export function fertiliserFor(nitrogen: Mass, grade: number): Mass {
  const given = new Given();
  const kg = given.si(nitrogen, "mass", ["nitrogen"], massLimits);
  const share = given.plain(grade, ["grade"], { min: 0.001, max: 1 });
  given.done();
  return quantity(kg / share, massDimension);
}

/**
 * The nitrogen that fresh wood, straw or dry leaves take up while they rot in the soil, where they are
 * dug in: without it the crops go short. On the surface, as a mulch, they take hardly any.
 *
 * @param area 0 to 10,000,000 m2.
 * @param depth of the material dug in, 0 to 20 ft.
 * @throws ProblemError where an argument is missing, of another kind or out of range.
 * @rule at least 2.0 to 2.1 lb of nitrogen for each inch on 1,000 sq ft, as 6 lb of ammonium nitrate (34 %) or 10 lb of ammonium sulfate (21 %)
 * @source osu-organic-matter
 * @example
 * nitrogenForWood(times(1000, squareFoot), inch).low // => 2.04 lb
 */
export function nitrogenForWood(area: Area, depth: Length): Range<Mass> {
  const given = new Given();
  const m2 = given.si(area, "area", ["area"], areaLimits);
  const depthM = given.si(depth, "length", ["depth"], depthLimits);
  given.done();
  const times = ((m2 / (1000 * squareFoot.si)) * depthM) / inch.si;
  const mass = (pounds: number): Mass => quantity(times * pounds * pound.si, massDimension);
  return {
    low: mass(6 * 0.34),
    likely: mass((6 * 0.34 + 10 * 0.21) / 2),
    high: mass(10 * 0.21),
    basis: ["osu-organic-matter"],
  };
}
