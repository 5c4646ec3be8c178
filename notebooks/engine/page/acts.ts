import { type Act, fetched } from "./act.ts";
import type { Context } from "./context.ts";
import { dependsActs } from "./depends/acts.ts";
import { type KeptParts, keepActs } from "./keep/index.ts";
import type { Library } from "./library.ts";
import { planActs } from "./plans/acts.ts";
import { referenceActs } from "./reference/acts.ts";
import { shareActs } from "./share/acts.ts";

/** All that can be done with an open notebook, in the order of its menu. */
export function notebookActs(context: Context, library: Library, kept: KeptParts): readonly Act[] {
  const isOwn = () => library.own.has(context.book.main.file);
  return [
    {
      words: "Make it mine",
      hint: "A copy of your own, to change as you like",
      shown: () => !isOwn(),
      run: () => context.makeItMine(),
    },
    ...planActs(context),
    ...shareActs(context),
    {
      ...fetched({ words: "Give it another name" }, context, async () => {
        const { nameNotebook } = await import("./own-acts.ts");
        return () => nameNotebook(context);
      }),
      shown: isOwn,
    },
    {
      words: "Save as a file",
      hint: "With all it uses and all you entered",
      run: () => context.saveAsFile(),
    },
    ...dependsActs(context),
    ...referenceActs(context),
    ...keepActs(context, kept),
    {
      ...fetched({ words: "Put it away" }, context, async () => {
        const { putAway } = await import("./own-acts.ts");
        return () => putAway(context, library, kept);
      }),
      shown: isOwn,
    },
  ];
}
