export { buriedLines } from "./buried-lines.ts";
export type { CautionOptions } from "./called-for.ts";
export type { LiftDuration } from "./frequency-multiplier.ts";
export { leadInOldSoil } from "./lead-in-old-soil.ts";
export {
  cautionsForLift,
  LIFTING_LOAD_CONSTANT,
  type Lift,
  type LiftingOptions,
  lifting,
  liftingIndex,
  recommendedWeightLimit,
  type WeightLimit,
} from "./lifting.ts";
export { localCodes } from "./local-codes.ts";
export {
  cautionsForOldBoard,
  FIRST_YEAR_WITHOUT_ARSENIC,
  mayHoldArsenic,
  nailsInOldBoards,
  type OldBoardFacts,
  oldTreatedWood,
} from "./old-wood.ts";
export { plasticAndDrainage } from "./plastic-and-drainage.ts";
export { neverBurn, sawingTreatedWood } from "./treated-wood.ts";
export {
  cautionsForWall,
  DESIGNED_WALL_HEIGHT,
  PERMIT_WALL_HEIGHT,
  type WallOptions,
  wallHeight,
} from "./wall-height.ts";
