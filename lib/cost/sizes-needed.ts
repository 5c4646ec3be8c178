import { ProblemError } from "../check/index.ts";
import { bedFloor, linerForBeds } from "../liner/index.ts";
import type { FloorNeed, LiningNeed, Need } from "./need.ts";
import type { GoodsPrice, PriceLine, SheetPrice } from "./price-line.ts";

/**
 * How many sizes of a price line cover a need, as a fraction where that is one; undefined where the
 * line does not serve it: sold by mass without a density known, a roll too narrow.
 */
export function sizesNeeded(need: Need, line: PriceLine): number | undefined {
  if (need.kind === "lining") return line.kind === "sheet" ? rollsOfLining(need, line) : undefined;
  if (need.kind === "floor") return line.kind === "sheet" ? rollsOfFloor(need, line) : undefined;
  if (line.kind !== "goods") return undefined;
  return need.kind === "count" ? packs(need.count, line) : volumes(need, line);
}

function packs(count: number, line: GoodsPrice): number | undefined {
  return line.size.kind === "count" ? count / line.size.count : undefined;
}

function volumes(need: Extract<Need, { kind: "volume" }>, line: GoodsPrice): number | undefined {
  if (line.size.kind === "volume") return need.volume.si / line.size.volume.si;
  if (line.size.kind !== "mass" || need.density === undefined) return undefined;
  return (need.volume.si * need.density.likely.si) / line.size.mass.si;
}

function rollsOfLining(need: LiningNeed, line: SheetPrice): number | undefined {
  const roll = { width: line.width, length: line.length };
  return unlessNoFit(() => linerForBeds(need.beds, { ...need.strip, roll }).rolls);
}

function rollsOfFloor(need: FloorNeed, line: SheetPrice): number | undefined {
  const roll = { width: line.width, length: line.length };
  const lap = need.lap === undefined ? {} : { lap: need.lap };
  return unlessNoFit(() => {
    const lengthsM = need.beds.map((bed) => {
      const floor = bedFloor(bed, { kind: need.floor, roll, ...lap });
      return floor.rollLength.si * (bed.count ?? 1);
    });
    return Math.ceil(lengthsM.reduce((sum, lengthM) => sum + lengthM, 0) / roll.length.si - 1e-9);
  });
}

/** The number, or undefined where the roll itself is what does not do. */
function unlessNoFit(count: () => number): number | undefined {
  try {
    return count();
  } catch (error) {
    const isRoll =
      error instanceof ProblemError &&
      error.problems.every((problem) => problem.path[0] === "roll");
    if (isRoll) return undefined;
    throw error;
  }
}
