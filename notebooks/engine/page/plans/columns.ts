import {
  type Answer,
  answersOf,
  enteredFor,
  entryDifferences,
  tableDifferences,
} from "../../plans/index.ts";
import type { Plan } from "../../store/index.ts";
import type { CellId, Entered } from "../../types/index.ts";
import type { Book } from "../book.ts";
import type { Context } from "../context.ts";
import { enteredNow } from "./keep.ts";
import type { PlanResult } from "./plan-runs.ts";

/** A column of the sheet: what is entered now, or a kept plan. */
export interface Column {
  /** Undefined for what is entered now. */
  readonly plan?: Plan;
  readonly name: string;
  /** What counts of what it holds: what the notebook has a cell for. */
  readonly entered: Entered;
  readonly answers: ReadonlyMap<CellId, Answer>;
  readonly is: PlanResult["is"];
  readonly why?: string;
  /** What is entered now is what this plan holds. */
  readonly sameAsNow: boolean;
}

export const nowName = "Now";

/** The columns in their order, what is entered now before the plans. */
export function columnsOf(
  context: Context,
  plans: readonly Plan[],
  { shared, result }: { readonly shared: ReadonlySet<CellId>; result(name: string): PlanResult },
): readonly Column[] {
  const { book } = context;
  const now = enteredNow(context);
  const isBusy = book.working.size > 0;
  const first: Column = {
    name: nowName,
    entered: now,
    answers: answersOf(book.states.values()),
    is: isBusy ? "running" : "done",
    sameAsNow: true,
  };
  const kept = plans.map((plan): Column => {
    const entered = enteredFor(known(plan.entered, book), now, shared);
    const sameAsNow = !hasDifferences(context, [now, entered]);
    return { plan, name: plan.name, entered, ...result(plan.name), sameAsNow };
  });
  return [first, ...kept];
}

/** What a plan holds that the notebook has a cell for now. */
function known(entered: Entered, book: Book): Entered {
  const pairs = Object.entries(entered) as [CellId, Entered[CellId]][];
  return Object.fromEntries(pairs.filter(([id]) => book.block(id)));
}

/**
 * What a plan holds for cells that the notebook has no more. Of a renamed cell it holds the same
 * under both names, which is nothing lost.
 */
export function withoutCell({ entered }: Plan, book: Book): readonly CellId[] {
  const ids = Object.keys(entered) as CellId[];
  const there = new Set(ids.filter((id) => book.block(id)).map((id) => entered[id]));
  return ids.filter((id) => !book.block(id) && !there.has(entered[id]));
}

/** The default text of an entry, as the notebook has it. */
export function initialOf({ book }: Context): (id: CellId) => string {
  return (id) => book.states.get(id)?.entry?.initial ?? "";
}

export function differencesOf(context: Context, entered: readonly Entered[]) {
  const { book } = context;
  return {
    // What no document knows any more can make no difference.
    entries: entryDifferences(entered, initialOf(context)).filter(({ id }) => book.block(id)),
    tables: tableDifferences(entered, (id) => book.defaultTable(id)).filter(({ id }) =>
      book.block(id),
    ),
  };
}

function hasDifferences(context: Context, entered: readonly Entered[]): boolean {
  const { entries, tables } = differencesOf(context, entered);
  return entries.length + tables.length > 0;
}
