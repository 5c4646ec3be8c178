import { requireRecord, requireRecords } from "../check/index.ts";
import type { BedShare, CountNeed, Need, PriceLine, VolumeNeed } from "../cost/index.ts";
import {
  cornerPlates,
  type EndCutPreservative,
  endCutPreservative,
  type FastenerMetal,
  fastenerMetal,
  type GroundContactStamp,
  groundContactStamp,
  type Screw,
} from "../fasteners/index.ts";
import type { Piece } from "../lumber/index.ts";
import { Checks, foot, inch, type Length, over, times } from "../measure/index.ts";
import { listed, requireShape } from "../measure/shape.ts";
import type { Bed } from "./bed.ts";
import { requireBeds } from "./checks.ts";
import { plateJoint, seatJoint, stakeJoint } from "./joints.ts";
import { type ScrewUse, screwNeeds, screwUses } from "./screw-uses.ts";
import { piece, priceRows } from "./shapes.ts";
import { isTreated } from "./timber-of.ts";

/** How beds are fastened. */
export interface FasteningChoices {
  /** Screws one can buy: rows of the table of screws, or the reader's own. */
  readonly screws: readonly Screw[];
  /** Screws whose length is priced here are taken before others. Default: none is. */
  readonly prices?: readonly PriceLine[];
  /** Thickness of a corner plate. Default: 1/8 in. */
  readonly plateThickness?: Length;
  /** Plates at each corner of each course. Default: 2. */
  readonly platesPerCorner?: number;
  /** Screw holes in a plate. Default: 8. */
  readonly holes?: number;
  /** Distance of the screws that hold a seat board. Default: 16 in. */
  readonly seatSpacing?: Length;
  /** As the price list calls them. Defaults: `corner plate`, `end-cut preservative`. */
  readonly plateItem?: string;
  readonly preservativeItem?: string;
}

/** What holds the frames together, and what seals them. */
export interface GardenFasteners {
  readonly plates: number;
  /** Which screws, where and how many; a choice without a screw says what would help. */
  readonly screws: readonly ScrewUse[];
  readonly preservative: EndCutPreservative;
  readonly metal: FastenerMetal;
  /** Null where no wood is treated. */
  readonly stamp: GroundContactStamp | null;
  readonly needs: readonly Need[];
}

/**
 * Corner plates and their screws, screws of stakes and seats, the preservative for the ends of
 * treated pieces, and what metal and stamp to look for. Both ends of every treated piece are
 * reckoned as sawn: which ones are, depends on how boards are cut.
 *
 * @param beds complete beds
 * @param pieces all pieces to cut, as `gardenPieces` gives them
 * @param choices `screws` one can buy, and with defaults the rest
 * @throws ProblemError where there is no screw, or a value is out of its range
 * @rule two plates a corner for each course; the longest screw that hides its point; every sawn end sealed
 * @source common practice
 * @example
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot) });
 * const screws = [{ length: times(1.5, inch), diameter: times(0.164, inch) }];
 * gardenFasteners([bed], gardenPieces([bed]).pieces, { screws }).plates // => 8
 */
export function gardenFasteners(
  beds: readonly Bed[],
  pieces: readonly Piece[],
  choices: FasteningChoices,
): GardenFasteners {
  requireBeds(beds);
  requireShape(pieces, listed(piece), ["pieces"]);
  checkFastening(choices);
  const { screws, prices = [], plateThickness: thickness = over(inch, 8) } = choices;
  const { platesPerCorner: perCorner = 2, holes = 8, seatSpacing = times(inch, 16) } = choices;
  const joints = [plateJoint({ thickness, perCorner, holes }), stakeJoint, seatJoint(seatSpacing)];
  const uses = joints.flatMap((joint) => screwUses(beds, joint, { screws, prices }));
  const treated = pieces.filter(({ timber }) => isTreated(timber));
  const preservative = endCutPreservative(
    treated.map(({ section, count }) => ({ section, ends: 2 * count })),
  );
  const plateShares = beds.map(
    (bed): BedShare => ({ bed: bed.name, share: cornerPlates(bed, { perCorner, holes }).plates }),
  );
  const plates = plateShares.reduce((sum, { share }) => sum + share, 0);
  return {
    plates,
    screws: uses,
    preservative,
    metal: fastenerMetal({ treated: treated.length > 0 }),
    stamp: treated.length > 0 ? groundContactStamp() : null,
    needs: [
      ...plateNeeds(plates, plateShares, choices.plateItem),
      ...screwNeeds(uses),
      ...preservativeNeeds(treated, preservative, choices.preservativeItem),
    ],
  };
}

function checkFastening(choices: FasteningChoices): void {
  requireRecord(choices, ["choices"]);
  const { screws, prices = [], plateThickness = inch, seatSpacing = inch } = choices;
  const { platesPerCorner = 2, holes = 8, plateItem = "plate", preservativeItem = "oil" } = choices;
  requireRecords(screws, ["choices", "screws"]);
  requireShape(prices, priceRows, ["choices", "prices"]);
  const at = (field: string) => ["choices", field];
  const checks = new Checks()
    .quantity(plateThickness, "length", at("plateThickness"), { min: over(inch, 64), max: inch })
    .quantity(seatSpacing, "length", at("seatSpacing"), { min: inch, max: times(10, foot) })
    .count(platesPerCorner, at("platesPerCorner"), { min: 1, max: 10 })
    .count(holes, at("holes"), { min: 1, max: 40 })
    .text(plateItem, at("plateItem"))
    .text(preservativeItem, at("preservativeItem"));
  if (screws.length === 0) {
    checks.add({
      code: "missing",
      path: at("screws"),
      allowed: "at least one screw with a length and a diameter",
      received: "",
      remedy: "Give the screws one can buy, as rows of the table of screws.",
    });
  }
  screws.forEach(({ length, diameter }, index) => {
    const place = ["choices", "screws", index + 1];
    checks
      .quantity(length, "length", [...place, "length"], { min: over(inch, 4), max: foot })
      .quantity(diameter, "length", [...place, "diameter"], { min: over(inch, 32), max: inch });
  });
  checks.done();
}

function plateNeeds(
  count: number,
  shares: readonly BedShare[],
  item = "corner plate",
): readonly CountNeed[] {
  return count === 0 ? [] : [{ kind: "count", item, use: "fasteners", count, shares }];
}

function preservativeNeeds(
  treated: readonly Piece[],
  { volume, line }: EndCutPreservative,
  item: string = line.item,
): readonly VolumeNeed[] {
  if (treated.length === 0) return [];
  const shares = treated.map(({ bed, section, count }) => ({
    bed,
    share: count * section.thickness.si * section.width.si,
  }));
  return [{ kind: "volume", item, use: "fasteners", volume, shares }];
}
