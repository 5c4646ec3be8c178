import { aloneModel } from "./cut-model.ts";
import type { CutPart, Pattern, PatternUse } from "./cut-part.ts";
import { cutProgram } from "./cut-program.ts";
import { firstFit } from "./first-fit.ts";
import { nearPatterns } from "./near-patterns.ts";
import type { Pacer } from "./pacer.ts";
import { gathered } from "./pattern-cost.ts";
import { type Relaxed, relax } from "./relaxed.ts";
import { isDone, restOfPart, stillNeeded, withoutDone } from "./rest-of-part.ts";
import type { Solve } from "./solver.ts";

/** How a plan is dived for. */
export interface DiveOptions {
  readonly solve: Solve;
  readonly pacer: Pacer;
  /** Which share of the begun boards is settled at a time. */
  readonly share: number;
  /** A rest of so many pieces is planned exactly. */
  readonly restPieces: number;
  /** Work it may take. */
  readonly work: number;
  /** The part with all boards there are, where the dive is to keep to some; the last rest may use them. */
  readonly whole?: CutPart;
}

/** The patterns to settle on next: all whole boards of the relaxed plan, else its largest shares. */
function nextFixed(part: CutPart, relaxed: Relaxed, share: number): Pattern[] {
  const patterns = relaxed.patterns[0] ?? [];
  const shares = relaxed.shares[0] ?? [];
  const fixed: Pattern[] = [];
  let rest = part;
  const settle = (pattern: Pattern): boolean => {
    const own = stillNeeded(rest, pattern);
    if (!own) return false;
    fixed.push(own);
    rest = restOfPart(rest, [own]);
    return true;
  };
  for (const [i, pattern] of patterns.entries()) {
    for (let n = Math.floor((shares[i] ?? 0) + 1e-6); n > 0; n--) settle(pattern);
  }
  if (fixed.length > 0) return fixed;
  const order = patterns
    .map((pattern, i) => ({ pattern, share: shares[i] ?? 0 }))
    .filter((each) => each.share > 1e-6)
    .sort((a, b) => b.share - a.share);
  for (const { pattern } of order) {
    const whole = pattern.counts.every((count, i) => count <= (rest.classes[i]?.demand ?? 0));
    if (fixed.length > 0 && !whole) continue;
    settle(pattern);
    if (fixed.length >= Math.max(1, order.length * share)) break;
  }
  return fixed;
}

const piecesIn = (part: CutPart) => part.classes.reduce((sum, each) => sum + each.demand, 0);

/** The best plan of a small rest over the patterns near its floor. */
async function planRest(
  part: CutPart,
  relaxed: Relaxed,
  { solve, pacer }: DiveOptions,
): Promise<readonly PatternUse[] | undefined> {
  const { worth } = relaxed;
  const hand = firstFit(part);
  for (let lossAtMost = worth.floor * 0.2; lossAtMost > worth.floor * 1e-3; lossAtMost /= 3) {
    const options = { worth, part: 0, lossAtMost, patternsAtMost: 400, stepsAtMost: 3e5 };
    const near = nearPatterns(part, { ...options, alone: true });
    if (!near) continue;
    await pacer.spend(near.steps * 4);
    const pool = (relaxed.patterns[0] ?? []).filter((_, i) => (relaxed.shares[0]?.[i] ?? 0) > 1e-7);
    const start = hand?.map((use) => use.pattern) ?? [];
    const list = gathered([...near.patterns, ...pool, ...start]).map((use) => use.pattern);
    const { program, read } = cutProgram(aloneModel(part), [list]);
    const solution = await solve(program, { seconds: 0.5, gap: 0.01 });
    if (solution.values.length > 0) return read(solution.values).uses[0];
    break;
  }
  return hand;
}

/** Settles on the surest boards of the relaxed plan, plans the rest again, and so on to the end. */
export async function dive(
  part: CutPart,
  relaxed: Relaxed,
  options: DiveOptions,
): Promise<PatternUse[] | undefined> {
  const { pacer, share, restPieces, work } = options;
  const until = pacer.spent + work;
  const done: Pattern[] = [];
  let rest = part;
  let now = relaxed;
  for (let round = 0; round < 300; round++) {
    const fixed = nextFixed(rest, now, share);
    if (fixed.length === 0) return undefined;
    done.push(...fixed);
    rest = restOfPart(rest, fixed);
    if (isDone(rest)) return gathered(done);
    const last = piecesIn(rest) <= restPieces || pacer.spent > until;
    const kept = (now.patterns[0] ?? []).filter(
      (_, i, all) => (now.shares[0]?.[i] ?? 0) > 1e-9 || i >= all.length - 3 * rest.classes.length,
    );
    const start = kept.flatMap((pattern) => stillNeeded(rest, pattern) ?? []);
    const slim = withoutDone(last && options.whole ? restOfPart(options.whole, done) : rest);
    now = await relax(aloneModel(slim.part), { pacer, start: [start.map(slim.narrow)] });
    if (!now.feasible) return undefined;
    if (last) {
      const others = await planRest(slim.part, now, options);
      const boards = others?.flatMap(({ pattern, boards: n }) =>
        Array.from({ length: n }, () => slim.widen(pattern)),
      );
      return boards && gathered([...done, ...boards]);
    }
    now = { ...now, patterns: [(now.patterns[0] ?? []).map(slim.widen)] };
  }
  return undefined;
}
