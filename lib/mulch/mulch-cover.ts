import { Given } from "../measure/given.ts";
import {
  type Area,
  areaDimension,
  type Length,
  lengthDimension,
  quantity,
  roundUpTo,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { areaLimits, bagLimits, depthLimits } from "./limits.ts";

/** How deep, what stays bare, and in what bags. */
export interface MulchCoverOptions {
  /** Depth of the mulch, 0 to 20 ft. */
  readonly depth: Length;
  /** Area kept free of it, as round stems; 0 to the whole area; default none. */
  readonly bare?: Area;
  /** What one bag holds, 0.1 L to 1000 m3; without it no bags are counted. */
  readonly bag?: Volume;
}

/** The mulch that covers an area. */
export interface MulchCover {
  /** What is covered: the area without what stays bare. */
  readonly area: Area;
  readonly depth: Length;
  readonly volume: Volume;
  /** Whole bags; null where no bag size was given. */
  readonly bags: number | null;
}

/**
 * The mulch that covers an area to a depth, and the bags of it.
 *
 * @param area inside the boards, 0 to 10,000,000 m2.
 * @param options `depth`, 0 to 20 ft; `bare` area kept free, default none; `bag`, what one bag
 * holds, 0.1 L to 1000 m3, default not counted.
 * @throws ProblemError naming every field that is missing, of another kind or out of range, or where
 * more stays bare than there is (`contradiction`).
 * @rule volume = (area - bare area) x depth; bags rounded up
 * @source common practice
 * @example
 * const cover = mulchCover(times(48, squareFoot), { depth: times(1, inch), bag: times(2, cubicFoot) });
 * cover.volume // => 4 cu ft
 * cover.bags // => 2
 */
export function mulchCover(area: Area, options: MulchCoverOptions): MulchCover {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const wholeM2 = given.si(area, "area", ["area"], areaLimits);
  const depthM = given.si(chosen.depth, "length", ["depth"], depthLimits);
  const bareM2 = given.si(chosen.bare ?? quantity(0, areaDimension), "area", ["bare"], areaLimits);
  const bagM3 =
    chosen.bag === undefined ? null : given.si(chosen.bag, "volume", ["bag"], bagLimits);
  if (given.clean && bareM2 > wholeM2) {
    given.add({
      code: "contradiction",
      path: ["bare"],
      allowed: "at most the whole area",
      received: `${bareM2} m2 of ${wholeM2} m2`,
      remedy: "Keep fewer or smaller rings free.",
    });
  }
  given.done();
  const m3 = (wholeM2 - bareM2) * depthM;
  return {
    area: quantity(wholeM2 - bareM2, areaDimension),
    depth: quantity(depthM, lengthDimension),
    volume: quantity(m3, volumeDimension),
    bags: bagM3 === null ? null : roundUpTo(m3 / bagM3, 1),
  };
}
