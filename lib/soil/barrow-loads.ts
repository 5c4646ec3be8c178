import { Given } from "../measure/given.ts";
import {
  cubicFoot,
  kilogram,
  type Mass,
  quantity,
  roundUpTo,
  times,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { liftedLimits, volumeLimits } from "./limits.ts";
import { densitiesOf, type WeighedMaterial } from "./soil-mass.ts";

/** What a barrow holds and what is wheeled in it. */
export interface BarrowLoadsOptions {
  /** Level full, 0.1 L to 5 m3; default 3 cu ft. */
  readonly barrow?: Volume;
  /** Most that is wheeled at once, 1 to 1,000 kg; default 80 kg. */
  readonly most?: Mass;
}

/** How often the barrow goes. */
export interface BarrowLoads {
  readonly loads: number;
  /** What goes into one. */
  readonly load: Volume;
  /** Whether weight and not room is what limits a load. */
  readonly heavy: boolean;
}

/**
 * The barrow loads of a volume of a material: by what the barrow holds, or by what one person wheels
 * where the material is heavy.
 *
 * @param volume loose, 0 to 1,000,000 m3.
 * @param material a row with its densities; a load is judged by the likely moist one.
 * @param options `barrow`, level full, default 3 cu ft; `most` wheeled at once, default 80 kg.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule load = least of barrow and most / moist density; loads = volume / load, rounded up
 * @source common practice
 * @example
 * const compost = published.materials.find((row) => row.material === "compost");
 * barrowLoads(cubicYard, compost).loads // => 9
 */
export function barrowLoads(
  volume: Volume,
  material: WeighedMaterial,
  options: BarrowLoadsOptions = {},
): BarrowLoads {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const m3 = given.si(volume, "volume", ["volume"], volumeLimits);
  const { moist } = densitiesOf(given, material, ["material"]);
  const barrow = chosen.barrow ?? times(3, cubicFoot);
  const barrowM3 = given.si(barrow, "volume", ["barrow"], liftedLimits);
  const mostKg = given.si(chosen.most ?? times(80, kilogram), "mass", ["most"], {
    min: kilogram,
    max: times(1000, kilogram),
  });
  given.done();
  const byWeightM3 = mostKg / moist.likely;
  const loadM3 = Math.min(barrowM3, byWeightM3);
  return {
    loads: roundUpTo(m3 / loadM3, 1),
    load: quantity(loadM3, volumeDimension),
    heavy: byWeightM3 < barrowM3,
  };
}
