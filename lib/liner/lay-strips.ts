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
  const lanes: { heightM: number; leftM: number }[] = [];
  const rollsLeftM: number[] = [];
  for (const strip of strips) {
    if (takeLane(lanes, strip)) continue;
    const at = rollsLeftM.findIndex((leftM) => leftM >= strip.lengthM - hairM);
    const leftM = at < 0 ? roll.lengthM : (rollsLeftM[at] ?? 0);
    if (at < 0) rollsLeftM.push(leftM - strip.lengthM);
    else rollsLeftM[at] = leftM - strip.lengthM;
    openLanes(lanes, strip, roll.widthM);
  }
  return { rolls: rollsLeftM.length, joins };
}

/** Cuts the strip from the open lane that is left with least; says whether there was one. */
function takeLane(
  lanes: { heightM: number; leftM: number }[],
  strip: { lengthM: number; heightM: number },
): boolean {
  let best: { heightM: number; leftM: number } | undefined;
  for (const lane of lanes) {
    if (lane.heightM < strip.heightM - hairM || lane.leftM < strip.lengthM - hairM) continue;
    if (best === undefined || lane.heightM < best.heightM - hairM) best = lane;
    else if (lane.heightM <= best.heightM + hairM && lane.leftM < best.leftM) best = lane;
  }
  if (best === undefined) return false;
  best.leftM -= strip.lengthM;
  // A lane used up is dropped, so that many beds stay quick.
  if (best.leftM < hairM) lanes.splice(lanes.indexOf(best), 1);
  return true;
}

/** The lanes beside a strip just cut: of its own height as often as they fit, then the rest. */
function openLanes(
  lanes: { heightM: number; leftM: number }[],
  strip: { lengthM: number; heightM: number },
  widthM: number,
): void {
  const fitting = Math.floor(widthM / strip.heightM + hairM);
  for (let lane = 1; lane < fitting; lane++) {
    lanes.push({ heightM: strip.heightM, leftM: strip.lengthM });
  }
  const restM = widthM - fitting * strip.heightM;
  if (restM > hairM) lanes.push({ heightM: restM, leftM: strip.lengthM });
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
