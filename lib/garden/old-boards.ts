import { type Caution, requireRecord } from "../check/index.ts";
import { framePieces } from "../lumber/index.ts";
import {
  Checks,
  type Density,
  type Length,
  type Mass,
  massDimension,
  metre,
  quantity,
  times,
} from "../measure/index.ts";
import { cautionsForOldBoard, mayHoldArsenic } from "../safety/index.ts";
import type { TableReading } from "../table/index.ts";
import type { Bed } from "./bed.ts";
import { checkWoodDensity, requireBeds, requireReading } from "./checks.ts";
import { namesOf } from "./names-of.ts";
import type { KeptBoards } from "./read-on-hand.ts";

/** What was kept, and what wood weighs. */
export interface OldBoardsOptions {
  /** The boards kept, which need not be carried away. Default: none. */
  readonly onHand?: TableReading<KeptBoards>;
  /** What the old boards weigh; without it no mass is given. */
  readonly woodDensity?: Density;
}

/** The boards of the beds that are taken down. */
export interface OldBoards {
  readonly beds: readonly string[];
  /** All boards of their walls, taken as the new ones are. */
  readonly length: Length;
  /** What of it was kept: never more than there was. */
  readonly kept: Length;
  /** What must be carried away. */
  readonly out: Length;
  /** Of what must be carried away; null where no density was given. */
  readonly mass: Mass | null;
  readonly cautions: readonly Caution[];
}

/**
 * The old boards that come out: the walls of all beds that have a year built, reckoned as their new
 * walls are, less the boards that were kept.
 *
 * @param beds complete beds
 * @param options `onHand`, default none; `woodDensity`, default no mass
 * @rule length of the walls' pieces of beds already built, less the length of the boards kept
 * @source common practice
 * @example
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot), built: { year: 2010 } });
 * oldBoards([bed]).out // => 23 ft 6 in
 */
export function oldBoards(beds: readonly Bed[], options: OldBoardsOptions = {}): OldBoards {
  requireBeds(beds);
  requireRecord(options, ["options"]);
  const { onHand, woodDensity } = options;
  if (onHand !== undefined) requireReading(onHand, ["options", "onHand"]);
  const checks = new Checks();
  checkWoodDensity(checks, woodDensity, ["options", "woodDensity"]);
  checks.done();
  const old = beds.filter((bed) => bed.built !== undefined);
  const walls = old.flatMap((bed) => {
    const areaM2 = bed.section.thickness.si * bed.section.width.si;
    return framePieces(bed)
      .filter(({ part }) => part === "side" || part === "end")
      .map((piece) => ({ lengthM: piece.length.si * piece.count, areaM2 }));
  });
  const lengthM = walls.reduce((sum, wall) => sum + wall.lengthM, 0);
  const volumeM3 = walls.reduce((sum, wall) => sum + wall.lengthM * wall.areaM2, 0);
  const onHandM = (onHand?.rows ?? []).reduce((sum, row) => sum + row.length.si * row.count, 0);
  const keptM = Math.min(lengthM, onHandM);
  const outShare = lengthM > 0 ? (lengthM - keptM) / lengthM : 0;
  return {
    beds: old.map((bed) => bed.name),
    length: times(metre, lengthM),
    kept: times(metre, keptM),
    out: times(metre, lengthM - keptM),
    mass:
      woodDensity === undefined
        ? null
        : quantity(volumeM3 * outShare * woodDensity.si, massDimension),
    cautions: old.length === 0 ? [] : cautionsFor(old),
  };
}

/** Of the oldest bed, naming all beds that may be of the same wood. */
function cautionsFor(old: readonly Bed[]): readonly Caution[] {
  const suspect = old.filter(
    ({ built }) => built !== undefined && mayHoldArsenic({ boughtYear: built.year }),
  );
  const named = suspect.length > 0 ? suspect : old;
  const boughtYear = Math.min(...named.map(({ built }) => built?.year ?? 2200));
  const because = `old boards of ${namesOf(named.map((bed) => bed.name))}`;
  return cautionsForOldBoard({ boughtYear, sawn: false, because });
}
