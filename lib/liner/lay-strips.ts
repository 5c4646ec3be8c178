// Plain metres in here: strips laid on rolls, along or across. Strips are taken highest first, each
// on the first roll with room; a strip cut along the roll leaves lanes beside it for others.

/** Like loops to be lined: round the inside, height of the strip, how many beds. */
export interface Loop {
  readonly perimeterM: number;
  readonly heightM: number;
  readonly count: number;
}

export interface Rolls {
  readonly rolls: number;
  /** Joins of one bed of each loop, in the order given. */
  readonly joins: readonly number[];
}

const hairM = 1e-6;

/** Pieces a loop takes when none is longer than `mostM`; each piece carries one lap. */
function piecesFor(perimeterM: number, mostM: number, lapM: number): number {
  return Math.max(1, Math.ceil((perimeterM - hairM) / (mostM - lapM)));
}

/** Strips cut along the roll, or `null` where a strip is higher than the roll is wide. */
export function layAlong(
  loops: readonly Loop[],
  roll: { widthM: number; lengthM: number },
  lapM: number,
): Rolls | null {
  if (roll.lengthM <= lapM + hairM) return null;
  if (loops.some((loop) => loop.heightM > roll.widthM + hairM)) return null;
  const joins = loops.map((loop) => piecesFor(loop.perimeterM, roll.lengthM, lapM));
  const strips = loops
    .flatMap((loop, at) => {
      const pieces = joins[at] ?? 1;
      const lengthM = loop.perimeterM / pieces + lapM;
      return Array.from({ length: pieces * loop.count }, () => ({
        lengthM,
        heightM: loop.heightM,
      }));
    })
    .sort((a, b) => b.heightM - a.heightM || b.lengthM - a.lengthM);
  // Lanes too low or too short for any strip are not kept, so that many beds stay quick.
  const least = {
    heightM: Math.min(...loops.map((loop) => loop.heightM)),
    lengthM: strips.reduce((length, strip) => Math.min(length, strip.lengthM), Infinity),
  };
  const useful = (lane: Lane) =>
    lane.heightM >= least.heightM - hairM && lane.leftM >= least.lengthM - hairM;
  let lanes: Lane[] = [];
  const rollsLeftM: number[] = [];
  for (const strip of strips) {
    const lane = bestLane(lanes, strip);
    if (lane !== undefined) {
      lane.leftM -= strip.lengthM;
      if (!useful(lane)) lanes = lanes.filter((other) => other !== lane);
      continue;
    }
    const at = rollsLeftM.findIndex((leftM) => leftM >= strip.lengthM - hairM);
    const leftM = at < 0 ? roll.lengthM : (rollsLeftM[at] ?? 0);
    if (at < 0) rollsLeftM.push(leftM - strip.lengthM);
    else rollsLeftM[at] = leftM - strip.lengthM;
    lanes.push(...lanesBeside(strip, roll.widthM).filter(useful));
  }
  return { rolls: rollsLeftM.length, joins };
}

interface Lane {
  readonly heightM: number;
  leftM: number;
}

/** The open lane a strip fits into that is lowest, and of those the shortest. */
function bestLane(
  lanes: readonly Lane[],
  strip: { readonly lengthM: number; readonly heightM: number },
): Lane | undefined {
  let best: Lane | undefined;
  for (const lane of lanes) {
    if (lane.heightM < strip.heightM - hairM || lane.leftM < strip.lengthM - hairM) continue;
    if (best === undefined || lane.heightM < best.heightM - hairM) best = lane;
    else if (lane.heightM <= best.heightM + hairM && lane.leftM < best.leftM) best = lane;
  }
  return best;
}

/** The lanes beside a strip just cut: of its own height as often as they fit, then the rest. */
function lanesBeside(
  strip: { readonly lengthM: number; readonly heightM: number },
  widthM: number,
): readonly Lane[] {
  const fitting = Math.floor(widthM / strip.heightM + hairM);
  const restM = widthM - fitting * strip.heightM;
  const beside = Array.from({ length: fitting - 1 }, () => ({
    heightM: strip.heightM,
    leftM: strip.lengthM,
  }));
  return [...beside, { heightM: restM, leftM: strip.lengthM }];
}

/** Strips cut across the roll, or `null` where the roll is no wider than a lap or too short. */
export function layAcross(
  loops: readonly Loop[],
  roll: { widthM: number; lengthM: number },
  lapM: number,
): Rolls | null {
  if (roll.widthM <= lapM + hairM) return null;
  if (loops.some((loop) => loop.heightM > roll.lengthM + hairM)) return null;
  const joins = loops.map((loop) => piecesFor(loop.perimeterM, roll.widthM, lapM));
  const pieces = loops
    .map(({ heightM, count }, at) => ({ heightM, count: (joins[at] ?? 1) * count }))
    .sort((a, b) => b.heightM - a.heightM);
  const rollsLeftM: number[] = [];
  for (const { heightM, count } of pieces) {
    let left = count;
    const fitting = (leftM: number) => Math.min(left, Math.floor((leftM + hairM) / heightM));
    rollsLeftM.forEach((leftM, at) => {
      const taken = fitting(leftM);
      rollsLeftM[at] = leftM - taken * heightM;
      left -= taken;
    });
    while (left > 0) {
      const taken = fitting(roll.lengthM);
      rollsLeftM.push(roll.lengthM - taken * heightM);
      left -= taken;
    }
  }
  return { rolls: rollsLeftM.length, joins };
}
