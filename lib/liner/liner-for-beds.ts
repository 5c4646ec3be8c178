import {
  type Caution,
  type Problem,
  ProblemError,
  requireRecord,
  requireRecords,
} from "../check/index.ts";
import {
  type Area,
  Checks,
  foot,
  inch,
  type Length,
  plus,
  printQuantity,
  sumOf,
  times,
} from "../measure/index.ts";
import { plasticAndDrainage } from "../safety/index.ts";
import { type Loop, layAcross, layAlong, type Rolls } from "./lay-strips.ts";
import {
  type LinedFrame,
  type LinerCutting,
  type LinerStrip,
  type LinerStripOptions,
  linerStrip,
} from "./liner-strip.ts";
import { staples } from "./staples.ts";

/** Alike beds to be lined. */
export interface LinedBed extends LinedFrame {
  /** As on its stake; for the working. */
  readonly name?: string;
  /** How many alike. Default: 1. */
  readonly count?: number;
}

/** How beds are lined, and the roll. */
export interface LinerOptions extends LinerCutting {
  /** The roll as sold. */
  readonly roll: { readonly width: Length; readonly length: Length };
  /** Distance between staples. Default: 12 in. */
  readonly stapleSpacing?: Length;
}

/** The liner of one bed, or of alike beds. */
export interface BedLiner extends LinerStrip {
  readonly name: string;
  readonly count: number;
  /** Joins of each bed as cut: 1 where the strip is in one piece. */
  readonly joins: number;
  /** Sheet of each bed as cut: perimeter and a lap for each join. */
  readonly sheetLength: Length;
  readonly staples: number;
}

/** The liner of several beds. */
export interface LinerPlan {
  /** How strips are cut from the roll, or `none` where there is nothing to line. */
  readonly way: "along" | "across" | "none";
  readonly rolls: number;
  readonly beds: readonly BedLiner[];
  /** Of all beds, as cut. */
  readonly sheetLength: Length;
  readonly sheetArea: Area;
  readonly joins: number;
  readonly staples: number;
  /** How to hang it, a sentence each. */
  readonly advice: readonly string[];
  readonly cautions: readonly Caution[];
}

/**
 * The liner of several beds: strips, joins, staples and rolls. Strips are cut along or across the
 * roll, whichever needs fewer rolls (then fewer joins, then along), highest strips first; lanes
 * beside a strip go on to other beds.
 *
 * @param beds frames or beds with how many are alike (0 to 10,000), 2,000 kinds at most
 * @param options `roll`: width 6 in to 40 ft, length 3 to 1,000 ft; `overTop`, `underEdge`, `lap` as
 *   for `linerStrip`; `cutAlong`, default no; `stapleSpacing`: 1 to 36 in, default 12 in
 * @returns rolls, way of cutting, each bed's strip, and totals
 * @throws ProblemError where a value is of the wrong kind or out of its range, or no strip can be
 *   cut from the roll either way
 * @rule Sheet of a bed = inside perimeter + one lap a join; the way with fewer rolls.
 * @source nrel-sws-2017, common practice
 * @example
 * linerForBeds([{ length: times(foot, 8), width: times(foot, 4), courses: 1, count: 2, section: { thickness: times(inch, 1.5), width: times(inch, 11.25) } }], { roll: { width: times(foot, 2), length: times(foot, 50) } }).rolls // => 1
 */
export function linerForBeds(beds: readonly LinedBed[], options: LinerOptions): LinerPlan {
  requireRecords(beds, ["beds"]);
  requireRecord(options, ["options"]);
  requireRecord(options.roll, ["roll"]);
  const { roll, stapleSpacing = foot, cutAlong = false, ...strip } = options;
  new Checks()
    .quantity(roll.width, "length", ["roll", "width"], {
      min: times(inch, 6),
      max: times(foot, 40),
    })
    .quantity(roll.length, "length", ["roll", "length"], {
      min: times(foot, 3),
      max: times(foot, 1000),
    })
    .quantity(strip.lap ?? foot, "length", ["lap"], { min: times(inch, 6), max: times(foot, 4) })
    .quantity(stapleSpacing, "length", ["stapleSpacing"], { min: inch, max: times(foot, 3) })
    .choice(cutAlong, [true, false], ["cutAlong"])
    .done();
  const strips = stripsOf(beds, strip);
  const loops: Loop[] = strips.map((made, at) => ({
    perimeterM: made.perimeter.si,
    heightM: made.height.si,
    count: beds[at]?.count ?? 1,
  }));
  const { way, laid } = betterWay(loops, { roll, lap: strips[0]?.lap ?? foot, cutAlong });
  const lined = strips.map((made, at): BedLiner => {
    const joins = laid.joins[at] ?? 1;
    return {
      ...made,
      name: beds[at]?.name ?? `bed ${at + 1}`,
      count: beds[at]?.count ?? 1,
      joins,
      sheetLength: plus(made.perimeter, times(made.lap, joins)),
      staples: staples(made.perimeter, { spacing: stapleSpacing }),
    };
  });
  const count = (pick: (bed: BedLiner) => number) =>
    lined.reduce((sum, bed) => sum + bed.count * pick(bed), 0);
  return {
    way,
    rolls: laid.rolls,
    beds: lined,
    sheetLength: sumOf(
      lined.map((bed) => times(bed.sheetLength, bed.count)),
      times(foot, 0),
    ),
    sheetArea: sumOf(
      lined.map((bed) => times(times(bed.sheetLength, bed.height), bed.count)),
      times(times(foot, foot), 0),
    ),
    joins: count((bed) => bed.joins),
    staples: count((bed) => bed.staples),
    advice: hanging,
    cautions: lined.some((bed) => bed.count > 0) ? [plasticAndDrainage({ because: "liner" })] : [],
  };
}

/** The strip of each bed; the problems of all beds at once, each with its bed. */
function stripsOf(beds: readonly LinedBed[], options: LinerStripOptions): readonly LinerStrip[] {
  const problems: Problem[] = [];
  const strips = beds.flatMap((bed, at) => {
    const checks = new Checks().count(bed.count ?? 1, ["count"], { max: 10_000 });
    const made = checks.attempt(() => linerStrip(bed, options));
    for (const problem of checks.problems) {
      problems.push({ ...problem, path: ["beds", at + 1, ...problem.path] });
    }
    return made === undefined ? [] : [made];
  });
  if (problems.length > 0) throw new ProblemError(problems);
  return strips;
}

const hanging: readonly string[] = [
  "Hang the sheet on the soil side, over the top edge and under the lower edge, and leave the outer face open to dry.",
  "Turn it under the boards, never inward: an inward flap or a fold holds water against the wood.",
  "Lap joins away from the corners, the upper sheet outside the lower, and trim what is over.",
  "Staple above the soil line only; below it every hole lets decay in.",
];

function betterWay(
  loops: readonly Loop[],
  { roll, lap, cutAlong }: { roll: LinerOptions["roll"]; lap: Length; cutAlong: boolean },
): { readonly way: LinerPlan["way"]; readonly laid: Rolls } {
  if (loops.every((loop) => loop.count === 0)) {
    return { way: "none", laid: { rolls: 0, joins: loops.map(() => 1) } };
  }
  const counted = loops.filter((loop) => loop.count > 0);
  const sheet = { widthM: roll.width.si, lengthM: roll.length.si };
  const along = layAlong(loops, sheet, lap.si);
  const across = cutAlong && along !== null ? null : layAcross(loops, sheet, lap.si);
  if (along === null && across === null) throw new ProblemError([tooNarrow(counted, roll, lap)]);
  if (across === null) return { way: "along", laid: along as Rolls };
  if (along === null) return { way: "across", laid: across };
  const better =
    across.rolls < along.rolls ||
    (across.rolls === along.rolls && joinsOf(across, loops) < joinsOf(along, loops));
  return better ? { way: "across", laid: across } : { way: "along", laid: along };
}

function joinsOf(laid: Rolls, loops: readonly Loop[]): number {
  return laid.joins.reduce((sum, joins, at) => sum + joins * (loops[at]?.count ?? 0), 0);
}

function tooNarrow(loops: readonly Loop[], roll: LinerOptions["roll"], lap: Length): Problem {
  const highest = times(foot, Math.max(...loops.map((loop) => loop.heightM)) / foot.si);
  return {
    code: "no-fit",
    path: ["roll", "width"],
    allowed: `at least the highest strip, ${printQuantity(highest)}, or more than the lap, ${printQuantity(lap)}`,
    received: printQuantity(roll.width),
    remedy: "Choose a wider roll or a smaller lap.",
  };
}
