import type { Act } from "../act.ts";
import type { Context } from "../context.ts";
import { openPane } from "./link.ts";

/** What can be looked up while a notebook is open. */
export function referenceActs(context: Context): readonly Act[] {
  return [
    {
      words: "Reference",
      hint: "Every calculation that cells may use, with its rule and an example",
      run: () => openPane(undefined, context),
    },
  ];
}
