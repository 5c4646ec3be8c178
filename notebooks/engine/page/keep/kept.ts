import type { NewState, StateReason } from "../../store/index.ts";
import type { CellId } from "../../types/index.ts";
import type { Book, EnteredValue } from "../book.ts";
import type { PageOptions } from "../options.ts";

/** What of a notebook's context is needed. */
export interface KeepContext {
  readonly book: Book;
  readonly options: Pick<PageOptions, "storage" | "today" | "notebooks">;
  say(words: string): void;
}

/** What an open notebook holds now, as a state would. */
export type ContentNow = Omit<NewState, "at" | "why">;

/** What the acts on what is kept need of the open notebook, besides its context. */
export interface KeptParts {
  contentNow(): ContentNow;
  /** Ends when all that was typed so far is in the storage, or it was said that it can't be. */
  flush(): Promise<void>;
  /** Changes texts and entries as one step that can be undone; a state is taken before it. */
  change(
    change: {
      readonly texts: ReadonlyMap<string, string>;
      readonly entered: ReadonlyMap<CellId, EnteredValue | undefined>;
    },
    why: StateReason,
  ): void;
}
