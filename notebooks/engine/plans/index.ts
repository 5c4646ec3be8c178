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
export { differs, lowest } from "./rows.ts";
export { type Variation, variationOf } from "./variation.ts";
