import type { CutPart, Pattern, PatternUse } from "./cut-part.ts";
import { firstFit } from "./first-fit.ts";
import { gathered } from "./pattern-cost.ts";
import { isDone, restOfPart, stillNeeded } from "./rest-of-part.ts";

const mostTries = 24;

/**
 * Plans near a relaxed one: all whole boards of it, then more and more of the begun ones, the most
 * begun first; what is still missing goes by first fit.
 */
export function roundedOff(
  part: CutPart,
  patterns: readonly Pattern[],
  shares: readonly number[],
): PatternUse[][] {
  const begun = patterns
    .map((pattern, i) => ({ pattern, share: shares[i] ?? 0 }))
    .filter(({ share }) => share > 1e-6)
    .map(({ pattern, share }) => ({ pattern, share, part: share - Math.floor(share + 1e-6) }))
    .sort((a, b) => b.part - a.part);
  const fixed: Pattern[] = [];
  let rest = part;
  const settle = (pattern: Pattern): void => {
    const own = stillNeeded(rest, pattern);
    if (!own) return;
    fixed.push(own);
    rest = restOfPart(rest, [own]);
  };
  for (const { pattern, share } of begun) {
    for (let n = Math.floor(share + 1e-6); n > 0; n--) settle(pattern);
  }
  const plans: PatternUse[][] = [];
  const finish = (): void => {
    const others = isDone(rest) ? [] : firstFit(rest);
    if (!others) return;
    const boards = others.flatMap(({ pattern, boards: n }) =>
      Array.from({ length: n }, () => pattern),
    );
    plans.push(gathered([...fixed, ...boards]));
  };
  finish();
  for (const { pattern } of begun.slice(0, mostTries)) {
    settle(pattern);
    finish();
    if (isDone(rest)) break;
  }
  return plans;
}
