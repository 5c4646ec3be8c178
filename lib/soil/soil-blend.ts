import { Given } from "../measure/given.ts";
import { densityDimension, quantity } from "../measure/index.ts";
import { blendParts, meanOf } from "./blend-parts.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { densitiesOf, type Three, type WeighedMaterial } from "./soil-mass.ts";
import { sourcesTogether } from "./sources.ts";

/** A material as the table of materials has it: how it settles and what it weighs. */
export interface SoilMaterial extends SettlingMaterial, WeighedMaterial {}

/** One part of a blend: a material and its share of the loose volume. */
export interface BlendPart {
  readonly material: SoilMaterial;
  /** Parts or shares, over 0 to 1,000,000: 2 of one to 1 of another is two thirds to one third. */
  readonly share: number;
}

/**
 * A blend of materials as a material of its own, to be used wherever a row is. Volumes are taken
 * to add up: fine stuff that slips between coarse makes a little less than their sum.
 *
 * @param parts two rows or more (one is allowed) with `share`, parts by loose volume, over 0.
 * @throws ProblemError where there is no part, or a share, density or settling share is missing, of
 * another kind or out of range.
 * @rule each figure of the blend = sum of part's figure x part's share of the loose volume
 * @source common practice
 * @example
 * const d = (value) => times(value, kilogramPerCubicMetre);
 * const row = (material, dry, moist, wet, settle) => ({
 *   material, source: "common practice", settleSource: "common practice",
 *   settleLow: settle, settleLikely: settle, settleHigh: settle,
 *   densityDryLow: d(dry), densityDry: d(dry), densityDryHigh: d(dry),
 *   densityMoistLow: d(moist), densityMoist: d(moist), densityMoistHigh: d(moist),
 *   densityWetLow: d(wet), densityWet: d(wet), densityWetHigh: d(wet),
 * });
 * const blend = soilBlend([
 *   { material: row("topsoil", 1200, 1300, 1800, 0.1), share: 2 },
 *   { material: row("compost", 400, 700, 900, 0.16), share: 1 },
 * ]);
 * blend.material // => "topsoil and compost"
 * blend.settleLikely // => 0.12
 * amount(blend.densityMoist, kilogramPerCubicMetre) // => 1100
 */
export function soilBlend(parts: readonly BlendPart[]): SoilMaterial {
  const given = new Given();
  const rows = blendParts(given, parts, (material, path) => ({
    settle: settlingShares(given, material as SoilMaterial, path),
    ...densitiesOf(given, material as SoilMaterial, path),
  }));
  given.done();
  const mean = (figure: (row: (typeof rows)[number]) => number): number => meanOf(rows, figure);
  const three = (key: "dry" | "moist" | "wet", step: keyof Three) =>
    quantity(
      mean((row) => row[key][step]),
      densityDimension,
    );
  return {
    material: parts.map((part) => part.material.material).join(" and "),
    settleLow: mean((row) => row.settle.low),
    settleLikely: mean((row) => row.settle.likely),
    settleHigh: mean((row) => row.settle.high),
    settleSource: sourcesTogether(parts.map((part) => part.material.settleSource)),
    densityDryLow: three("dry", "low"),
    densityDry: three("dry", "likely"),
    densityDryHigh: three("dry", "high"),
    densityMoistLow: three("moist", "low"),
    densityMoist: three("moist", "likely"),
    densityMoistHigh: three("moist", "high"),
    densityWetLow: three("wet", "low"),
    densityWet: three("wet", "likely"),
    densityWetHigh: three("wet", "high"),
    source: sourcesTogether(parts.map((part) => part.material.source)),
  };
}
