import * as lib from "../lib/index.ts";
import type { LongWork, LongWorkControl } from "../notebooks/engine/types/index.ts";
import { turnGiver } from "../notebooks/engine/worker/turn.ts";

type Slow = (...given: readonly unknown[]) => Promise<unknown>;

/** The functions that take long, with how many arguments come before their options. */
const listed: Readonly<Record<string, number>> = {
  planBoards: 1,
  planBoardsAtYard: 1,
  planGarden: 2,
  planBuying: 1,
  compareBuying: 1,
  planGardenBuying: 1,
  compareGardenBuying: 1,
};

/** How many plans are remembered before they are forgotten all at once. */
const mostRemembered = 400;

/**
 * Names of the functions that take long: cells call them without solver, progress, signal and what
 * else the session hands them.
 */
export const longWorkNames: readonly string[] = Object.keys(listed).filter((name) => name in lib);

/** What the session keeps for all calls of long work. */
export interface Kept {
  readonly solve: lib.Solve;
  readonly remembered: Map<string, never>;
  /** Gives the event loop a turn, where whoever asks has no way of its own. */
  readonly turn: () => Promise<void>;
}

/**
 * The functions that take long, worked out right here. Plans once made are remembered, so that only
 * what changed is planned again.
 */
export function longWorkHere(solve: lib.Solve): Readonly<Record<string, LongWork>> {
  const kept: Kept = { solve, remembered: new Map<string, never>(), turn: turnGiver() };
  const work = (name: string): LongWork => {
    const slow = (lib as unknown as Readonly<Record<string, Slow>>)[name] as Slow;
    const count = listed[name] ?? 0;
    return (data, control) => {
      if (kept.remembered.size > mostRemembered) kept.remembered.clear();
      // What came from another thread has lost what makes quantities refuse to be numbers.
      const given = lib.reviveQuantities(data);
      return slow(...given.slice(0, count), optionsFor(given[count], control, kept));
    };
  };
  return Object.fromEntries(longWorkNames.map((name) => [name, work(name)]));
}

/** A cell's own choices, with all that the session gives a function that takes long. */
export function optionsFor(choices: unknown, control: LongWorkControl, kept: Kept): object {
  const own = typeof choices === "object" && choices !== null ? choices : {};
  const { signal, improved, pause = kept.turn } = control;
  return {
    ...own,
    signal,
    progress: (words: string, fraction?: number) => control.progress(words, fraction),
    ...(improved ? { improved: (value: unknown) => improved(value) } : {}),
    pause: () => pause(),
    solve: heardBefore(kept.solve, () => pause("uninterrupted")),
    remembered: kept.remembered,
  };
}

/** The solver hears nothing while it searches, so everybody has a turn before. */
function heardBefore(solve: lib.Solve, pause: () => Promise<void>): lib.Solve {
  return async (...asked) => {
    await pause();
    return solve(...asked);
  };
}
