export { type BedFloor, type BedFloorOptions, bedFloor, type FloorKind } from "./bed-floor.ts";
export {
  type BedLiner,
  type LinedBed,
  type LinerOptions,
  type LinerPlan,
  linerForBeds,
} from "./liner-for-beds.ts";
export {
  type LinedFrame,
  type LinerCutting,
  type LinerStrip,
  type LinerStripOptions,
  linerStrip,
} from "./liner-strip.ts";
export { type StapleOptions, staples } from "./staples.ts";
