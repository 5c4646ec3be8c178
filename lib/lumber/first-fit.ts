import { type CuttingGroup, fullSizes, type Pattern, type PatternUse } from "./cutting-group.ts";

interface OpenBoard {
  kind: number;
  restU: number;
  readonly counts: number[];
}

function put(board: OpenBoard, place: number, sizeU: number): void {
  board.restU -= sizeU;
  board.counts[place] = (board.counts[place] ?? 0) + 1;
}

/** Each board changed to the cheapest that still holds what lies on it. */
function shrink(group: CuttingGroup, boards: readonly OpenBoard[]): void {
  for (const board of boards) {
    const now = group.kinds[board.kind];
    if (!now || now.kept) continue;
    const used = now.capacityU - board.restU;
    group.kinds.forEach((kind, i) => {
      const current = group.kinds[board.kind];
      if (!current || kind.kept || kind.supply !== Number.POSITIVE_INFINITY) return;
      if (kind.capacityU >= used && kind.cost < current.cost) board.kind = i;
    });
  }
}

/**
 * The rule people use by hand: longest piece first, each on the first board with room, kept boards
 * before new ones of one length. Gives undefined where that length has no room for a piece.
 */
function fillOneLength(group: CuttingGroup, buy: number): PatternUse[] | undefined {
  const sizes = fullSizes(group);
  const boards: OpenBoard[] = group.kinds
    .flatMap((kind, i) =>
      kind.kept ? Array.from({ length: kind.supply }, () => ({ i, restU: kind.capacityU })) : [],
    )
    .sort((a, b) => a.restU - b.restU)
    .map(({ i, restU }) => ({ kind: i, restU, counts: sizes.map(() => 0) }));
  const fresh = group.kinds[buy];
  // Boards before this one are too full for the class at hand, and stay so.
  for (const [place, { sizeU, demand }] of group.classes.entries()) {
    let from = 0;
    for (let n = 0; n < demand; n++) {
      while (from < boards.length && (boards[from]?.restU ?? 0) < sizeU) from++;
      let board = boards[from];
      if (!board) {
        if (!fresh || fresh.capacityU < sizeU) return undefined;
        board = { kind: buy, restU: fresh.capacityU, counts: sizes.map(() => 0) };
        boards.push(board);
      }
      put(board, place, sizeU);
    }
  }
  const used = boards.filter((board) => board.counts.some((count) => count > 0));
  shrink(group, used);
  return gathered(used.map(({ kind, counts }) => ({ kind, counts, tight: false })));
}

export const patternKey = ({ kind, counts }: Pattern): string => `${kind}:${counts.join()}`;

/** Equal patterns as one, with the number of boards. */
export function gathered(patterns: readonly Pattern[]): PatternUse[] {
  const uses = new Map<string, { pattern: Pattern; boards: number }>();
  for (const pattern of patterns) {
    const key = patternKey(pattern);
    const use = uses.get(key);
    if (use) use.boards++;
    else uses.set(key, { pattern, boards: 1 });
  }
  return [...uses.values()];
}

export function costOf(group: CuttingGroup, uses: readonly PatternUse[]): number {
  return uses.reduce(
    (sum, use) => sum + use.boards * (group.kinds[use.pattern.kind]?.cost ?? 0),
    0,
  );
}

/** The cheapest plan by first fit over all lengths to buy, or undefined where none works. */
export function firstFit(group: CuttingGroup): PatternUse[] | undefined {
  const lengths = group.kinds.flatMap((kind, i) =>
    kind.supply === Number.POSITIVE_INFINITY ? [i] : [],
  );
  const plans = (lengths.length > 0 ? lengths : [-1])
    .map((buy) => fillOneLength(group, buy))
    .filter((plan) => plan !== undefined);
  return plans.sort((a, b) => costOf(group, a) - costOf(group, b))[0];
}
