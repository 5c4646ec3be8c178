import type { NotebookRecords, Report } from "./bring-notebook-in.ts";
import type { ListedState, StateRecord } from "./record-types.ts";
import { readRecord } from "./records.ts";
import {
  indexOf,
  mostStates,
  type NewState,
  noteStateIn,
  putIndex,
  sameContent,
  stateKey,
  statesKey,
} from "./states.ts";
import type { Step } from "./storage.ts";

/**
 * Puts a notebook's earlier states from a file among those kept, by the time they were taken. Those
 * kept all stay; where there is no room for all, the file's oldest are left out.
 */
export async function bringStatesIn(
  step: Step,
  { main, records }: NotebookRecords,
  { report, isOnShelf }: { readonly report: Report; readonly isOnShelf: boolean },
): Promise<void> {
  const theirs = statesIn({ main, records });
  const list = records.get(statesKey(main));
  if (theirs.length === 0) return;
  const index = await indexOf(step, main);
  if (index === undefined) {
    report.said.push(
      `The earlier states of ${main} can't be changed by this version; the file’s were left out.`,
    );
    return;
  }
  if (index.next === 1) {
    const removed = list?.kind === "states" && !isOnShelf ? list.removed : undefined;
    const last = Math.max(...theirs.map(({ number }) => number));
    const next = Math.max(last + 1, list?.kind === "states" ? list.next : 1);
    const states = theirs.map(({ number, at, why }) => ({ number, at, why }));
    for (const state of theirs) await step.put(stateKey(main, state.number), state);
    await putIndex(step, { ...index, next, states, ...(removed && { removed }) });
    report.said.push(`Earlier states of ${main} came in: ${theirs.length}.`);
    return;
  }
  const ours = await Promise.all(index.states.map(({ number }) => readStateIn(step, main, number)));
  const fresh = theirs.filter(
    (state) => !ours.some((own) => own && own.at === state.at && sameContent(own, state)),
  );
  const room = Math.max(0, mostStates - index.states.length);
  const taken = fresh.slice(Math.max(0, fresh.length - room));
  let { next } = index;
  const listed: ListedState[] = [...index.states];
  for (const state of taken) {
    await step.put(stateKey(main, next), { ...state, number: next });
    listed.push({ number: next, at: state.at, why: state.why });
    next += 1;
  }
  if (taken.length > 0) {
    const states = listed.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
    await putIndex(step, { ...index, next, states });
    report.said.push(`Earlier states of ${main} came in: ${taken.length}.`);
  }
  if (taken.length < fresh.length)
    report.said.push(
      `${fresh.length - taken.length} earlier states of ${main} were left out: ${mostStates} are kept, and yours stay.`,
    );
}

/** The states of a file in their order, those its index lists. */
function statesIn({ main, records }: NotebookRecords): readonly StateRecord[] {
  const list = records.get(statesKey(main));
  if (list?.kind !== "states") return [];
  return list.states.flatMap(({ number }) => {
    const state = records.get(stateKey(main, number));
    return state?.kind === "state" ? [state] : [];
  });
}

async function readStateIn(
  step: Step,
  main: string,
  number: number,
): Promise<StateRecord | undefined> {
  const read = readRecord("state", await step.get(stateKey(main, number)));
  return read.is === "record" ? read.record : undefined;
}

/** Keeps a state unless one that holds the same is kept, whenever that was taken. */
export async function noteIfNew(
  step: Step,
  state: NewState,
): Promise<"noted" | "known" | "refused"> {
  const index = await indexOf(step, state.main);
  if (index === undefined) return "refused";
  for (const { number } of index.states) {
    const own = await readStateIn(step, state.main, number);
    if (own && sameContent(own, state)) return "known";
  }
  await noteStateIn(step, state);
  return "noted";
}
