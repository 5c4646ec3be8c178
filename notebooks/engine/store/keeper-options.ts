import type { Journal } from "./journal.ts";
import type { Scope } from "./place.ts";
import type { DocumentRecord } from "./record-types.ts";
import type { OtherTabs } from "./tabs.ts";

/** Something about what is kept that the reader must know, in words. */
export type KeepingTrouble = (words: string) => void;

export interface KeeperOptions {
  /** The ISO instant now: dates what goes to the earlier states. */
  readonly now: () => string;
  /** With it, nothing is lost where the page ends before a write does. */
  readonly journal?: Journal | undefined;
  /** Whose entries they are. Default: the reader's own garden's. */
  readonly scope?: Scope | undefined;
  /** Other open pages, told of what was written. Default: none. */
  readonly others?: OtherTabs | undefined;
  /** Calls something a while later, so that what could not be written is tried again. Default: only with the next change. */
  readonly later?: ((act: () => void) => void) | undefined;
  /** Everything is safe again after a trouble. */
  readonly safe?: (() => void) | undefined;
  /** Another tab's text of a document stands; what was written here is among the earlier states. */
  readonly stands?: ((record: DocumentRecord) => void) | undefined;
}
