import { nextName } from "../../plans/index.ts";
import { keepPlan, loadPlans } from "../../store/seldom.ts";
import type { CellId, Entered } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { button, el } from "../dom.ts";
import { now } from "../now.ts";
import { askName } from "./name-pane.ts";
import { tellOthers } from "./tell-others.ts";

/** Asks for a name and keeps what is entered now under it. */
export async function keepAsPlan(context: Context, kept?: (name: string) => void): Promise<void> {
  const { storage } = context.options;
  const { file } = context.book.main;
  const { plans, trouble } = await loadPlans(storage, file);
  const pane = askName({
    title: "Keep as a plan",
    name: nextName(plans.map(({ name }) => name)),
    words: "Keep",
    about: [el("p", {}, whatIsHeld(context)), trouble && el("p", { class: "refused" }, trouble)],
    async done(name) {
      const entered = enteredNow(context);
      const outcome = await keepPlan(storage, file, { name, entered, made: now() });
      if (!outcome.good) return outcome.words;
      tellOthers(context);
      context.say(`Kept as ${name}.`);
      if (kept) {
        pane.close();
        kept(name);
      } else
        pane.end(
          el("p", {}, el("b", {}, name), " is kept. Change what you like now: it stays as it is."),
          button("Plans side by side", async () => {
            pane.close();
            (await import("./sheet.ts")).openPlansSheet(context);
          }),
        );
      return undefined;
    },
  });
}

/** A copy of what is entered, as a plan holds it. */
export function enteredNow({ book }: Context): Entered {
  const entered: Record<CellId, Entered[CellId]> = {};
  for (const [id, value] of book.entered) entered[id] = value;
  return entered;
}

function whatIsHeld({ book }: Context): string {
  const ids = [...book.entered.keys()];
  const tables = ids.filter((id) => book.isTable(id)).map((id) => book.title(id));
  const entries = ids.length - tables.length;
  const first =
    ids.length === 0
      ? "Nothing has been changed yet: the plan holds the notebook as it is."
      : `The plan holds ${[
          entries > 0 ? (entries === 1 ? "one entry" : `${entries} entries`) : "",
          tables.length > 0
            ? `${tables.length === 1 ? "the table" : "the tables"} ${tables.join(", ")}`
            : "",
        ]
          .filter((words) => words !== "")
          .join(" and ")} that you changed.`;
  return `${first} What you left alone is in it as the notebook has it.`;
}
