import { highsSolver } from "../../build/highs-solver.ts";
import {
  type BuyingPlan,
  type BuyingProblem,
  planBuying,
  type Solve,
  validateBuyingPlan,
} from "../../lib/index.ts";
import { clockWords, workedMs } from "./clock.ts";
import { fullTotal } from "./full-formulation.ts";
import { type GardenKind, gardenKinds, gardenToBuy } from "./gardens-to-buy.ts";
import { columns, medianAndWorst, ms, percent, spread } from "./statistics.ts";

export interface BuyingSeeds {
  /** Gardens of seeds 1 to so many of each kind. */
  readonly seeds: number;
  /** Seconds after which planning is stopped. */
  readonly seconds: number;
}

interface Run {
  readonly seed: number;
  readonly firstMs: number;
  readonly endMs: number;
  readonly isProven: boolean;
  /** How far at most above the cheapest, by what was shown within three seconds. */
  readonly gapAt3s: number;
  readonly gap: number;
  readonly cents: number;
}

const gapOf = ({ proof }: BuyingPlan): number => (proof.kind === "within" ? proof.share : 0);

/** Plans one garden, and notes when what was shown; stopped after so many seconds. */
async function planned(
  problem: BuyingProblem,
  { solve, seed, seconds }: { readonly solve: Solve; readonly seed: number; seconds: number },
): Promise<Run> {
  const started = workedMs();
  const since = () => workedMs() - started;
  const signal = {
    get aborted() {
      return since() > seconds * 1000;
    },
  };
  const shown: { plan: BuyingPlan; atMs: number }[] = [];
  const improved = (plan: BuyingPlan): void => {
    shown.push({ plan, atMs: since() });
  };
  const ended = await planBuying(problem, { solve, signal, improved }).catch((error: unknown) => {
    if (error instanceof Error && error.name === "AbortError") return undefined;
    throw error;
  });
  const endMs = since();
  if (ended) shown.push({ plan: ended, atMs: endMs });
  const last = shown.at(-1);
  if (!last) throw new Error(`no plan of garden ${seed} within ${seconds} s`);
  const [wrong] = validateBuyingPlan(problem, last.plan);
  if (wrong) throw new Error(`garden ${seed}: the plan does not hold at ${wrong.path.join(" ")}`);
  // What comes after the proof makes the cutting easier, and costs the same.
  const proven = shown.find(({ plan }) => plan.proof.kind === "cheapest");
  const within3s = shown.filter(({ atMs }) => atMs <= 3000).map(({ plan }) => gapOf(plan));
  return {
    seed,
    firstMs: shown[0]?.atMs ?? endMs,
    endMs: proven?.atMs ?? endMs,
    isProven: last.plan.proof.kind === "cheapest",
    gapAt3s: Math.min(1, ...within3s),
    gap: gapOf(last.plan),
    cents: Math.round(last.plan.total.si * 100),
  };
}

interface Compared {
  readonly ratio: number;
  readonly isSame: boolean;
}

// Larger gardens have patterns by the hundred thousand.
const smallEnough = { beds: 20, columnsAtMost: 20_000, seconds: 30 };

/** How many times as long the plain full formulation takes; undefined where it is too large or slow. */
async function compared(
  problem: BuyingProblem,
  { run, solve }: { readonly run: Run; readonly solve: Solve },
): Promise<Compared | undefined> {
  const started = workedMs();
  const cents = await fullTotal(problem, { solve, ...smallEnough });
  const took = workedMs() - started;
  if (cents === undefined || !run.isProven) return undefined;
  return { ratio: took / run.endMs, isSame: cents === run.cents };
}

interface Measured {
  readonly runs: readonly Run[];
  readonly full: readonly Compared[];
}

/** One kind of garden, its plans and the full formulation taking turns. */
async function measure(
  kind: GardenKind,
  { seeds, seconds, solve }: BuyingSeeds & { readonly solve: Solve },
): Promise<Measured> {
  const runs: Run[] = [];
  const full: Compared[] = [];
  for (let seed = 1; seed <= seeds; seed += 1) {
    const problem = gardenToBuy(kind, seed);
    const run = await planned(problem, { solve, seed, seconds });
    runs.push(run);
    if (kind.beds > smallEnough.beds) continue;
    const other = await compared(problem, { run, solve });
    if (other) full.push(other);
  }
  return { runs, full };
}

function rowOf(kind: GardenKind, { runs, full }: Measured): string[] {
  const proven = runs.filter(({ isProven }) => isProven);
  const ratio = (value: number) => value.toFixed(1);
  const same = full.filter(({ isSame }) => isSame).length;
  const { median, p95 } = spread(full.map((each) => each.ratio));
  return [
    kind.name,
    medianAndWorst(
      runs.map(({ firstMs }) => firstMs),
      ms,
    ),
    medianAndWorst(
      proven.map(({ endMs }) => endMs),
      ms,
    ),
    `${proven.length} of ${runs.length}`,
    medianAndWorst(
      runs.map(({ gapAt3s }) => gapAt3s),
      (share) => percent(share, 3),
    ),
    medianAndWorst(
      runs.map(({ gap }) => gap),
      (share) => percent(share, 3),
    ),
    full.length === 0
      ? "–"
      : `${ratio(median)} / ${ratio(p95)}, same cost ${same} of ${full.length}`,
  ];
}

const head = [
  "median / worst",
  "first plan",
  "until proven",
  "proven",
  "gap at 3 s",
  "gap at the end",
  "full formulation / planner (median / 95th percentile)",
];

/**
 * Time to the first plan and to the proof, and how far from the cheapest at most, over gardens of
 * several sizes; and what the plain full formulation takes with the same solver.
 */
export async function buying({ seeds, seconds }: BuyingSeeds): Promise<void> {
  console.log(
    `buying: ${seeds} gardens of each kind, two yards, 15 odd boards on hand; ${clockWords}; stopped after ${seconds} s`,
  );
  const solve = await highsSolver();
  // The solver's code is compiled at its first use.
  for (const kind of gardenKinds.slice(0, 2)) await measure(kind, { seeds: 3, seconds, solve });
  const rows: string[][] = [head];
  const slow: string[] = [];
  for (const kind of gardenKinds) {
    const measured = await measure(kind, { seeds, seconds, solve });
    rows.push(rowOf(kind, measured));
    const last = measured.runs.toSorted((a, b) => b.gap - a.gap || b.endMs - a.endMs)[0];
    if (last)
      slow.push(`${kind.name}: seed ${last.seed}, ${ms(last.endMs)}, gap ${percent(last.gap, 3)}`);
  }
  console.log(columns(rows));
  console.log(`  worst of each kind: ${slow.join("; ")}`);
}
