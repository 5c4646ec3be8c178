import type { Context } from "./context.ts";

/** Something that can be done with the open notebook, as its menu lists it. */
export interface Act {
  /** What happens: "Save as a file". */
  readonly words: string;
  readonly hint?: string;
  run(): void;
  /** Whether it can be done now. Default yes. */
  shown?(): boolean;
}

/** An act whose code is only fetched when it is asked for. */
export function fetched(
  { words, hint }: { readonly words: string; readonly hint?: string },
  context: Context,
  fetch: () => Promise<() => void>,
): Act {
  return {
    words,
    ...(hint === undefined ? {} : { hint }),
    run() {
      fetch().then(
        (run) => run(),
        () => context.say(`“${words}” could not be fetched. Try again when you are online.`),
      );
    },
  };
}
