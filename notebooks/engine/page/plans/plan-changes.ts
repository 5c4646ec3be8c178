import type { Plan } from "../../store/index.ts";
import { keepPlan, orderPlans, removePlan, renamePlan } from "../../store/seldom.ts";
import type { CellId, Entered } from "../../types/index.ts";
import type { EnteredValue } from "../book.ts";
import type { Context } from "../context.ts";
import { enteredNow } from "./keep.ts";
import { askName } from "./name-pane.ts";
import { tellOthers } from "./tell-others.ts";

/** Says what was done, with a way back where there is one. */
export type Told = (words: string, undo?: () => void) => void;

/** Enters all that a plan holds, as one change. */
export function usePlan(
  context: Context,
  { name, entered }: { readonly name: string; readonly entered: Entered },
  told: Told,
): void {
  const now = enteredNow(context);
  const ids = new Set([...Object.keys(now), ...Object.keys(entered)] as CellId[]);
  const values = new Map<CellId, EnteredValue | undefined>();
  // What was entered in cells that are no more is nobody's to put back.
  for (const id of ids)
    if (now[id] !== entered[id] && context.book.block(id)) values.set(id, entered[id]);
  context.enterAll(values);
  told(`${name} is in use: what it holds is entered now.`, () => {
    context.undo();
    told(`What you had before ${name} is entered again.`);
  });
}

/** Asks for another name of a plan. */
export function askRename(
  context: Context,
  plan: Plan,
  renamed: (to: string) => Promise<void>,
): void {
  const { storage } = context.options;
  const main = context.book.main.file;
  const pane = askName({
    title: `Another name for ${plan.name}`,
    name: plan.name,
    words: "Rename",
    async done(to) {
      const outcome = await renamePlan(storage, main, { from: plan.name, to });
      if (!outcome.good) return outcome.words;
      tellOthers(context);
      pane.close();
      await renamed(to);
      return undefined;
    },
  });
}

/** Takes a plan out of the kept ones; what undoes it puts it back where it stood. */
export async function putPlanAway(
  context: Context,
  plan: Plan,
  {
    order,
    told,
  }: { readonly order: readonly string[]; told(words: string, undo?: () => void): Promise<void> },
): Promise<void> {
  const { storage } = context.options;
  const main = context.book.main.file;
  const outcome = await removePlan(storage, main, plan.name);
  if (!outcome.good) return told(outcome.words);
  tellOthers(context);
  const bringBack = async () => {
    const kept = await keepPlan(storage, main, outcome.value);
    if (kept.good) await orderPlans(storage, main, order);
    tellOthers(context);
    await told(kept.good ? `${plan.name} is back.` : kept.words);
  };
  await told(`${plan.name} is put away.`, () => void bringBack());
}
