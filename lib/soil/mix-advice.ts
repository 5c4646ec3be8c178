import { Given } from "../measure/given.ts";
import { type RottingMaterial, rottingOf } from "./rotting-material.ts";

/** How much organic matter is advised: a row of the table of mix advice; null where nothing is said. */
export interface MixRule {
  readonly mix: string;
  /** Shares of the dry mass, 0 to 1. */
  readonly massLow: number | null;
  readonly massHigh: number | null;
  /** Shares of the loose volume, 0 to 1. */
  readonly volumeLow: number | null;
  readonly volumeHigh: number | null;
  readonly source: string;
}

/** How a mix stands to an advice. */
export interface MixAdvice {
  readonly mix: string;
  /** Null where the advice says nothing of it. */
  readonly byMass: "less" | "within" | "more" | null;
  readonly byVolume: "less" | "within" | "more" | null;
  readonly basis: readonly string[];
}

/**
 * Whether a fill holds less, as much or more organic matter than is advised, by mass and by volume.
 *
 * @param material a row or blend with what of it is organic.
 * @param rules rows: `massLow`, `massHigh`, `volumeLow`, `volumeHigh`, shares, 0 to 1, or null.
 * @returns one for each rule, in their order.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule within from the least to the greatest share, both included
 * @source umd-raised-beds, soils-for-salmon-2005, washington-lid-2012
 * @example
 * const compost = published.materials.find((row) => row.material === "compost");
 * mixAdvice(compost, published.mixAdvice)[0].byMass // => "more"
 */
export function mixAdvice(
  material: RottingMaterial,
  rules: readonly MixRule[],
): readonly MixAdvice[] {
  const given = new Given();
  const { organic, organicVolume } = rottingOf(given, material, ["material"]);
  const rows = given.list(rules, ["rules"]).map((rule, at) => {
    const path = ["rules", at + 1];
    const row = given.fields(rule, path);
    const share = (key: string): number | null =>
      row[key] === null ? null : given.plain(row[key], [...path, key], { min: 0, max: 1 });
    return {
      mix: given.name(row.mix, [...path, "mix"]),
      mass: [share("massLow"), share("massHigh")] as const,
      volume: [share("volumeLow"), share("volumeHigh")] as const,
    };
  });
  given.done();
  return rows.map(({ mix, mass, volume }, at) => ({
    mix,
    byMass: judged(organic.likely, mass),
    byVolume: judged(organicVolume, volume),
    basis: [rules[at]?.source ?? ""],
  }));
}

type Bound = number | null;

// A millionth either way: shares come from sums.
function judged(share: number, [low, high]: readonly [Bound, Bound]): MixAdvice["byMass"] {
  if (low === null && high === null) return null;
  if (low !== null && share < low - 1e-6) return "less";
  return high !== null && share > high + 1e-6 ? "more" : "within";
}
