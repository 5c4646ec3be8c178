import type { Act } from "../act.ts";
import { button } from "../dom.ts";
import type { KeepContext, KeptParts } from "./kept.ts";

/** What can be done with what is kept of the open notebook, and with all that is kept. */
export function keepActs(context: KeepContext, parts: KeptParts): readonly Act[] {
  const { options, say } = context;
  return [
    {
      words: "Earlier states",
      hint: "Look at any of the last 50, and bring it back",
      run: () =>
        fetchThen(
          say,
          () => import("./earlier-states.ts"),
          async ({ openEarlierStates }) => {
            await parts.flush();
            await openEarlierStates(context, parts);
          },
        ),
    },
    ...everythingActs(options, { say, before: () => parts.flush() }),
  ];
}

/** The same for the foot of the shelf: buttons for all that is kept. */
export function shelfKeepActs(
  options: KeepContext["options"],
  say: (words: string) => void,
): readonly HTMLElement[] {
  return everythingActs(options, { say, before: async () => undefined }).map(({ words, run }) =>
    button(words, run),
  );
}

interface EverythingParts {
  say(words: string): void;
  before(): Promise<void>;
}

function everythingActs(
  options: KeepContext["options"],
  { say, before }: EverythingParts,
): readonly Act[] {
  const act = (words: string, hint: string, run: (made: Everything) => Promise<void>): Act => ({
    words,
    hint,
    run: () =>
      fetchThen(
        say,
        () => import("./everything.ts"),
        async (made) => {
          await before();
          await run(made);
        },
      ),
  });
  return [
    act(
      "Keep everything in one file",
      "All notebooks, entries, plans and earlier states, to put away or take elsewhere",
      ({ keepEverything }) => keepEverything(options, say),
    ),
    act(
      "Take everything from a file",
      "Nothing that is kept here is written over",
      ({ takeEverything }) => takeEverything(options, say),
    ),
  ];
}

type Everything = typeof import("./everything.ts");

/** Code that is seldom needed is fetched when it is; where it can't be, that is said. */
function fetchThen<M>(
  say: (words: string) => void,
  fetch: () => Promise<M>,
  then: (module: M) => Promise<void>,
): void {
  fetch().then(
    (module) =>
      then(module).catch((error: unknown) =>
        say(`It could not be done: ${error instanceof Error ? error.message : String(error)}`),
      ),
    () => say("The part of the page for this could not be fetched. Try again when you are online."),
  );
}
