export {
  createDocument,
  listDocuments,
  loadDocument,
  type NewDocument,
  setOwnGarden,
} from "./documents.ts";
export { freshFile, safeFile } from "./file-names.ts";
export { indexedDbStorage, type OpenedStorage, openIndexedDb } from "./indexed-db.ts";
export { type Journal, type TextStore, textJournal } from "./journal.ts";
export type { KeeperOptions, KeepingTrouble } from "./keeper-options.ts";
export { Keeper } from "./keeping.ts";
export { loadAllEntered, loadEntered } from "./loading.ts";
export type { Outcome } from "./outcome.ts";
export { fileAt, placeOf, type Scope } from "./place.ts";
export type {
  DocumentRecord,
  EnteredRecord,
  ListedState,
  Origin,
  Plan,
  StateContent,
  StateReason,
  StateRecord,
} from "./record-types.ts";
export {
  type KindRules,
  type ReadRecord,
  readByRules,
  readRecord,
  type Stored,
} from "./records.ts";
export { keepUnits, loadUnits } from "./settings.ts";
export { StateKeeper, type TakeState } from "./state-keeper.ts";
export { type NewState, noteState } from "./states.ts";
export { memoryStorage, type Step, type Storage } from "./storage.ts";
export { filesOf, storedContent } from "./stored-content.ts";
export {
  type Channel,
  noOtherTabs,
  type OtherTabs,
  otherTabs,
  type TabNews,
} from "./tabs.ts";
export { keepsNothing, notWrittenOver } from "./words.ts";
