import { Given } from "../measure/given.ts";
import { type Mass, massDimension, quantity } from "../measure/index.ts";
import { massLimits, shareLimits } from "./limits.ts";

/** One thing that goes onto the heap. */
export interface HeapInput {
  /** Mass as it comes, moist, 0 to 1,000,000 kg. */
  readonly mass: Mass;
  /** Carbon, a share of the dry mass, 0 to 1. */
  readonly carbon: number;
  /** Nitrogen, a share of the dry mass, 0 to 1. */
  readonly nitrogen: number;
  /** Water, a share of the moist mass, 0 to 1; default 0, for shares given of the mass as it comes. */
  readonly moisture?: number;
}

/** What a heap's inputs come to. */
export interface CarbonNitrogen {
  readonly mass: Mass;
  readonly carbon: Mass;
  readonly nitrogen: Mass;
  /** Carbon over nitrogen; null where there is no nitrogen. */
  readonly ratio: number | null;
  /** Water, a share of the moist mass. */
  readonly moisture: number;
}

/**
 * The carbon, nitrogen, their ratio and the moisture of what goes onto a heap.
 *
 * @param inputs one or more: `mass` moist, 0 to 1,000,000 kg; `carbon` and `nitrogen`, shares of the
 * dry mass; `moisture`, share of the moist mass, default 0.
 * @throws ProblemError where there is no input, all masses are none (`too-small`), or a field is
 * missing, of another kind or out of range.
 * @rule C:N = sum of mass x C x (1 - moisture) / sum of mass x N x (1 - moisture)
 * @source cornell-compost-calc
 * @example
 * const heap = [{ mass: times(10, kilogram), carbon: 0.45, nitrogen: 0.015 }];
 * Math.round(carbonNitrogen(heap).ratio) // => 30
 */
export function carbonNitrogen(inputs: readonly HeapInput[]): CarbonNitrogen {
  const given = new Given();
  const rows = given.list(inputs, ["inputs"], 1).map((input, at) => {
    const path = ["inputs", at + 1];
    const row = given.fields(input, path);
    return {
      kg: given.si(row.mass, "mass", [...path, "mass"], massLimits),
      carbon: given.plain(row.carbon, [...path, "carbon"], shareLimits),
      nitrogen: given.plain(row.nitrogen, [...path, "nitrogen"], shareLimits),
      moisture: given.plain(row.moisture ?? 0, [...path, "moisture"], shareLimits),
    };
  });
  const sum = (part: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((total, row) => total + part(row), 0);
  const kg = sum((row) => row.kg);
  if (given.clean && kg === 0) {
    given.add({
      code: "too-small",
      path: ["inputs"],
      allowed: "inputs of which at least one has a mass above 0",
      received: "0 kg in all",
      remedy: "Give what goes onto the heap with its mass.",
    });
  }
  given.done();
  const carbonKg = sum((row) => row.kg * row.carbon * (1 - row.moisture));
  const nitrogenKg = sum((row) => row.kg * row.nitrogen * (1 - row.moisture));
  return {
    mass: quantity(kg, massDimension),
    carbon: quantity(carbonKg, massDimension),
    nitrogen: quantity(nitrogenKg, massDimension),
    ratio: nitrogenKg > 0 ? carbonKg / nitrogenKg : null,
    moisture: sum((row) => row.kg * row.moisture) / kg,
  };
}
