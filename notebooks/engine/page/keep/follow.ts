import {
  fileAt,
  type Keeper,
  type OtherTabs,
  placeOf,
  type Scope,
  type TabNews,
} from "../../store/index.ts";
import type { CellId } from "../../types/index.ts";
import { type Book, type EnteredValue, idOf } from "../book.ts";
import { slotId } from "../cell-slot.ts";
import { isSame } from "./differences.ts";

/** What other tabs wrote, to be shown: not kept again, and no step to be undone. */
export interface FromOthers {
  readonly entered: ReadonlyMap<CellId, EnteredValue | undefined>;
  readonly texts: ReadonlyMap<string, string>;
}

export interface FollowOptions {
  readonly others: OtherTabs;
  readonly scope: Scope;
  readonly keeper: Pick<Keeper, "saw" | "sawText">;
  readonly book: Pick<Book, "documents" | "entered">;
  /** Shows what other tabs wrote. */
  take(from: FromOthers): void;
  /** Whether the reader is just editing this document; what comes then waits until they are not. */
  editing?(file: string): boolean;
  /** Whether a field of this cell has the focus; what comes then waits until it has not. Default: asks the page. */
  focused?(id: CellId): boolean;
  /** Where leaving a field is heard. Default: the document. */
  readonly page?: Pick<EventTarget, "addEventListener" | "removeEventListener">;
}

export interface Following {
  /** Another tab's text stands over what was written here (for the keeper's `stands`). */
  stands(record: {
    readonly place: string;
    readonly text: string;
    readonly revision: number;
  }): void;
  /** What had to wait is shown now, where it still may be; called by itself when a field is left. */
  catchUp(): void;
  end(): void;
}

/** Shows what other tabs write of the same notebook, but never under somebody's hands. */
export function followOtherTabs(options: FollowOptions): Following {
  const { others, scope, keeper, book } = options;
  const { focused = hasFocus, editing = () => false, page = document } = options;
  const entries = new Map<
    CellId,
    { value: EnteredValue | undefined; here: EnteredValue | undefined }
  >();
  const texts = new Map<string, { readonly text: string; readonly revision: number }>();

  const catchUp = (): void => {
    const entered = new Map<CellId, EnteredValue | undefined>();
    for (const [id, { value, here }] of entries) {
      if (focused(id)) continue;
      entries.delete(id);
      // What was typed here meanwhile stands.
      if (isSame(book.entered.get(id), here)) entered.set(id, value);
    }
    const documents = new Map<string, string>();
    for (const [file, { text, revision }] of texts) {
      if (editing(file)) continue;
      texts.delete(file);
      documents.set(file, text);
      keeper.sawText(placeOf(file, scope), revision);
    }
    if (entered.size === 0 && documents.size === 0) return;
    keeper.saw(entered);
    options.take({ entered, texts: documents });
  };

  const hear = (news: TabNews): void => {
    if (news.what !== "entered" && news.what !== "text") return;
    const file = fileAt(news.place, scope);
    if (file === undefined || !book.documents.has(file)) return;
    if (news.what === "text") texts.set(file, { text: news.text, revision: news.revision });
    else
      for (const [name, value] of Object.entries(news.cells)) {
        const id = idOf(file, name);
        entries.set(id, { value: value ?? undefined, here: book.entered.get(id) });
      }
    catchUp();
  };

  const later = () => setTimeout(catchUp);
  page.addEventListener("focusout", later);
  const stop = others.heard(hear);
  return {
    catchUp,
    stands({ place, text, revision }) {
      const file = fileAt(place, scope);
      if (file === undefined) return;
      texts.delete(file);
      keeper.sawText(place, revision);
      options.take({ entered: new Map(), texts: new Map([[file, text]]) });
    },
    end() {
      stop();
      page.removeEventListener("focusout", later);
    },
  };
}

/** Whether the focus is on a field of this cell, wherever on the page it is drawn. */
function hasFocus(id: CellId): boolean {
  const active = document.activeElement;
  if (!active?.matches("input, select, textarea")) return false;
  const fold = active.closest<HTMLElement>("[data-cell]")?.dataset.cell;
  return fold === id || active.closest(".cell")?.id === slotId(id);
}
