import { plansFollow } from "../../store/seldom.ts";
import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import { tellOthers } from "./tell-others.ts";

/** Has the kept plans follow cells to their new names; says so where they can't. */
export async function plansFollowRename(
  context: Context,
  renamed: ReadonlyMap<CellId, CellId>,
): Promise<void> {
  const { book, options } = context;
  const followed = await plansFollow(options.storage, book.main.file, renamed);
  if (followed.good) tellOthers(context);
  else context.say(followed.words);
}
