import { Given } from "../measure/given.ts";
import {
  type Mass,
  massDimension,
  quantity,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import {
  type HeapMaterial,
  type HeapPart,
  heapMaterialOf,
  heapPartOf,
  type PlainPart,
} from "./heap-mix.ts";

/** How much more of a material brings a heap to a ratio. */
export interface RatioPartner {
  readonly material: string;
  readonly mass: Mass;
  /** Null where the material's density is not known. */
  readonly volume: Volume | null;
  /** Water of the heap with it, a share of the moist mass; null where it is not known of a part. */
  readonly moisture: number | null;
}

/** The ratio wanted. */
export interface RatioPartnerOptions {
  /** Carbon over nitrogen, 1 to 1,000; default 30, the upper end of what suits a heap best. */
  readonly goal?: number;
}

/**
 * How much more of a material to collect, to bring a heap to a ratio of carbon to nitrogen.
 *
 * @param parts what is there, one or more, as for `heapMix`.
 * @param material what is to be added: a row of the table of heap materials.
 * @param options `goal`, carbon over nitrogen, 1 to 1,000, default 30.
 * @returns null where the material cannot bring it there: its own ratio lies on the same side.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule partner = sum of dry mass x (goal x N - C) / ((C - goal x N) of the partner x (1 - its moisture))
 * @source cornell-compost-calc
 * @example
 * const row = (name) => published.heapMaterials.find((each) => each.material === name);
 * const grass = [{ material: row("grass clippings"), amount: times(10, kilogram) }];
 * const leaves = { ...row("leaves"), carbonLow: 0.5, carbonHigh: 0.5, nitrogenLow: 0.0075, nitrogenHigh: 0.0075, moisture: 0.35 };
 * amount(ratioPartner(grass, leaves).mass, kilogram).toFixed(1) // => "3.5"
 */
export function ratioPartner(
  parts: readonly HeapPart[],
  material: HeapMaterial,
  options: RatioPartnerOptions = {},
): RatioPartner | null {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const there = given
    .list(parts, ["parts"], 1)
    .map((part, at) => heapPartOf(given, part, ["parts", at + 1]));
  const partner = heapMaterialOf(given, material, ["material"]);
  const goal = given.plain(chosen.goal ?? 30, ["goal"], { min: 1, max: 1000 });
  given.done();
  // Carbon beyond what the nitrogen asks for at the goal: below nothing where it lacks.
  const beyond = there.reduce(
    (sum, { kg, carbon, nitrogen, moisture }) =>
      sum + kg * (1 - (moisture ?? 0)) * (carbon - goal * nitrogen),
    0,
  );
  const each = (1 - (partner.moisture ?? 0)) * (partner.carbon - goal * partner.nitrogen);
  if (Math.abs(beyond) < 1e-12) return made(material, partner, there, 0);
  if (each === 0 || beyond / each > 0) return null;
  return made(material, partner, there, -beyond / each);
}

function made(
  material: HeapMaterial,
  { density, moisture }: Pick<PlainPart, "density" | "moisture">,
  there: readonly Pick<PlainPart, "kg" | "moisture">[],
  kg: number,
): RatioPartner {
  const isKnown = moisture !== null && there.every((part) => part.moisture !== null);
  const water = there.reduce(
    (sum, part) => sum + part.kg * (part.moisture ?? 0),
    kg * (moisture ?? 0),
  );
  const all = there.reduce((sum, part) => sum + part.kg, kg);
  return {
    material: material.material,
    mass: quantity(kg, massDimension),
    volume: density === null ? null : quantity(kg / density, volumeDimension),
    moisture: !isKnown ? null : all > 0 ? water / all : 0,
  };
}
