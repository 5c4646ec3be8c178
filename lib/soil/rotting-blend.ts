import { Given } from "../measure/given.ts";
import { blendParts, meanOf } from "./blend-parts.ts";
import { type Rotting, type RottingMaterial, rottingOf } from "./rotting-material.ts";
import { soilBlend } from "./soil-blend.ts";
import type { Three } from "./soil-mass.ts";
import { sourcesTogether } from "./sources.ts";

/** One part of a blend that rots: a material and its share of the loose volume. */
export interface RottingPart {
  readonly material: RottingMaterial;
  /** Parts or shares, over 0 to 1,000,000. */
  readonly share: number;
}

/**
 * A blend of materials as a material of its own, with what of it is organic and how fast that rots.
 * Each part's organic matter goes on rotting at its own rate in truth; the blend's one rate is that
 * of the first year.
 *
 * @param parts one row or more with `share`, parts by loose volume, over 0.
 * @throws ProblemError where there is no part, or a share or figure is missing, of another kind or
 * out of range.
 * @rule organic share = sum of parts' organic mass / sum of their dry mass; rate = mean of the parts' rates by organic mass; other figures by loose volume
 * @source common practice
 * @example
 * const row = (name) => published.materials.find((each) => each.material === name);
 * const blend = rottingBlend([{ material: row("topsoil"), share: 1 }, { material: row("compost"), share: 1 }]);
 * Number(blend.organic.toFixed(3)) // => 0.132
 * blend.organicVolume // => 0.5
 */
export function rottingBlend(parts: readonly RottingPart[]): RottingMaterial {
  const given = new Given();
  const rows = blendParts(given, parts, (material, path) => rottingOf(given, material, path));
  given.done();
  const whole = soilBlend(parts);
  const organic = (step: keyof Three): number => organicShare(rows, step);
  const decay = (step: keyof Three): number => meanRate(rows, step);
  return {
    ...whole,
    organicLow: organic("low"),
    organic: organic("likely"),
    organicHigh: organic("high"),
    organicVolume: meanOf(rows, (row) => row.organicVolume),
    porosity: meanOf(rows, (row) => row.porosity),
    decayLow: decay("low"),
    decay: decay("likely"),
    decayHigh: decay("high"),
    organicSource: sourcesTogether(parts.map(({ material }) => material.organicSource)),
    decaySource: sourcesTogether(parts.map(({ material }) => material.decaySource)),
  };
}

type Row = Rotting & { readonly share: number };

/** Dry masses as they likely are: whether a compost is heavy and whether it is rich are two things. */
function organicShare(rows: readonly Row[], step: keyof Three): number {
  const dryMass = rows.reduce((sum, row) => sum + row.share * row.dry.likely, 0);
  return (
    rows.reduce((sum, row) => sum + row.share * row.dry.likely * row.organic[step], 0) / dryMass
  );
}

function meanRate(rows: readonly Row[], step: keyof Three): number {
  const organicMass = (row: Row): number => row.share * row.dry.likely * row.organic.likely;
  const total = rows.reduce((sum, row) => sum + organicMass(row), 0);
  if (total === 0) return 0;
  return rows.reduce((sum, row) => sum + organicMass(row) * row.decay[step], 0) / total;
}
