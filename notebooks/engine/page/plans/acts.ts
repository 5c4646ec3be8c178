import { type Act, fetched } from "../act.ts";
import type { Context } from "../context.ts";

/** Keeps what is entered now under a name. */
export function keepAct(context: Context): Act {
  return fetched(
    {
      words: "Keep as a plan",
      hint: "What is entered now, under a name, to compare with others",
    },
    context,
    async () => {
      const { keepAsPlan } = await import("./keep.ts");
      return () => void keepAsPlan(context);
    },
  );
}

/** What can be done with plans: keep one, compare them, and see what an answer hangs on. */
export function planActs(context: Context): readonly Act[] {
  return [
    keepAct(context),
    fetched(
      {
        words: "Plans side by side",
        hint: "What each kept plan comes to, and what differs between them",
      },
      context,
      async () => {
        const { openPlansSheet } = await import("./sheet.ts");
        return () => void openPlansSheet(context);
      },
    ),
    fetched(
      { words: "What matters most", hint: "Which entries move an answer, and how far" },
      context,
      async () => {
        const { openMattersSheet } = await import("./matters-sheet.ts");
        return () => void openMattersSheet(context);
      },
    ),
  ];
}
