export { type BoardJoint, type BoardScrewsOptions, boardScrews } from "./board-screws.ts";
export { type CornerPlates, type CornerPlatesOptions, cornerPlates } from "./corner-plates.ts";
export {
  type Coverage,
  type EndCutOptions,
  type EndCutPreservative,
  endCutPreservative,
  type SawnEnds,
} from "./end-cut-preservative.ts";
export { type FastenerMetal, type FastenerMetalOptions, fastenerMetal } from "./fastener-metal.ts";
export {
  type GroundContactOptions,
  type GroundContactStamp,
  groundContactStamp,
  type PreservativeRow,
} from "./ground-contact-stamp.ts";
export { pilotHole } from "./pilot-hole.ts";
export { type PlateScrewsOptions, plateScrews } from "./plate-screws.ts";
export type { Screw, ScrewChoice, ScrewOffer } from "./screw.ts";
export { screwsAcross } from "./screws-across.ts";
export {
  type Force,
  type ForcePerLength,
  newton,
  type PenetrationJoint,
  penetration,
  poundForce,
  type WithdrawalOptions,
  withdrawal,
} from "./withdrawal.ts";
