import { highsSolver } from "../../build/highs-solver.ts";
import {
  type BoardProblem,
  millimetre,
  money,
  planBoards,
  readSection,
  type Solve,
  times,
  validateBoardPlan,
} from "../../lib/index.ts";
import { clockWords, workedMs } from "./clock.ts";
import { type Instance, readInstances } from "./read-instances.ts";
import { ms, spread } from "./statistics.ts";

/** Boards of one length at the price of 1, no kerf: the least cost is the least number of bins. */
function boardsOf({ capacity, sizes }: Instance): BoardProblem {
  const section = readSection("2x12", { path: ["section"] });
  if (!section.ok) throw new Error("no section");
  const like = { bed: "list", part: "other", section: section.value } as const;
  const counts = new Map<number, number>();
  for (const size of sizes) counts.set(size, (counts.get(size) ?? 0) + 1);
  const pieces = [...counts].map(([size, count]) => {
    const length = times(size, millimetre);
    return { ...like, name: `size ${size}`, length, count };
  });
  const length = times(capacity, millimetre);
  const stock = [{ yard: "Alder", section: section.value, length, price: money(1) }];
  const none = times(0, millimetre);
  return { pieces, stock, kerf: none, shortfall: none };
}

interface Outcome {
  readonly boards: number;
  /** Fewer than this are proven impossible. */
  readonly bound: number;
  /** The floor that the shown values of pieces alone prove. */
  readonly floor: number;
  readonly time: number;
  readonly isProven: boolean;
}

async function outcomeOf(instance: Instance, solve: Solve): Promise<Outcome> {
  const problem = boardsOf(instance);
  const started = workedMs();
  const plan = await planBoards(problem, { solve });
  const time = workedMs() - started;
  const [wrong] = validateBoardPlan(problem, plan);
  if (wrong) throw new Error(`${instance.name}: the plan does not hold at ${wrong.path.join(" ")}`);
  const above = plan.proof.kind === "bound" ? plan.proof.above.si : 0;
  return {
    boards: plan.boughtCount,
    bound: Math.ceil(plan.boughtCount - above - 1e-6),
    floor: plan.certificate.floor.si,
    time,
    isProven: plan.proof.kind === "optimal",
  };
}

function lineOf({ name, bestKnown }: Instance, outcome: Outcome): string {
  const { boards, bound, floor, time, isProven } = outcome;
  const against = boards < bestKnown ? "fewer" : boards === bestKnown ? "as many" : "more";
  const words = [
    `${boards} boards`,
    `bound ${bound}`,
    `values of pieces prove ${floor.toFixed(3)}`,
    `the file has ${bestKnown} (${against})`,
    isProven ? "proven" : "NOT PROVEN",
  ];
  return `  ${name.padEnd(12)} ${ms(time).padStart(8)}  ${words.join(", ")}`;
}

/** Every problem of a file: result, bound, best known, time, whether proven; then the totals. */
export async function cutting(file: string): Promise<void> {
  const instances = readInstances(file);
  const solve = await highsSolver();
  console.log(`cutting: ${instances.length} problems of ${file}, ${clockWords}`);
  // The first plan of all would pay for loading and warming up.
  for (const first of instances.slice(0, 1)) await outcomeOf(first, solve);
  const outcomes: Outcome[] = [];
  for (const instance of instances) {
    const outcome = await outcomeOf(instance, solve);
    outcomes.push(outcome);
    console.log(lineOf(instance, outcome));
  }
  const times = outcomes.map(({ time }) => time);
  const proven = outcomes.filter(({ isProven }) => isProven).length;
  const boards = outcomes.reduce((sum, outcome) => sum + outcome.boards, 0);
  console.log(
    `  proven ${proven} of ${outcomes.length}; ${boards} boards in all; median ${ms(spread(times).median)}, worst ${ms(Math.max(...times))}`,
  );
}
