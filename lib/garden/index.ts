export { type BedSpec, readBeds } from "./read-beds.ts";
export { type KeptBoards, readOnHand } from "./read-on-hand.ts";
export { type HandPiece, readPieces } from "./read-pieces.ts";
export { readPrices } from "./read-prices.ts";
export { readYards } from "./read-yards.ts";
