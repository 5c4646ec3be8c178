export { type ChoiceEntryOptions, choiceEntry, yesNoEntry } from "./choice-entries.ts";
export {
  countEntry,
  type NumberEntryOptions,
  numberEntry,
  percentEntry,
} from "./number-entries.ts";
export type { BoundedOptions, EntryOptions, NoneOption, OrNone } from "./options.ts";
export {
  areaEntry,
  durationEntry,
  lengthEntry,
  massEntry,
  moneyEntry,
  volumeEntry,
} from "./quantity-entries.ts";
export type { QuantityEntryOptions } from "./quantity-entry.ts";
export { type OfferedField, type RowsFor, rowsFor } from "./rows-for.ts";
export { dateEntry, type SectionEntryOptions, sectionEntry, textEntry } from "./text-entries.ts";
