import { Given } from "./given.ts";
import { type SettlingMaterial, settlingShares } from "./settling-order.ts";
import { densityOf } from "./si.ts";
import { densitiesOf, type Three, type WeighedMaterial } from "./soil-mass.ts";

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
 * const soil = published.materials.find((row) => row.material === "topsoil");
 */
export function soilBlend(parts: readonly BlendPart[]): SoilMaterial {
  const given = new Given();
  const rows = given.list(parts, ["parts"]).map((part, at) => {
    const path = ["parts", at + 1];
    const found = given.record(part, path);
    return {
      share: given.number(found.share, [...path, "share"], partLimits),
      settle: settlingShares(given, found.material as SoilMaterial, [...path, "material"]),
      ...densitiesOf(given, found.material as SoilMaterial, [...path, "material"]),
    };
  });
  given.done();
  const total = rows.reduce((sum, row) => sum + row.share, 0);
  const mean = (part: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((sum, row) => sum + part(row) * row.share, 0) / total;
  const three = (key: "dry" | "moist" | "wet", step: keyof Three) =>
    densityOf(mean((row) => row[key][step]));
  return {
    material: parts.map((part) => part.material.material).join(" and "),
    settleLow: mean((row) => row.settle.low),
    settleLikely: mean((row) => row.settle.likely),
    settleHigh: mean((row) => row.settle.high),
    settleSource: together(parts.map((part) => part.material.settleSource)),
    densityDryLow: three("dry", "low"),
    densityDry: three("dry", "likely"),
    densityDryHigh: three("dry", "high"),
    densityMoistLow: three("moist", "low"),
    densityMoist: three("moist", "likely"),
    densityMoistHigh: three("moist", "high"),
    densityWetLow: three("wet", "low"),
    densityWet: three("wet", "likely"),
    densityWetHigh: three("wet", "high"),
    source: together(parts.map((part) => part.material.source)),
  };
}

const partLimits = { min: 1e-6, max: 1e6, words: "parts by volume from 0.000001 to 1,000,000" };

const together = (sources: readonly string[]): string => [...new Set(sources)].join(", ");
