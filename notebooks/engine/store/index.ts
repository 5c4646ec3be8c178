export { indexedDbStorage } from "./indexed-db.ts";
export { type Journal, type TextStore, textJournal } from "./journal.ts";
export { Keeper, loadAllEntered, loadEntered } from "./keeping.ts";
export { type ReadRecord, readRecord } from "./records.ts";
export { keepUnits, loadUnits } from "./settings.ts";
export { memoryStorage, type Storage } from "./storage.ts";
