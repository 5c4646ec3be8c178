import * as lib from "../lib/index.ts";
import type { LongWork, LongWorkControl } from "../notebooks/engine/types/index.ts";
import { turnGiver } from "../notebooks/engine/worker/turn.ts";

type Slow = (...given: readonly unknown[]) => Promise<unknown>;

/** The functions that take long, with how many arguments come before their options. */
const listed: Readonly<Record<string, number>> = {
  planBoards: 1,
  planBoardsAtYard: 2,
  planGardenBoards: 1,
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

/**
 * The functions that take long, worked out right here. Plans once made are remembered, so that only
 * what changed is planned again.
 */
export function longWorkHere(solve: lib.Solve): Readonly<Record<string, LongWork>> {
  const remembered = new Map<string, never>();
  const turn = turnGiver();
  const work = (name: string): LongWork => {
    const slow = (lib as unknown as Readonly<Record<string, Slow>>)[name] as Slow;
    const count = listed[name] ?? 0;
    return (data, control) => {
      if (remembered.size > mostRemembered) remembered.clear();
      // What came from another thread has lost what makes quantities refuse to be numbers.
      const given = lib.reviveQuantities(data);
      const pause = control.pause ?? turn;
      const options = {
        ...optionsOf(given[count], control),
        pause: () => pause(),
        solve: heardBefore(solve, () => pause("uninterrupted")),
        remembered,
      };
      return slow(...given.slice(0, count), options);
    };
  };
  return Object.fromEntries(longWorkNames.map((name) => [name, work(name)]));
}

function optionsOf(given: unknown, control: LongWorkControl): object {
  const own = typeof given === "object" && given !== null ? given : {};
  const { signal, improved } = control;
  return {
    ...own,
    signal,
    progress: (words: string, fraction?: number) => control.progress(words, fraction),
    ...(improved ? { improved: (value: unknown) => improved(value) } : {}),
  };
}

/** The solver hears nothing while it searches, so everybody has a turn before. */
function heardBefore(solve: lib.Solve, pause: () => Promise<void>): lib.Solve {
  return async (...asked) => {
    await pause();
    return solve(...asked);
  };
}
