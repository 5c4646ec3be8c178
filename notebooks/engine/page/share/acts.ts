import { type Act, fetched } from "../act.ts";
import type { Context } from "../context.ts";

/** Handing a notebook to somebody else. */
export function shareActs(context: Context): readonly Act[] {
  return [
    fetched(
      { words: "Share", hint: "A link, a code to scan, a file, or one page to read and print" },
      context,
      async () => {
        const { openSharePane } = await import("./share-pane.ts");
        return () => openSharePane(context);
      },
    ),
  ];
}
