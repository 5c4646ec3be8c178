import type { Mass } from "../measure/index.ts";
import { Given } from "../soil/given.ts";
import { massOf } from "../soil/si.ts";

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

const massLimits = { min: 0, max: 1e6, words: "a mass from 0 to 1,000,000 kg" };
const share = { min: 0, max: 1, words: "a share from 0 to 1" };

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
  const rows = given.list(inputs, ["inputs"]).map((input, at) => {
    const path = ["inputs", at + 1];
    const row = given.record(input, path);
    return {
      kg: given.mass(row.mass, [...path, "mass"], massLimits),
      carbon: given.number(row.carbon, [...path, "carbon"], share),
      nitrogen: given.number(row.nitrogen, [...path, "nitrogen"], share),
      moisture: given.number(row.moisture ?? 0, [...path, "moisture"], share),
    };
  });
  const sum = (part: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((total, row) => total + part(row), 0);
  const kg = sum((row) => row.kg);
  if (given.clean() && kg === 0) {
    given.refuse({
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
    mass: massOf(kg),
    carbon: massOf(carbonKg),
    nitrogen: massOf(nitrogenKg),
    ratio: nitrogenKg > 0 ? carbonKg / nitrogenKg : null,
    moisture: sum((row) => row.kg * row.moisture) / kg,
  };
}
