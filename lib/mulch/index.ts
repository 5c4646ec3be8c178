export { type FreeBoard, type FreeBoardOptions, freeBoard } from "./free-board.ts";
export { type KeepOffOptions, keepOff } from "./keep-off.ts";
export { type MulchAdvice, type MulchDepth, mulchAdvice } from "./mulch-advice.ts";
export { type MulchCover, type MulchCoverOptions, mulchCover } from "./mulch-cover.ts";
