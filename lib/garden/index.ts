export type { Bed, BedPlace } from "./bed.ts";
export { type FrameChoices, frameChoices } from "./frame-choices.ts";
export { type GardenBeds, gardenBeds } from "./garden-beds.ts";
export { type BedSpec, readBeds } from "./read-beds.ts";
export { type KeptBoards, readOnHand } from "./read-on-hand.ts";
export { type HandPiece, readPieces } from "./read-pieces.ts";
export { readPrices } from "./read-prices.ts";
export { readYards } from "./read-yards.ts";
export { toBed } from "./to-bed.ts";
