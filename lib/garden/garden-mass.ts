import { requireRecord, requireRecords } from "../check/index.ts";
import type { BoardPlan } from "../lumber/index.ts";
import {
  Checks,
  cubicMetre,
  type Density,
  type Mass,
  massDimension,
  quantity,
  type Range,
  times,
  type Volume,
} from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import { type SoilMass, type SoilMaterial, soilMass } from "../soil/index.ts";
import { checkWoodDensity, requireMaterial } from "./checks.ts";
import { cutPlan } from "./shapes.ts";
import { noVolume } from "./table-cells.ts";

/** So much of a material. */
export interface WeighedVolume {
  /** What it is for: "fill", "top-dressing", "mulch". */
  readonly what: string;
  readonly volume: Volume;
  readonly material: SoilMaterial;
}

/** What is weighed. */
export interface GardenMassInput {
  /** The boards bought and kept; null for none. */
  readonly boards: BoardPlan | null;
  /** What the boards weigh; without it they are left out. */
  readonly woodDensity?: Density;
  readonly volumes: readonly WeighedVolume[];
}

/** What must be moved. */
export interface MassRow {
  readonly what: string;
  /** As it is bought and carried. */
  readonly mass: Range<Mass>;
  /** Once soaked; null for boards. */
  readonly wet: Range<Mass> | null;
}

/** What all of it weighs. */
export interface GardenMass {
  readonly rows: readonly MassRow[];
  /** Of all rows, as bought and carried. */
  readonly total: Range<Mass>;
}

/**
 * What all that is bought weighs: boards, and loose materials moist as they are sold, and soaked.
 *
 * @param input `boards` with `woodDensity` (without it boards are left out), and `volumes`
 * @throws ProblemError where a material lacks a density
 * @rule mass = volume x density; low is added to low and high to high
 * @source common practice
 * @example
 * gardenMass({ boards: null, volumes: [] }).total.likely // => 0 lb
 */
export function gardenMass(input: GardenMassInput): GardenMass {
  checkMassInput(input);
  const { boards, woodDensity, volumes } = input;
  const rows: MassRow[] = [];
  if (boards !== null && woodDensity !== undefined) {
    const m3 = boards.cuts
      .filter((cut) => cut.yard !== null)
      .reduce(
        (sum, { section, length }) => sum + section.thickness.si * section.width.si * length.si,
        0,
      );
    rows.push({ what: "boards", mass: certain(m3 * woodDensity.si), wet: null });
  }
  for (const { what, volume, material } of volumes) {
    const mass: SoilMass = soilMass(volume, material);
    rows.push({ what, mass: mass.moist, wet: mass.wet });
  }
  const sum = (key: "low" | "likely" | "high"): Mass =>
    quantity(
      rows.reduce((total, { mass }) => total + mass[key].si, 0),
      massDimension,
    );
  const basis = [...new Set(rows.flatMap(({ mass }) => mass.basis))];
  return { rows, total: { low: sum("low"), likely: sum("likely"), high: sum("high"), basis } };
}

function checkMassInput(input: GardenMassInput): void {
  requireRecord(input, ["input"]);
  const { boards, woodDensity, volumes } = input;
  requireShape(boards, cutPlan, ["input", "boards"]);
  requireRecords(volumes, ["input", "volumes"]);
  const checks = new Checks();
  checkWoodDensity(checks, woodDensity, ["input", "woodDensity"]);
  volumes.forEach(({ what, volume, material }, at) => {
    const place = ["input", "volumes", at + 1];
    const bounds = { min: noVolume, max: times(1e6, cubicMetre) };
    checks
      .text(what, [...place, "what"])
      .quantity(volume, "volume", [...place, "volume"], bounds)
      .attempt(() => requireMaterial(material, [...place, "material"]));
  });
  checks.done();
}

function certain(kg: number): Range<Mass> {
  const mass = quantity(kg, massDimension);
  return { low: mass, likely: mass, high: mass, basis: [] };
}
