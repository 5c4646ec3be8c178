import * as lib from "../lib/index.ts";
import type { LongWork, LongWorkControl } from "../notebooks/engine/types/index.ts";

type Slow = (...given: readonly unknown[]) => Promise<unknown>;

/** The functions that take long, with how many arguments come before their options. */
const listed: Readonly<Record<string, number>> = {
  planBoards: 1,
  planBoardsAtYard: 2,
  planGardenBoards: 1,
  planGarden: 2,
};

/** How many plans are remembered before they are forgotten all at once. */
const mostRemembered = 400;

/** Names of the functions that take long: cells call them without solver, progress and signal. */
export const longWorkNames: readonly string[] = Object.keys(listed).filter((name) => name in lib);

/**
 * The functions that take long, worked out right here. Plans once made are remembered, so that only
 * what changed is planned again.
 */
export function longWorkHere(solve: lib.Solve): Readonly<Record<string, LongWork>> {
  const remembered = new Map<string, never>();
  const work = (name: string): LongWork => {
    const slow = (lib as unknown as Readonly<Record<string, Slow>>)[name] as Slow;
    const count = listed[name] ?? 0;
    return (data, control) => {
      if (remembered.size > mostRemembered) remembered.clear();
      // What came from another thread has lost what makes quantities refuse to be numbers.
      const given = lib.reviveQuantities(data);
      const options = optionsOf(given[count], control);
      return slow(...given.slice(0, count), { ...options, solve, remembered });
    };
  };
  return Object.fromEntries(longWorkNames.map((name) => [name, work(name)]));
}

function optionsOf(given: unknown, { signal, progress }: LongWorkControl): object {
  const own = typeof given === "object" && given !== null ? given : {};
  return { ...own, signal, progress: (...said: Parameters<typeof progress>) => progress(...said) };
}
