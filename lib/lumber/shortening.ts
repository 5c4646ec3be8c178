import { type LaidBoard, runsOf } from "./lay-out.ts";
import type { CuttingGroup } from "./make-groups.ts";

interface TightBoard {
  readonly overU: number;
  /** How many of its pieces belong to each entry. */
  readonly pieces: ReadonlyMap<number, number>;
}

function tightBoards(group: CuttingGroup, boards: readonly LaidBoard[]): TightBoard[] {
  return boards
    .flatMap((board) => runsOf(group, board))
    .flatMap((run) => {
      const filled = run.pieces.reduce(
        (sum, { place }) => sum + (group.classes[place]?.sizeU ?? 0),
        0,
      );
      const overU = filled - run.roomU;
      if (overU <= 0) return [];
      const pieces = new Map<number, number>();
      for (const { entry } of run.pieces) pieces.set(entry, (pieces.get(entry) ?? 0) + 1);
      return [{ overU, pieces }];
    });
}

/**
 * How much each entry (like pieces of one bed) is cut short, in units; entries not named stay whole.
 *
 * The plan was chosen with every piece as short as allowed, at the least cost, and among those with
 * the fewest boards that need it; a plan that needs none would have been chosen at the same cost. So
 * whatever is left over-full here saves money. On an over-full board all pieces give alike; like
 * pieces of one bed all give what the neediest of them must; then each entry in turn takes back
 * what the others have made needless. In the end no entry could be left longer alone, by as much as
 * the finest fraction in use (a sixteenth of an inch as a rule): lengths stay such as can be marked.
 */
export function shortenings(
  group: CuttingGroup,
  boards: readonly LaidBoard[],
): ReadonlyMap<number, number> {
  const tight = tightBoards(group, boards);
  const { stepU } = group;
  const stepUp = (units: number) => Math.ceil(units / stepU - 1e-9) * stepU;
  const mostU = new Map<number, number>();
  for (const each of group.classes) {
    for (const entry of each.entries) mostU.set(entry, each.sizeU - each.leastU);
  }
  const short = new Map<number, number>();
  for (const { overU, pieces } of tight) {
    const total = [...pieces.values()].reduce((sum, count) => sum + count, 0);
    const share = stepUp(overU / total);
    const give = (entry: number) => Math.min(share, mostU.get(entry) ?? 0);
    const given = [...pieces].reduce((sum, [entry, count]) => sum + count * give(entry), 0);
    for (const entry of pieces.keys()) {
      // A piece too short to give its share leaves more to the others.
      const own = given >= overU ? give(entry) : (mostU.get(entry) ?? 0);
      short.set(entry, Math.max(short.get(entry) ?? 0, own));
    }
  }
  for (const entry of [...short.keys()].sort((a, b) => a - b)) {
    let needed = 0;
    for (const { overU, pieces } of tight) {
      const own = pieces.get(entry) ?? 0;
      if (own === 0) continue;
      let others = 0;
      for (const [other, count] of pieces) {
        if (other !== entry) others += count * (short.get(other) ?? 0);
      }
      needed = Math.max(needed, stepUp((overU - others) / own));
    }
    short.set(entry, Math.max(0, Math.min(needed, mostU.get(entry) ?? 0)));
  }
  return new Map([...short].filter(([, units]) => units > 0));
}
