export { type KeepOffOptions, keepOff } from "./keep-off.ts";
export { type MulchCover, type MulchCoverOptions, mulchCover } from "./mulch-cover.ts";
