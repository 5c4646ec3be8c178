import type {
  ListedState,
  StateContent,
  StateReason,
  StateRecord,
  StatesRecord,
} from "./record-types.ts";
import { readRecord } from "./records.ts";
import type { Step, Storage } from "./storage.ts";
import { notWrittenOver } from "./words.ts";

/** A notebook keeps so many of its states. */
export const mostStates = 50;

export const statesKey = (main: string) => `states:${main}`;
export const stateKey = (main: string, number: number) => `state:${main}:${number}`;

/** A state to be kept. */
export interface NewState extends StateContent {
  readonly main: string;
  readonly at: string;
  readonly why: StateReason;
  readonly apart: boolean;
  readonly plan?: string;
  readonly whole?: Readonly<Record<string, unknown>>;
}

/** The notebook's earlier states, the newest first, without what is in them. */
export async function listStates(
  storage: Storage,
  main: string,
): Promise<{ readonly states: readonly ListedState[]; readonly trouble?: string }> {
  const read = readRecord("states", await storage.get(statesKey(main)));
  if (read.is === "record") return { states: [...read.record.states].reverse() };
  return read.is === "absent"
    ? { states: [] }
    : { states: [], trouble: notWrittenOver(main, read) };
}

/** One state, whole; undefined where it is not there any more or can't be read. */
export async function readState(
  storage: Storage,
  main: string,
  number: number,
): Promise<StateRecord | undefined> {
  const read = readRecord("state", await storage.get(stateKey(main, number)));
  return read.is === "record" ? read.record : undefined;
}

/**
 * Keeps a state as the newest; one equal to the newest is not kept twice. The oldest past 50 are
 * dropped. Gives its number, or undefined where an index of a newer version must be left alone.
 */
export function noteState(storage: Storage, state: NewState): Promise<number | undefined> {
  return storage.together((step) => noteStateIn(step, state));
}

/** The same as a part of a larger step. */
export async function noteStateIn(step: Step, state: NewState): Promise<number | undefined> {
  const { main, at, why } = state;
  const index = await indexOf(step, main);
  if (index === undefined) return undefined;
  const newest = index.states.at(-1);
  if (newest !== undefined) {
    const read = readRecord("state", await step.get(stateKey(main, newest.number)));
    if (read.is === "record" && sameContent(read.record, state)) return newest.number;
  }
  const number = index.next;
  const record: StateRecord = { ...state, kind: "state", version: 1, number };
  await step.put(stateKey(main, number), record);
  const states = [...index.states, { number, at, why }];
  await putIndex(step, { ...index, next: number + 1, states });
  return number;
}

/** Puts other content into a state that is listed; where it is not listed any more, into a new one. */
export async function rewriteStateIn(
  step: Step,
  number: number,
  state: NewState,
): Promise<number | undefined> {
  const { main } = state;
  const index = await indexOf(step, main);
  if (!index?.states.some((listed) => listed.number === number)) return noteStateIn(step, state);
  await step.put(stateKey(main, number), { ...state, kind: "state", version: 1, number });
  return number;
}

/** The index of a notebook's states, empty where there is none; undefined where it may not be written over. */
export async function indexOf(step: Step, main: string): Promise<StatesRecord | undefined> {
  const read = readRecord("states", await step.get(statesKey(main)));
  if (read.is === "record") return read.record;
  if (read.is === "absent") return { kind: "states", version: 1, main, next: 1, states: [] };
  return undefined;
}

/** Writes the index, and drops what is past the most that are kept. */
export async function putIndex(step: Step, index: StatesRecord): Promise<void> {
  const { main, states } = index;
  const dropped = states.slice(0, Math.max(0, states.length - mostStates));
  for (const { number } of dropped) await step.remove(stateKey(main, number));
  await step.put(statesKey(main), { ...index, states: states.slice(dropped.length) });
}

/** Whether two states hold the same, whatever the order in which it was entered. */
export function sameContent(a: NewState | StateRecord, b: NewState | StateRecord): boolean {
  return contentOf(a) === contentOf(b);
}

function contentOf(state: NewState | StateRecord): string {
  const { files, texts, entered, apart, plan = null, whole = {} } = state;
  const parts = [files.toSorted(), sorted(texts), sorted(entered), apart, plan, sorted(whole)];
  return JSON.stringify(parts);
}

function sorted(record: Readonly<Record<string, unknown>>) {
  return Object.entries(record).toSorted(([a], [b]) => (a < b ? -1 : 1));
}
