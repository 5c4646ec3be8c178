export { type FreeBoard, type FreeBoardOptions, freeBoard } from "./free-board.ts";
export { type KeepOffOptions, keepOff } from "./keep-off.ts";
export { type MulchAdvice, type MulchDepth, mulchAdvice } from "./mulch-advice.ts";
export { type MulchCover, type MulchCoverOptions, mulchCover } from "./mulch-cover.ts";
export {
  type MulchLoss,
  type MulchYear,
  type MulchYearsOptions,
  mulchYears,
} from "./mulch-years.ts";
export { nitrogenTieUp } from "./nitrogen-tie-up.ts";
export { type WeedCount, type WeedsLeft, weedsLeft } from "./weeds-left.ts";
