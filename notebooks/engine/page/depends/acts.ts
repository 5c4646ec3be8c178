import type { CellId } from "../../types/index.ts";
import { type Act, fetched } from "../act.ts";
import type { Context } from "../context.ts";

/** A picture of the whole notebook. */
export function dependsActs(context: Context): readonly Act[] {
  return [
    fetched(
      { words: "What depends on what", hint: "A picture of which cell feeds which" },
      context,
      async () => {
        const { openDepends } = await import("./depends-view.ts");
        return () => openDepends(context);
      },
    ),
  ];
}

/** A picture of one cell: all that feeds it and all that it feeds. */
export function dependsOf(context: Context, id: CellId): void {
  fetched({ words: "What feeds this" }, context, async () => {
    const { openDepends } = await import("./depends-view.ts");
    return () => openDepends(context, id);
  }).run();
}
