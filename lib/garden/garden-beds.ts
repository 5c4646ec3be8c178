import { type Caution, type Problem, ProblemError, type Remark } from "../check/index.ts";
import type { PriceLine } from "../cost/index.ts";
import { requireShape } from "../measure/shape.ts";
import { buriedLines, cautionsForWall, leadInOldSoil } from "../safety/index.ts";
import type { TableReading } from "../table/index.ts";
import { assumedDepth } from "./assumed-depth.ts";
import type { Bed } from "./bed.ts";
import { requireReading } from "./checks.ts";
import { type FrameChoices, frameChoices } from "./frame-choices.ts";
import { namesOf } from "./names-of.ts";
import type { BedSpec } from "./read-beds.ts";
import { priceRows } from "./shapes.ts";
import { timberOf } from "./timber-of.ts";
import { completeBed } from "./to-bed.ts";

/** The beds of a garden, complete. */
export interface GardenBeds {
  readonly beds: readonly Bed[];
  /** How many were written: "13 of 14 beds". */
  readonly given: number;
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
}

/**
 * Makes all beds of a table complete. A bed whose fields do not agree (boards that leave no room)
 * is left out, with the problem at its row. A bed without a timber takes the only one priced for its
 * section, or the choice where there are several.
 *
 * @param reading the beds as `readBeds` gives them
 * @param choices for what is blank; default: `frameChoices()`
 * @param prices the price list's lines; default: none, and timbers stay open
 * @rule a filled field wins, a blank one takes the choice; wall = courses x dressed width; depth of soil = wall - 1 in bark - 1 in free
 * @source common practice
 * @example
 * gardenBeds(readBeds(readCsv("bed,length,width\nA,8 ft,1 in", "beds"))).problems.length // => 1
 */
export function gardenBeds(
  reading: TableReading<BedSpec>,
  choices: Partial<FrameChoices> = {},
  prices: readonly PriceLine[] = [],
): GardenBeds {
  requireReading(reading, ["reading"], "beds");
  requireShape(prices, priceRows, ["prices"]);
  const chosen = frameChoices(choices);
  const timber = timberOf(prices, chosen.timber);
  const beds: Bed[] = [];
  const problems: Problem[] = [...reading.problems];
  const remarks = new Map(reading.remarks.map((remark) => [remark.text, remark]));
  for (const spec of reading.rows) {
    try {
      const bed = completeBed(spec, chosen);
      const taken = bed.timber ?? timber(bed.section);
      beds.push(taken === undefined ? bed : { ...bed, timber: taken });
      if (bed.timber === undefined && taken !== undefined) {
        const text = `${bed.section.name} boards of beds that name no timber are taken as ${taken}.`;
        remarks.set(text, { path: [reading.table, "timber"], text });
      }
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      problems.push(...error.problems.map((problem) => atRow(problem, spec, reading.table)));
    }
  }
  return {
    beds,
    given: reading.given,
    problems,
    remarks: [...remarks.values()],
    cautions: cautionsOf(beds),
  };
}

const columnOfField: Readonly<Record<string, string>> = {
  soilDepth: "soil_depth",
  depthNow: "depth_now",
  capReach: "cap",
  stakeSection: "stakes",
  stakeLength: "stakes",
};

function atRow(problem: Problem, spec: BedSpec, table: string): Problem {
  const field = String(problem.path[1] ?? "bed");
  const column = columnOfField[field] ?? field;
  return { ...problem, path: [table, ...(spec.row === undefined ? [] : [spec.row]), column] };
}

function cautionsOf(beds: readonly Bed[]): Caution[] {
  const walls = beds.flatMap((bed) => cautionsForWall(bed.wallHeight, { because: bed.name }));
  const old = beds.filter((bed) => bed.built !== undefined && bed.depthNow.si > 0);
  const assumed = beds.filter((bed) => bed.assumed.length > 0).map((bed) => bed.name);
  const staked = beds.filter((bed) => bed.stakes > 0).map((bed) => bed.name);
  return [
    ...walls,
    ...(old.length > 0 ? [leadInOldSoil({ because: namesOf(old.map((bed) => bed.name)) })] : []),
    ...(staked.length > 0 ? [buriedLines({ because: `stakes of ${namesOf(staked)}` })] : []),
    ...(assumed.length > 0 ? [assumedDepth(namesOf(assumed))] : []),
  ];
}
