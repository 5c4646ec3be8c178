import { highsSolver } from "../../build/highs-solver.ts";
import { type BuyingPlan, firstFitBuying, planBuying, type Solve } from "../../lib/index.ts";
import type { BuyingSeeds } from "./buying.ts";
import { workedMs } from "./clock.ts";
import { type GardenKind, gardenKinds, gardenToBuy } from "./gardens-to-buy.ts";
import { columns, percent, spread } from "./statistics.ts";

// A person waits so long; the plan is hardly cheaper later.
const seconds = 3;

interface Saved {
  /** Of what first fit pays in all. */
  readonly share: number;
  readonly dollars: number;
  /** Boards bought fewer; negative where more, shorter ones are cheaper. */
  readonly boards: number;
}

/** The best plan after so many seconds at most. */
async function bestPlan(
  problem: Parameters<typeof planBuying>[0],
  solve: Solve,
): Promise<BuyingPlan | undefined> {
  const until = workedMs() + seconds * 1000;
  const signal = {
    get aborted() {
      return workedMs() > until;
    },
  };
  let best: BuyingPlan | undefined;
  const improved = (plan: BuyingPlan): void => {
    best = plan;
  };
  return planBuying(problem, { solve, signal, improved }).catch((error: unknown) => {
    if (error instanceof Error && error.name === "AbortError") return best;
    throw error;
  });
}

async function savedIn(
  kind: GardenKind,
  { seeds, solve }: { readonly seeds: number; readonly solve: Solve },
): Promise<Saved[]> {
  const saved: Saved[] = [];
  for (let seed = 1; seed <= seeds; seed += 1) {
    const problem = gardenToBuy(kind, seed);
    const byHand = firstFitBuying(problem);
    const plan = await bestPlan(problem, solve);
    if (byHand === null || plan === undefined) continue;
    const dollars = byHand.total.si - plan.total.si;
    const boards = byHand.boards - plan.boards.boughtCount;
    saved.push({ share: dollars / byHand.total.si, dollars, boards });
  }
  return saved;
}

/** Median, least and most of values, as printed. */
function range(values: readonly number[], print: (value: number) => string): string {
  const { median, worst } = spread(values);
  return `${print(median)} (${print(Math.min(...values))} to ${print(worst)})`;
}

const dollarsOf = (value: number) => `${value < 0 ? "-" : ""}$${Math.abs(value).toFixed(2)}`;

/**
 * Money and boards that the plan saves against buying by hand: first fit, one length for each use, at
 * the yard where that is cheapest. Only gardens without limits: by hand there is often no plan else.
 */
export async function saving({ seeds }: BuyingSeeds): Promise<void> {
  console.log(
    `saving: against first fit at the better single yard, ${seeds} gardens of each kind, planned for ${seconds} s at most; median (least to most)`,
  );
  const solve = await highsSolver();
  const rows: string[][] = [["garden", "of the total", "money", "boards", "gardens"]];
  for (const kind of gardenKinds.filter(({ limits }) => !limits)) {
    const saved = await savedIn(kind, { seeds, solve });
    rows.push([
      kind.name,
      range(
        saved.map(({ share }) => share),
        percent,
      ),
      range(
        saved.map(({ dollars }) => dollars),
        dollarsOf,
      ),
      range(
        saved.map(({ boards }) => boards),
        String,
      ),
      String(saved.length),
    ]);
  }
  console.log(columns(rows));
}
