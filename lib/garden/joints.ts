import { boardScrews, cornerPlates, plateScrews, screwsAcross } from "../fasteners/index.ts";
import { type Length, over } from "../measure/index.ts";
import type { Bed } from "./bed.ts";
import type { Joint } from "./screw-uses.ts";

const sectionKey = (bed: Bed): string => bed.section.thickness.si.toFixed(6);

/** Plates on the inside of each corner. */
export function plateJoint(options: {
  readonly thickness: Length;
  readonly perCorner: number;
  readonly holes: number;
}): Joint {
  const { thickness, perCorner, holes } = options;
  return {
    where: "corner plates",
    key: sectionKey,
    choose: (bed, stock) =>
      plateScrews({ plate: thickness, board: bed.section.thickness }, { stock }),
    count: (bed) => cornerPlates(bed, { perCorner, holes }).screws,
  };
}

/** Boards against the stakes between the corners. */
export const stakeJoint: Joint = {
  where: "stakes",
  key: (bed) => `${sectionKey(bed)} ${bed.stakeSection?.name}`,
  choose: (bed, stock) =>
    boardScrews(
      { board: bed.section.thickness, into: (bed.stakeSection ?? bed.section).thickness },
      { stock },
    ),
  count: (bed) =>
    bed.stakes === 0
      ? 0
      : screwsAcross(bed.section.width, { joints: 2 * bed.stakes * bed.courses }),
};

/** The seat board down into the edge of the wall. */
export function seatJoint(spacing: Length): Joint {
  return {
    where: "seat",
    key: (bed) => `${sectionKey(bed)} ${bed.cap?.name}`,
    choose: (bed, stock) =>
      boardScrews(
        { board: (bed.cap ?? bed.section).thickness, into: bed.section.width },
        { stock },
      ),
    count: (bed) => (bed.cap === null ? 0 : 2 * (screwsAlong(bed.length) + screwsAlong(bed.width))),
  };
  function screwsAlong(side: Length): number {
    // One at each end, and no two further apart than the spacing.
    return 1 + Math.ceil(over(side, spacing) - 1e-9);
  }
}
