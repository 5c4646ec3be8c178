import * as lib from "../../../lib/index.ts";
import { unsound } from "./leaves.ts";
import { type BadArgument, badForms, type Outcome, type Part } from "./shape.ts";

/** A good call of a function, by its arguments' names in order, and what is bad besides. */
export interface Cases {
  readonly takes: Readonly<Record<string, Part>>;
  /** Values that are fine alone and bad together, by place as "bed.width". */
  readonly together?: readonly Together[];
  /** Why problems name no field, where they don't. */
  readonly pathless?: string;
  /** Of what other function the arguments are the results, where any problem may be the answer. */
  readonly derived?: string;
}

export interface Together {
  readonly what: string;
  readonly with: Readonly<Record<string, unknown>>;
  readonly outcome: Outcome;
  /** Where the problem must be. */
  readonly at: readonly (string | number)[];
}

/** The bad cases of the functions of a folder, by the functions' names. */
export type FolderCases = Readonly<Record<string, Cases | readonly Cases[]>>;

export type Given =
  | { readonly kind: "value"; readonly value: unknown }
  | { readonly kind: "problems"; readonly problems: readonly lib.Problem[] }
  | { readonly kind: "crash"; readonly error: unknown };

function problemsIn(value: unknown): readonly lib.Problem[] {
  if (typeof value !== "object" || value === null) return [];
  if ("ok" in value && value.ok === false && "problem" in value) {
    return [value.problem as lib.Problem];
  }
  const { problems } = value as { readonly problems?: unknown };
  return Array.isArray(problems) && problems.every(lib.isProblem) ? problems : [];
}

/** Calls a function: its value, the problems it names, or that it broke. */
export async function given(call: () => unknown): Promise<Given> {
  try {
    const value: unknown = await call();
    const problems = Array.isArray(value) && value.every(lib.isProblem) ? value : problemsIn(value);
    return problems.length > 0 ? { kind: "problems", problems } : { kind: "value", value };
  } catch (error) {
    if (error instanceof lib.ProblemError) return { kind: "problems", problems: error.problems };
    return { kind: "crash", error };
  }
}

// What contradicts is named at one of the values concerned, not always at the one that was changed.
const composed = ["contradiction", "mixed-currency", "no-fit", "duplicate", "unpriced"];

function named({ place, exact = false }: Tried, problem: lib.Problem): boolean {
  const rows = place.filter((step) => typeof step === "number");
  const steps = composed.includes(problem.code) && !exact ? rows : [...rows, ...place.slice(-1)];
  return steps.every((step) => problem.path.includes(step));
}

/** What is wrong with a problem as a record, whatever it is about. */
export function faultOf(problem: lib.Problem): string | undefined {
  if (!lib.isProblem(problem)) return "is no problem record";
  if (problem.remedy.trim() === "") return "says not what to do";
  if (problem.allowed.trim() === "") return "says not what is allowed";
  const words = lib.sentence(problem);
  if (/undefined|\[object/.test(words)) return `speaks of the machine: ${words}`;
  return /NaN/.test(`${problem.allowed} ${problem.remedy}`) ? `speaks of NaN: ${words}` : undefined;
}

const isEmptyList = (value: unknown): boolean => Array.isArray(value) && value.length === 0;

function rawFault(problem: lib.Problem, raw: unknown): string | undefined {
  if (composed.includes(problem.code)) return undefined;
  const { received } = problem;
  const isNothing = raw === undefined || raw === null || raw === "" || isEmptyList(raw);
  if (isNothing) {
    // Operators name both sides: “1 ft + nothing”.
    const sound = /^$|^a list of 0$/.test(received.trim()) || /\b(nothing|null)\b/.test(received);
    return sound ? undefined : `received “${received}” for nothing`;
  }
  if (received === "") return "does not say what was received";
  const text = typeof raw === "string" || typeof raw === "number" ? String(raw) : undefined;
  return text === undefined || received.includes(text)
    ? undefined
    : `received “${received}” for “${text}”`;
}

const shortly = (problem: lib.Problem): string => `${problem.code} at ${problem.path.join(".")}`;

interface Tried extends Omit<BadArgument, "argument"> {
  /** Whether the problem must be at the place itself, of whatever kind it is. */
  readonly exact?: boolean;
}

/** What is wrong with what a bad argument led to; undefined where all is as it must be. */
export function faultIn(found: Given, bad: Tried, cases: Cases): string | undefined {
  const wanted = bad.outcomes.join(" or ");
  if (found.kind === "crash") return `crashed: ${String(found.error)}; wanted ${wanted}`;
  if (found.kind === "value") {
    if (!bad.outcomes.includes("fine")) return `was accepted; wanted ${wanted}`;
    return unsound(found.value) ? "gave what is no finite number" : undefined;
  }
  const fault = found.problems.map(faultOf).find((each) => each !== undefined);
  if (fault !== undefined) return fault;
  if (cases.derived !== undefined) return undefined;
  const here = found.problems.find(
    (problem) =>
      bad.outcomes.includes(problem.code) && (cases.pathless !== undefined || named(bad, problem)),
  );
  if (here !== undefined) return rawFault(here, bad.value);
  return `gave ${found.problems.map(shortly).join(", ")}; wanted ${wanted}`;
}

function functionOf(name: string): (...values: unknown[]) => unknown {
  const found: unknown = (lib as Readonly<Record<string, unknown>>)[name];
  if (typeof found !== "function") throw new Error(`lib has no function ${name}`);
  return found as (...values: unknown[]) => unknown;
}

function replaced(value: unknown, steps: readonly string[], by: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return by;
  if (Array.isArray(value)) {
    const at = Number(step) - 1;
    return value.with(at, replaced(value[at], rest, by));
  }
  const fields = value as Readonly<Record<string, unknown>>;
  return { ...fields, [step]: replaced(fields[step], rest, by) };
}

async function faultTogether(name: string, cases: Cases, one: Together) {
  const good = Object.fromEntries(
    Object.entries(cases.takes).map(([key, part]) => [key, part.good]),
  );
  const all = Object.entries(one.with).reduce<unknown>(
    (so, [place, value]) => replaced(so, place.split("."), value),
    good,
  );
  const values = Object.values(all as Readonly<Record<string, unknown>>);
  const found = await given(() => functionOf(name)(...values));
  const bad = {
    what: one.what,
    value: one.with,
    outcomes: [one.outcome],
    place: one.at,
    exact: true,
  };
  return faultIn(found, bad, cases);
}

/** Everything wrong with what a function does with its good call and with every bad one. */
export async function faultsOf(name: string, cases: Cases): Promise<string[]> {
  const call = functionOf(name);
  const parts = Object.entries(cases.takes);
  const good = parts.map(([, part]) => part.good);
  const first = await given(() => call(...good));
  if (first.kind !== "value") {
    const why = first.kind === "crash" ? String(first.error) : first.problems.map(lib.sentence);
    return [`the good call fails: ${String(why)}`];
  }
  const faults: string[] = unsound(first.value) ? ["the good call gives no finite number"] : [];
  for (const [at, [key, part]] of parts.entries()) {
    for (const bad of badForms(part, [key])) {
      const found = await given(() => call(...good.with(at, bad.argument)));
      const fault = faultIn(found, bad, cases);
      if (fault !== undefined) faults.push(`${bad.place.join(".")}: ${bad.what} ${fault}`);
    }
  }
  for (const one of cases.together ?? []) {
    const fault = await faultTogether(name, cases, one);
    if (fault !== undefined) faults.push(`${one.what}: ${fault}`);
  }
  return faults;
}
