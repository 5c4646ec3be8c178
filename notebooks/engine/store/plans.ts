import type { CellId } from "../types/index.ts";
import { good, type Outcome, refused } from "./outcome.ts";
import type { EnteredValue, Plan, PlansRecord } from "./record-types.ts";
import { readRecord } from "./records.ts";
import type { Storage } from "./storage.ts";
import { notKept, notWrittenOver } from "./words.ts";

export const plansKey = (main: string) => `plans:${main}`;

/** The plans kept of a notebook, in their order. */
export async function loadPlans(
  storage: Storage,
  main: string,
): Promise<{ readonly plans: readonly Plan[]; readonly trouble?: string }> {
  const read = readRecord("plans", await storage.get(plansKey(main)));
  if (read.is === "record") return { plans: read.record.plans };
  return read.is === "absent" ? { plans: [] } : { plans: [], trouble: notWrittenOver(main, read) };
}

/** Keeps a plan after the others. A name that is there already is refused: nothing is written over. */
export async function keepPlan(
  storage: Storage,
  main: string,
  plan: {
    readonly name: string;
    readonly entered: Readonly<Record<CellId, EnteredValue>>;
    readonly made: string;
  },
): Promise<Outcome<readonly Plan[]>> {
  const name = plan.name.trim();
  const kept = await changePlans(storage, main, (plans) => {
    const wrong = wrongPlanName(name, plans);
    return wrong === undefined ? good([...plans, { ...plan, name }]) : refused(wrong);
  });
  if (kept.good) storage.last?.();
  return kept;
}

/** Gives a plan another name. */
export function renamePlan(
  storage: Storage,
  main: string,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<Outcome<readonly Plan[]>> {
  const name = to.trim();
  return changePlans(storage, main, (plans) => {
    if (!plans.some((plan) => plan.name === from)) return refused(notThere(from));
    const others = plans.filter((plan) => plan.name !== from);
    const wrong = wrongPlanName(name, others);
    if (wrong !== undefined) return refused(wrong);
    return good(plans.map((plan) => (plan.name === from ? { ...plan, name } : plan)));
  });
}

/** Takes a plan away and gives it back, so that keeping it again undoes it. */
export async function removePlan(
  storage: Storage,
  main: string,
  name: string,
): Promise<Outcome<Plan>> {
  let taken: Plan | undefined;
  const changed = await changePlans(storage, main, (plans) => {
    taken = plans.find((plan) => plan.name === name);
    return taken === undefined
      ? refused(notThere(name))
      : good(plans.filter((plan) => plan.name !== name));
  });
  if (!changed.good) return changed;
  return taken === undefined ? refused(notThere(name)) : good(taken);
}

/** Puts the plans into this order; those not named come after, in the order they had. */
export function orderPlans(
  storage: Storage,
  main: string,
  names: readonly string[],
): Promise<Outcome<readonly Plan[]>> {
  return changePlans(storage, main, (plans) => {
    const named = new Set(names);
    const first = [...named].flatMap((name) => plans.filter((plan) => plan.name === name));
    return good([...first, ...plans.filter((plan) => !named.has(plan.name))]);
  });
}

/**
 * Has the plans hold, under the cells' new names, what they hold under the old ones. That stays too:
 * where the renaming is undone, it counts again.
 */
export function plansFollow(
  storage: Storage,
  main: string,
  renamed: ReadonlyMap<CellId, CellId>,
): Promise<Outcome<readonly Plan[]>> {
  return changePlans(storage, main, (plans) =>
    good(
      plans.map((plan) => {
        const added = [...renamed].flatMap(([from, to]) => {
          const value = plan.entered[from];
          return value === undefined ? [] : [[to, value] as const];
        });
        return { ...plan, entered: { ...plan.entered, ...Object.fromEntries(added) } };
      }),
    ),
  );
}

function wrongPlanName(name: string, plans: readonly Plan[]): string | undefined {
  if (name === "") return "A plan needs a name, as “Cedar, two courses”.";
  if (name.length > 80)
    return `A plan’s name has at most 80 letters; this one has ${name.length}. Make it shorter.`;
  return plans.some((plan) => plan.name === name)
    ? `There is a plan called “${name}” already. Choose another name, or remove that one first.`
    : undefined;
}

const notThere = (name: string) =>
  `There is no plan called “${name}” any more: it was renamed or removed in another tab.`;

async function changePlans(
  storage: Storage,
  main: string,
  change: (plans: readonly Plan[]) => Outcome<readonly Plan[]>,
): Promise<Outcome<readonly Plan[]>> {
  let outcome: Outcome<readonly Plan[]> = good([]);
  try {
    await storage.change(plansKey(main), (before): PlansRecord | undefined => {
      const read = readRecord("plans", before);
      if (read.is === "newer" || read.is === "broken") {
        outcome = refused(notWrittenOver(main, read));
        return undefined;
      }
      outcome = change(read.is === "record" ? read.record.plans : []);
      if (!outcome.good) return undefined;
      return { kind: "plans", version: 1, main, plans: outcome.value };
    });
    return outcome;
  } catch (error) {
    return refused(notKept(error));
  }
}
