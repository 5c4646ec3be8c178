export { type Answer, answerOf, answersOf } from "./answers.ts";
export {
  type EntryDifference,
  entryDifferences,
  type RowDifferences,
  rowDifferences,
  rowWords,
  type TableDifference,
  tableDifferences,
} from "./differences.ts";
export { type Effect, effectOf, type Outcome, ranked } from "./effects.ts";
export { enteredFor, nextName, stepsBetween } from "./entered.ts";
export { feeding, needsLongWork } from "./feeding.ts";
export { differs, lowest } from "./rows.ts";
export {
  canHaveRange,
  type OwnRange,
  type Trial,
  type Varied,
  variedEntry,
} from "./trials.ts";
export { type Variation, variationOf } from "./variation.ts";
