import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  type Area,
  type Length,
  lengthDimension,
  quantity,
  roundUpTo,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { compostOveruse } from "./compost-overuse.ts";
import { areaLimits, bagLimits, depthLimits, volumeLimits } from "./limits.ts";

/** How deep, what there is, and in what bags. */
export interface TopDressingOptions {
  /** Depth spread on the surface, 0 to 20 ft; more than 1 in a year carries a caution. */
  readonly depth: Length;
  /** Finished compost of one's own, 0 to 1,000,000 m3; default none. */
  readonly onHand?: Volume;
  /** What one bag holds, 0.1 L to 1000 m3; without it no bags are counted. */
  readonly bag?: Volume;
}

/** The compost for a top-dressing, and how much of it must be bought. */
export interface TopDressing {
  readonly area: Area;
  readonly depth: Length;
  readonly volume: Volume;
  /** What the own heap gives of it: never more than there is, nor than is needed. */
  readonly fromHeap: Volume;
  readonly toBuy: Volume;
  /** What stays on the heap. */
  readonly heapLeft: Volume;
  /** Whole bags for what must be bought; null where no bag size was given. */
  readonly bags: number | null;
  readonly cautions: readonly Caution[];
}

/**
 * The compost that dresses an area to a depth, what the own heap covers of it, and what is left to
 * buy. Use the area inside the boards: `bedInside`.
 *
 * @param area inside the boards, 0 to 10,000,000 m2.
 * @param options `depth`, 0 to 20 ft; `onHand`, finished compost, default none; `bag`, what one bag
 * holds, 0.1 L to 1000 m3, default not counted.
 * @throws ProblemError naming every field that is missing, of another kind or out of range.
 * @rule volume = area x depth; to buy = volume - on hand, not below none; bags rounded up
 * @source common practice
 * @example
 * const dressing = topDressing(times(120, squareFoot), { depth: times(1, inch), onHand: times(4, cubicFoot), bag: cubicFoot });
 * dressing.toBuy // => 6 cu ft
 * dressing.bags // => 6
 */
export function topDressing(area: Area, options: TopDressingOptions): TopDressing {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const areaM2 = given.si(area, "area", ["area"], areaLimits);
  const depthM = given.si(chosen.depth, "length", ["depth"], depthLimits);
  const heapM3 = given.si(
    chosen.onHand ?? quantity(0, volumeDimension),
    "volume",
    ["onHand"],
    volumeLimits,
  );
  const bagM3 =
    chosen.bag === undefined ? null : given.si(chosen.bag, "volume", ["bag"], bagLimits);
  given.done();

  const needM3 = areaM2 * depthM;
  const usedM3 = Math.min(needM3, heapM3);
  const buyM3 = needM3 - usedM3;
  return {
    area,
    depth: quantity(depthM, lengthDimension),
    volume: quantity(needM3, volumeDimension),
    fromHeap: quantity(usedM3, volumeDimension),
    toBuy: quantity(buyM3, volumeDimension),
    heapLeft: quantity(heapM3 - usedM3, volumeDimension),
    bags: bagM3 === null ? null : roundUpTo(buyM3 / bagM3, 1),
    cautions: depthM > mostYearlyM ? [compostOveruse()] : [],
  };
}

// 1 in, the most that the extension services cited in compostOveruse advise for a year; a hair
// more, so that 25.4 mm reached by adding up is not more.
const mostYearlyM = 0.0254 + 1e-9;
